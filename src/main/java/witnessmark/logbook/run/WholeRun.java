package witnessmark.logbook.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Coherence;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** What is wrong with a run as a whole: what stands under a field already is not said again. */
final class WholeRun {
    private static final Set<ProblemKind> SAID_UNDER_A_FIELD = Set.of(
            ProblemKind.RUN_IN_FUTURE,
            ProblemKind.RUN_LENGTH_UNUSUAL,
            ProblemKind.RUN_TOO_LONG,
            ProblemKind.OUT_OF_RANGE,
            ProblemKind.LONGER_THAN_RUN);

    private WholeRun() {}

    /** @param facts everything written; the run itself may be among it, as it was */
    static List<Problem> problems(Facts facts, Entry<Run> run, AsOf today) {
        List<Problem> problems = new ArrayList<>();
        SameRun.problem(facts, run).ifPresent(problems::add);
        Coherence.forRun(facts, run, today).stream()
                .filter(problem -> !SAID_UNDER_A_FIELD.contains(problem.kind()))
                .forEach(problems::add);
        return problems;
    }
}
