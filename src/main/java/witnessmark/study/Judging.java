package witnessmark.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;
import witnessmark.ledger.ReadingSeries;
import witnessmark.statistics.MannKendall;
import witnessmark.statistics.Medians;
import witnessmark.statistics.TheilSen;
import witnessmark.study.result.Call;
import witnessmark.study.result.LimitAhead;
import witnessmark.study.result.Neighbours;
import witnessmark.study.result.PlaceTrend;
import witnessmark.study.result.Read;
import witnessmark.study.result.Slope;
import witnessmark.study.result.Trend;

/** Judges what is read at one place: by itself first, then beside the others. */
final class Judging {
    /** A trend is called when readings without one would be in an order as clear no more often than this. */
    static final double CHANCE = 0.10;

    /** To stand off its neighbours a place is so many times further from their middle than two readings differ by. */
    private static final int STANDS_OFF = 2;

    private final List<Entry<ReadingLimit>> limits;
    private final Function<Entry<ReadingLimit>, @Nullable Entry<RunOn>> signed;
    private final double now;
    /** What two readings of the same thing differ by. */
    private final double differ;

    Judging(
            List<Entry<ReadingLimit>> limits,
            Function<Entry<ReadingLimit>, @Nullable Entry<RunOn>> signed,
            double now,
            double differ) {
        this.limits = limits;
        this.signed = signed;
        this.now = now;
        this.differ = differ;
    }

    /** The readings of one place, those that are compared apart from the others. */
    record Sorted(
            ReadingSeries series,
            Beginning beginning,
            List<Read> counted,
            List<Read> before,
            List<Read> apart,
            Read baseline) {
        Optional<Read> last() {
            return counted.isEmpty() ? Optional.empty() : Optional.of(counted.get(counted.size() - 1));
        }
    }

    PlaceTrend judge(Sorted place, List<Sorted> all) {
        List<Read> counted = place.counted();
        double[] hours = counted.stream().mapToDouble(Read::hours).toArray();
        double[] figures = counted.stream().mapToDouble(Read::figure).toArray();
        boolean enough = counted.size() >= Trend.FEWEST
                && Arrays.stream(hours).distinct().count() > 1;
        MannKendall order = enough ? MannKendall.of(hours, figures) : null;
        TheilSen line = enough ? TheilSen.of(hours, figures) : null;
        Slope slope = line == null ? null : slope(line);
        Trend trend = order == null ? Trend.TOO_FEW : trend(order, figures);
        Neighbours beside = neighbours(place, all);
        boolean goes = trend == Trend.RISING || trend == Trend.FALLING;
        List<LimitAhead> ahead = place.last()
                .map(last -> new LimitsAhead(
                                last, place.baseline().figure(), now, goes ? line : null, goes ? slope : null, signed)
                        .of(limits))
                .orElse(List.of());
        return new PlaceTrend(
                place.series().place(),
                counted,
                place.before(),
                place.apart(),
                place.beginning().build(),
                trend,
                order == null ? null : order.p(),
                slope,
                place.baseline(),
                beside,
                ahead,
                call(place, trend, beside, ahead));
    }

    private static Slope slope(TheilSen line) {
        Optional<TheilSen.Interval> interval = line.interval(1 - CHANCE);
        return new Slope(
                line.slope(),
                interval.map(TheilSen.Interval::lower).orElse(null),
                interval.map(TheilSen.Interval::upper).orElse(null),
                line.intercept());
    }

    /** A trend no larger than two readings of the same thing differ by is none, however well its readings are in order. */
    private Trend trend(MannKendall order, double[] figures) {
        double change = figures[figures.length - 1] - figures[0];
        if (order.p() > CHANCE || Math.abs(change) <= differ || Math.signum(change) != Long.signum(order.score())) {
            return Trend.NONE;
        }
        return change > 0 ? Trend.RISING : Trend.FALLING;
    }

    private @Nullable Neighbours neighbours(Sorted place, List<Sorted> all) {
        Read last = place.last().orElse(null);
        Optional<String> beside = Places.beside(place.series().place());
        if (last == null || beside.isEmpty() || !Places.alike(place.series().kind())) {
            return null;
        }
        Reading reading = last.reading().fact();
        List<Read> others = new ArrayList<>();
        for (Sorted other : all) {
            if (other != place && Places.beside(other.series().place()).equals(beside)) {
                other.last()
                        .filter(read -> sameDay(read.reading().fact(), reading))
                        .ifPresent(others::add);
            }
        }
        if (others.size() < 2) {
            return null;
        }
        double middle = Medians.of(others.stream().mapToDouble(Read::figure).toArray());
        double off = last.figure() - middle;
        return new Neighbours(others.size(), middle, off, Math.abs(off) > STANDS_OFF * differ);
    }

    private static boolean sameDay(Reading one, Reading other) {
        return one.at().day().equals(other.at().day()) && one.warmth() == other.warmth();
    }

    private Call call(Sorted place, Trend trend, @Nullable Neighbours beside, List<LimitAhead> ahead) {
        int way = trend == Trend.RISING ? 1 : trend == Trend.FALLING ? -1 : 0;
        int bad = Differs.worse(place.series().kind());
        boolean worse = way != 0 && (bad == 0 || bad == way);
        if (worse && beside != null && beside.standsOff() && Math.signum(beside.off()) == way) {
            return Call.LOOK;
        }
        if (ahead.stream().anyMatch(LimitAhead::passed)) {
            return Call.PAST_LIMIT;
        }
        return worse ? Call.WORSE : Call.NONE;
    }

    /** Highest less lowest of what was read on the last day, at two places alike or more. */
    @Nullable
    Double spread(List<Sorted> all) {
        Reading newest = all.stream()
                .flatMap(place -> place.last().stream())
                .map(read -> read.reading().fact())
                .max(Comparator.comparing(Reading::at))
                .orElse(null);
        if (newest == null
                || !Places.alike(newest.kind())
                || Places.beside(newest.place()).isEmpty()) {
            return null;
        }
        double[] figures = all.stream()
                .flatMap(place -> place.last().stream())
                .filter(read -> sameDay(read.reading().fact(), newest))
                .filter(read -> Places.beside(read.reading().fact().place()).equals(Places.beside(newest.place())))
                .mapToDouble(Read::figure)
                .sorted()
                .toArray();
        return figures.length < 2 ? null : Double.valueOf(figures[figures.length - 1] - figures[0]);
    }
}
