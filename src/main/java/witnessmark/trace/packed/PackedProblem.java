package witnessmark.trace.packed;

import java.io.IOException;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** What is packed is not unpacked any further, because. */
public final class PackedProblem extends IOException {
    private final transient Problem problem;

    PackedProblem(Problem problem) {
        super(problem.kind().name());
        this.problem = problem;
    }

    public Problem problem() {
        return problem;
    }

    /** Whether what was unpacked before it can be looked at by somebody who knows of it. */
    boolean leavesText() {
        return problem.kind() == ProblemKind.PACKED_ENDS_EARLY || problem.kind() == ProblemKind.PACKED_CHECK;
    }
}
