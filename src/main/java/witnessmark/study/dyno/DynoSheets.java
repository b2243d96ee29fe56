package witnessmark.study.dyno;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.DynoFigures;
import witnessmark.domain.DynoPoint;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.RunInStep;
import witnessmark.statistics.Repeated;
import witnessmark.study.result.CurvePoint;
import witnessmark.study.result.DynoAnswer;
import witnessmark.study.result.DynoChange;
import witnessmark.study.result.DynoFactor;
import witnessmark.study.result.DynoPull;
import witnessmark.study.result.DynoVerdict;
import witnessmark.study.result.PullPoint;

/** Dyno sheets worked out, each beside the engine's last baseline before it. */
public final class DynoSheets {
    private final Facts facts;

    public DynoSheets(Facts facts) {
        this.facts = facts;
    }

    /** Of an engine, in the order they were run. */
    public List<DynoAnswer> of(Id<Engine> engine) {
        List<Worked> sheets = new ArrayList<>();
        for (Entry<DynoSheet> sheet : facts.of(DynoSheet.class).inForce().toList()) {
            facts.of(Run.class)
                    .find(sheet.fact().run())
                    .filter(run -> run.inForce() && run.fact().engine().equals(engine))
                    .ifPresent(run -> sheets.add(worked(sheet, run)));
        }
        sheets.sort(Comparator.comparing(each -> each.run.fact().start()));
        List<DynoAnswer> answers = new ArrayList<>();
        Worked baseline = null;
        for (Worked each : sheets) {
            answers.add(answer(each, baseline));
            if (each.sheet.fact().baseline()) {
                baseline = each;
            }
        }
        return answers;
    }

    /**
     * One sheet with its own points, by itself: nothing is looked up.
     *
     * @param points all of this sheet
     */
    public static DynoAnswer alone(Entry<DynoSheet> sheet, Entry<Run> run, List<DynoPoint> points) {
        return answer(worked(sheet, run, points, List.of()), null);
    }

    /**
     * Mean corrected torque at a speed, N·m, on a straight line between the speeds beside it; NaN where the curve does not
     * reach.
     */
    public static double torque(DynoAnswer of, double rpm) {
        List<CurvePoint> mean = of.mean();
        boolean reaches = !mean.isEmpty()
                && mean.get(0).rpm() <= rpm
                && rpm <= mean.get(mean.size() - 1).rpm();
        return reaches ? Curve.torque(mean, rpm) : Double.NaN;
    }

    private record Worked(
            Entry<DynoSheet> sheet,
            Entry<Run> run,
            DynoFactor factor,
            List<DynoPull> pulls,
            List<CurvePoint> mean,
            int counted,
            Optional<Repeated> repeats,
            List<Entry<RunInStep>> steps) {
        @Nullable
        CurvePoint power() {
            return Curve.highest(mean, CurvePoint::power).orElse(null);
        }
    }

    private Worked worked(Entry<DynoSheet> sheet, Entry<Run> run) {
        List<DynoPoint> points = facts
                .of(DynoPoint.class)
                .where(point -> point.sheet().equals(sheet.id()))
                .stream()
                .map(Entry::fact)
                .toList();
        List<Entry<RunInStep>> steps = facts
                .of(RunInStep.class)
                .where(step -> step.run().equals(run.id()))
                .stream()
                .sorted(Comparator.comparing(step -> step.fact().number()))
                .toList();
        return worked(sheet, run, points, steps);
    }

    private static Worked worked(
            Entry<DynoSheet> sheet, Entry<Run> run, List<DynoPoint> points, List<Entry<RunInStep>> steps) {
        DynoFactor factor = Factors.of(sheet.fact());
        TreeMap<Integer, List<PullPoint>> pulls = new TreeMap<>();
        for (DynoPoint point : points) {
            pulls.computeIfAbsent(point.pull(), number -> new ArrayList<>()).add(point(sheet.fact(), factor, point));
        }
        List<DynoPull> sorted = new ArrayList<>();
        pulls.forEach((number, each) -> {
            each.sort(Comparator.comparingDouble(PullPoint::rpm));
            sorted.add(new DynoPull(number, each));
        });
        Curve curve = Curve.of(sorted);
        return new Worked(sheet, run, factor, sorted, curve.mean(), curve.pulls(), curve.repeats(), steps);
    }

    private static PullPoint point(DynoSheet sheet, DynoFactor factor, DynoPoint point) {
        double torque = point.torqueMillinewtonMetres() / 1e3;
        double by = factor.factor() == null ? Double.NaN : factor.factor();
        return sheet.figures() == DynoFigures.CORRECTED
                ? new PullPoint(point.speed().rpm(), torque / by, torque)
                : new PullPoint(point.speed().rpm(), torque, torque * by);
    }

    private static DynoAnswer answer(Worked each, @Nullable Worked baseline) {
        return new DynoAnswer(
                each.sheet,
                each.run,
                each.factor,
                each.pulls,
                each.mean,
                each.power(),
                Curve.highest(each.mean, CurvePoint::torque).orElse(null),
                each.repeats.map(Repeated::deviation).orElse(null),
                change(each, baseline),
                each.steps);
    }

    private static DynoChange change(Worked each, @Nullable Worked baseline) {
        if (baseline == null || each.sheet.fact().baseline()) {
            DynoVerdict verdict = each.sheet.fact().baseline() ? DynoVerdict.BASELINE : DynoVerdict.NO_BASELINE;
            return Against.none(null, verdict);
        }
        if (!each.sheet.fact().dyno().equals(baseline.sheet.fact().dyno())) {
            return Against.none(baseline.sheet, DynoVerdict.OTHER_DYNO);
        }
        if (each.factor.correction() != baseline.factor.correction()) {
            return Against.none(baseline.sheet, DynoVerdict.OTHER_CORRECTION);
        }
        Noise noise = Noise.of(List.of(each.repeats, baseline.repeats), each.counted, baseline.counted);
        return Against.of(baseline.sheet, each.mean, baseline.mean, noise);
    }
}
