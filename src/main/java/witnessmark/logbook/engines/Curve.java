package witnessmark.logbook.engines;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * Running time since the last rebuild or skim, as it grew and was set back.
 *
 * @param name the engine's number or the head's mark
 * @param id the text form of its identity
 * @param steps in the order of time
 */
public record Curve(String name, String id, List<Step> steps) {
    public Curve {
        steps = List.copyOf(steps);
    }

    /**
     * One step.
     *
     * @param at when the entry was over
     * @param since the running time since the last rebuild or skim, and how well it is known
     * @param source the run, told running or life carried in that added to it; the build or skim that set it back
     */
    public record Step(Moment at, Life since, Entry<?> source) {}

    /** The running time as of the day looked at; none before anything happened. */
    public Life last() {
        return steps.isEmpty()
                ? Life.none(Counter.RUNNING)
                : steps.get(steps.size() - 1).since();
    }
}
