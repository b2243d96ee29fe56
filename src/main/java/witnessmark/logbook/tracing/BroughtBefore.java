package witnessmark.logbook.tracing;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.logbook.Desk;
import witnessmark.logbook.engines.Amended;
import witnessmark.logbook.engines.SeeHistory;
import witnessmark.trace.result.Reduction;

/**
 * What became of a part of a file when it was brought in before.
 *
 * @param trace as it is in the logbook
 * @param run the run it was brought in for
 * @param at when it was; null where the history does not say
 * @param by by whom; empty where the history does not say
 */
public record BroughtBefore(
        Entry<Trace> trace, Entry<Run> run, @Nullable Instant at, String by) {
    /** Looks for the same samples, whatever their file is called; of several parts for one as long. Blocks. */
    public static Optional<BroughtBefore> of(Desk desk, BroughtTrace brought, int part) {
        Reduction reduction = brought.parts().get(part);
        boolean several = brought.parts().size() > 1;
        Facts facts = desk.view().facts();
        return facts
                .of(Trace.class)
                .where(trace ->
                        isSame(trace, brought) && (!several || trace.lasted().millis() == reduction.lasted() / 1_000))
                .stream()
                .findFirst()
                .flatMap(trace -> facts.of(Run.class).find(trace.fact().run()).map(run -> made(desk, trace, run)));
    }

    private static boolean isSame(Trace trace, BroughtTrace brought) {
        return trace.content().equals(brought.content()) || trace.samples().equals(brought.samples());
    }

    private static BroughtBefore made(Desk desk, Entry<Trace> trace, Entry<Run> run) {
        Optional<Amended> made = SeeHistory.of(desk.logbook(), trace).stream()
                .filter(Amended::makes)
                .findFirst();
        return new BroughtBefore(
                trace,
                run,
                made.map(Amended::at).orElse(null),
                made.map(Amended::who).orElse(""));
    }
}
