package witnessmark.logbook.run;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LifeChange;

/**
 * What the run on the sheet would do.
 *
 * @param engine the number of the engine that takes it
 * @param before its running time since the bottom end was last rebuilt, without the run
 * @param after the same with the run
 * @param asWritten the same with the run as it is written now, null for one that is not written
 * @param counted every counter of the engine that changes, running time among them
 * @param event the event it belongs to, or null
 * @param marks every mark that it changes, and every one that holds, worst first
 * @param bare the parts it is charged to that have nothing they are held against
 */
public record RunDoes(
        String engine,
        Life before,
        Life after,
        @Nullable Life asWritten,
        List<LifeChange> counted,
        @Nullable Id<Event> event,
        List<MarkEffect> marks,
        List<Bare> bare) {
    public RunDoes {
        counted = List.copyOf(counted);
        marks = List.copyOf(marks);
        bare = List.copyOf(bare);
    }

    /**
     * A part that nothing is held against.
     *
     * @param kind what kind of part
     * @param mark its mark
     * @param before its running time without the run
     * @param after the same with the run
     */
    public record Bare(PartKind kind, String mark, Life before, Life after) {}
}
