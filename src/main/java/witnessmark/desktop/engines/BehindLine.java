package witnessmark.desktop.engines;

import witnessmark.domain.Entry;
import witnessmark.logbook.engines.Behind;
import witnessmark.quantity.Moment;

/**
 * One entry behind a figure as a row shows it.
 *
 * @param id the text form of the entry's identity
 * @param source the entry as last seen
 * @param at when it happened
 * @param day the same, already formatted
 * @param what the run and its event, the told running, the life carried in
 * @param through the position and engine or car the part was in; empty for an engine's own figure
 * @param how how the figure is known; when it is not counted, why not
 * @param amount what it adds, in the counter's unit
 * @param lowest the least it may add
 * @param highest the most it may add
 * @param about whether that is somebody's word or an estimate
 * @param adds the same, already formatted; that it is not counted, when it adds nothing
 * @param why whether it counts
 * @param words the row in one sentence
 */
record BehindLine(
        String id,
        Entry<?> source,
        Moment at,
        String day,
        String what,
        String through,
        String how,
        long amount,
        long lowest,
        long highest,
        boolean about,
        String adds,
        Behind.Why why,
        String words) {
    boolean counts() {
        return why == Behind.Why.COUNTED;
    }

    /** Whether somebody may take it out: everything that is in force. */
    boolean canStrike() {
        return source.inForce();
    }

    boolean canRestore() {
        return why == Behind.Why.STRUCK_OUT;
    }

    /** Whether somebody is to say if it is the same run as another. */
    boolean canSettle() {
        return why == Behind.Why.PERHAPS_SAME;
    }
}
