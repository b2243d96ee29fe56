package witnessmark.desktop.engines;

import java.util.List;
import witnessmark.desktop.form.SeamState;

/**
 * One part in words.
 *
 * @param part the text form of its identity
 * @param mark as marked
 * @param where where it is and since when
 * @param what what it is, the members of a set, and why it is where it is
 * @param state how it stands
 * @param stands the state's word and why
 * @param times every time it was fitted, the latest first
 * @param lives one row for each counter
 */
record PartLines(
        String part,
        String mark,
        String where,
        String what,
        SeamState state,
        String stands,
        List<TimeLine> times,
        List<CounterLine> lives) {
    PartLines {
        times = List.copyOf(times);
        lives = List.copyOf(lives);
    }
}
