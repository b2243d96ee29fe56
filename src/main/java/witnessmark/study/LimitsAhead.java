package witnessmark.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;
import witnessmark.statistics.TheilSen;
import witnessmark.study.result.LimitAhead;
import witnessmark.study.result.LimitAhead.What;
import witnessmark.study.result.Read;
import witnessmark.study.result.Slope;

/** When a line through readings meets the figures of their limits. */
final class LimitsAhead {
    private static final double WHOLE = 10_000;
    private static final Comparator<LimitAhead> ORDER = Comparator.comparing((LimitAhead ahead) -> !ahead.passed())
            .thenComparing(LimitAhead::likely, Comparator.nullsLast(Comparator.naturalOrder()));

    private final Read last;
    private final double baseline;
    private final double now;
    private final @Nullable TheilSen line;
    private final @Nullable Slope slope;
    private final Function<Entry<ReadingLimit>, @Nullable Entry<RunOn>> signed;

    /**
     * @param now hours run by the day looked at
     * @param line and slope of a trend; null where there is none to go on
     * @param signed the decision to go on past a limit, or null
     */
    LimitsAhead(
            Read last,
            double baseline,
            double now,
            @Nullable TheilSen line,
            @Nullable Slope slope,
            Function<Entry<ReadingLimit>, @Nullable Entry<RunOn>> signed) {
        this.last = last;
        this.baseline = baseline;
        this.now = now;
        this.line = slope == null || slope.mayBeLevel() ? null : line;
        this.slope = slope;
        this.signed = signed;
    }

    List<LimitAhead> of(List<Entry<ReadingLimit>> limits) {
        List<LimitAhead> all = new ArrayList<>();
        for (Entry<ReadingLimit> entry : limits) {
            ReadingLimit limit = entry.fact();
            add(all, entry, What.AT_MOST, limit.atMost() == null ? null : Double.valueOf(limit.atMost()), 1);
            add(all, entry, What.AT_LEAST, limit.atLeast() == null ? null : Double.valueOf(limit.atLeast()), -1);
            if (limit.changeAtMost() != null) {
                add(all, entry, What.ABOVE_BASELINE, baseline + limit.changeAtMost(), 1);
                add(all, entry, What.BELOW_BASELINE, baseline - limit.changeAtMost(), -1);
            }
            if (limit.fallAtMost() != null) {
                add(all, entry, What.BELOW_BASELINE, baseline * (1 - limit.fallAtMost() / WHOLE), -1);
            }
        }
        all.sort(ORDER);
        return all;
    }

    /** @param way 1 where figures above it are past it, −1 where those below are */
    private void add(List<LimitAhead> into, Entry<ReadingLimit> limit, What what, @Nullable Double figure, int way) {
        if (figure == null || figure <= 0) {
            return; // nothing is read below 0
        }
        if (way * (last.figure() - figure) > 0) {
            into.add(new LimitAhead(limit, what, figure, true, null, null, null, signed.apply(limit)));
        } else if (line != null && slope != null && way * slope.perHour() > 0) {
            double one = until(line, slope.least() == null ? 0 : slope.least(), figure);
            double other = until(line, slope.most() == null ? 0 : slope.most(), figure);
            into.add(new LimitAhead(
                    limit,
                    what,
                    figure,
                    false,
                    Math.min(one, other),
                    Math.max(Math.min(one, other), until(line, slope.perHour(), figure)),
                    Math.max(one, other),
                    null));
        } else {
            into.add(new LimitAhead(limit, what, figure, false, null, null, null, null));
        }
    }

    /** Hours from now until a line of that slope through the readings is there; 0 where it is past it already. */
    private double until(TheilSen through, double perHour, double figure) {
        return Math.max(0, (figure - through.intercept(perHour)) / perHour - now);
    }
}
