package witnessmark.trace.reduce;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Defects;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.RunFigures;

/**
 * Whether a trace's time can be that of its run. Ten samples a second read as a hundred, or seconds as milliseconds, are a
 * factor of ten or more; waiting in the pits with the engine on is not.
 */
public final class TimeBaseCheck {
    /** More than so many times as long, or as short, is another time base. Common practice, no source. */
    private static final double TIMES = 4;

    private TimeBaseCheck() {}

    /**
     * The same of a part that may end early: that is said first, and not that its time is another.
     *
     * @param defects of the file where the part is its last; null where it is not
     */
    public static Optional<Problem> of(Reduction trace, RunFigures run, @Nullable Defects defects) {
        boolean cut = defects != null && defects.times().containsKey(DefectKind.CUT_OFF);
        return of(trace, run)
                .map(problem -> cut && isShorter(problem)
                        ? Problem.of(
                                ProblemKind.TRACE_ENDS_EARLY,
                                problem.facts().get(0),
                                problem.facts().get(1))
                        : problem);
    }

    private static boolean isShorter(Problem problem) {
        return ((BigDecimal) problem.facts().get(2)).compareTo(BigDecimal.ONE) < 0;
    }

    /** The problem with its time; empty when it fits or nothing is written to hold it against. */
    public static Optional<Problem> of(Reduction trace, RunFigures run) {
        RunningTime written = run.expected();
        RunningTime own = new RunningTime(trace.ran());
        if (written == null || own.millis() == 0) {
            return Optional.empty();
        }
        double times = (double) own.millis() / written.millis();
        return times < TIMES && times > 1 / TIMES
                ? Optional.empty()
                : Optional.of(Problem.of(
                        ProblemKind.TRACE_TIME_BASE,
                        own,
                        written,
                        BigDecimal.valueOf(times).round(new MathContext(2))));
    }
}
