package witnessmark.study.dyno;

import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Entry;
import witnessmark.study.result.CurvePoint;
import witnessmark.study.result.DynoChange;
import witnessmark.study.result.DynoVerdict;

/** One mean curve against another of the same dyno and correction. */
final class Against {
    /** Worth a look at the highest power (common practice, no source). */
    private static final double LOOK_AT_PEAK = 0.02;

    /** Worth a look anywhere (common practice, no source). */
    private static final double LOOK_ANYWHERE = 0.03;

    /** Worth a strip once leak-down confirms it (common practice, no source). */
    private static final double STRIP = 0.04;

    private Against() {}

    static DynoChange none(@Nullable Entry<DynoSheet> baseline, DynoVerdict verdict) {
        double nan = Double.NaN;
        return new DynoChange(baseline, verdict, nan, nan, nan, nan, nan, nan, nan, nan, false);
    }

    static DynoChange of(Entry<DynoSheet> baseline, List<CurvePoint> now, List<CurvePoint> then, Noise noise) {
        if (now.isEmpty() || then.isEmpty()) {
            return none(baseline, DynoVerdict.NOT_TO_COMPARE);
        }
        double from = Math.max(now.get(0).rpm(), then.get(0).rpm());
        double to = Math.min(last(now).rpm(), last(then).rpm());
        if (from > to) {
            return none(baseline, DynoVerdict.NOT_TO_COMPARE);
        }
        CurvePoint peakNow = Curve.highest(now, CurvePoint::power).orElseThrow();
        CurvePoint peakThen = Curve.highest(then, CurvePoint::power).orElseThrow();
        double peak = peakNow.power() / peakThen.power() - 1;
        double worst = Double.POSITIVE_INFINITY;
        double worstRpm = from;
        for (double rpm : speeds(now, then, from, to)) {
            double change = Curve.torque(now, rpm) / Curve.torque(then, rpm) - 1;
            if (change < worst) {
                worst = change;
                worstRpm = rpm;
            }
        }
        double area = area(now, then, from, to);
        return new DynoChange(
                baseline,
                verdict(peak, worst, noise.share()),
                peak,
                peakNow.rpm() - peakThen.rpm(),
                worst,
                worstRpm,
                area,
                from,
                to,
                noise.share(),
                noise.fromPulls());
    }

    private static DynoVerdict verdict(double peak, double worst, double noise) {
        if (-peak > Math.max(noise, STRIP)) {
            return DynoVerdict.STRIP;
        }
        boolean atPeak = -peak > noise && -peak >= LOOK_AT_PEAK;
        boolean anywhere = -worst > noise && -worst >= LOOK_ANYWHERE;
        if (atPeak || anywhere) {
            return DynoVerdict.LOOK;
        }
        if (-peak > noise) {
            return DynoVerdict.LESS;
        }
        return peak > noise ? DynoVerdict.MORE : DynoVerdict.ALIKE;
    }

    /** By the trapezoidal rule over the speeds of both: power between them is taken as straight. */
    private static double area(List<CurvePoint> now, List<CurvePoint> then, double from, double to) {
        double sumNow = 0;
        double sumThen = 0;
        double before = Double.NaN;
        for (double rpm : speeds(now, then, from, to)) {
            if (!Double.isNaN(before)) {
                sumNow += (power(now, before) + power(now, rpm)) * (rpm - before);
                sumThen += (power(then, before) + power(then, rpm)) * (rpm - before);
            }
            before = rpm;
        }
        return from == to ? power(now, from) / power(then, from) - 1 : sumNow / sumThen - 1;
    }

    private static double power(List<CurvePoint> mean, double rpm) {
        return Curve.torque(mean, rpm) * rpm; // only ratios are taken
    }

    private static TreeSet<Double> speeds(List<CurvePoint> now, List<CurvePoint> then, double from, double to) {
        TreeSet<Double> speeds = new TreeSet<>();
        for (List<CurvePoint> mean : List.of(now, then)) {
            for (CurvePoint point : mean) {
                if (point.rpm() >= from && point.rpm() <= to) {
                    speeds.add(point.rpm());
                }
            }
        }
        speeds.add(from);
        speeds.add(to);
        return speeds;
    }

    private static CurvePoint last(List<CurvePoint> mean) {
        return mean.get(mean.size() - 1);
    }
}
