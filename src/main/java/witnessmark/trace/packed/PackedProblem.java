package witnessmark.trace.packed;

import java.io.IOException;
import witnessmark.outcome.Problem;

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
}
