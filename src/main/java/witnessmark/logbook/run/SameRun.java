package witnessmark.logbook.run;

import java.util.Optional;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.ledger.result.About;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Finds the run that another may be again: the same engine, out within a minute, running as long. */
final class SameRun {
    private static final long WITHIN_MILLIS = 60_000;

    private SameRun() {}

    /** The run, marked when another may be the same; then it counts nowhere until somebody decides. */
    static Entry<Run> marked(Facts facts, Entry<Run> run) {
        return facts.of(Run.class)
                .inForce()
                .filter(other -> other.fact().perhapsSame() == null && perhaps(run.fact(), other.fact()))
                .findFirst()
                .map(other -> new Entry<>(
                        run.id(), run.fact().perhapsSameAs(other.id()), run.standing(), run.struckBecause(), run.rev()))
                .orElse(run);
    }

    /** What is to be said of a run that was marked. */
    static Optional<Problem> problem(Facts facts, Entry<Run> run) {
        Id<Run> other = run.fact().perhapsSame();
        if (other == null) {
            return Optional.empty();
        }
        Run there = facts.of(Run.class).get(other);
        return Optional.of(Problem.of(
                ProblemKind.PERHAPS_SAME_RUN,
                facts.of(Engine.class).get(there.engine()).number(),
                there.name(),
                About.start(there),
                there.running()));
    }

    private static boolean perhaps(Run run, Run other) {
        return run.engine().equals(other.engine())
                && Math.abs(run.start().epochMillis() - other.start().epochMillis()) <= WITHIN_MILLIS
                && run.running().equals(other.running());
    }
}
