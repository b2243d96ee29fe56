package witnessmark.desktop.engines;

import java.util.List;

/**
 * One part in words.
 *
 * @param part the text form of its identity
 * @param mark as marked
 * @param where where it is and since when
 * @param what what it is, and the members of a set
 * @param times every time it was fitted, the latest first
 * @param lives one row for each counter
 */
record PartLines(String part, String mark, String where, String what, List<TimeLine> times, List<CounterLine> lives) {
    PartLines {
        times = List.copyOf(times);
        lives = List.copyOf(lives);
    }
}
