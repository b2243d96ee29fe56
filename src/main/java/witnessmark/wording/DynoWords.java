package witnessmark.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.CorrectionKind;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.RunningTime;
import witnessmark.study.result.CurvePoint;
import witnessmark.study.result.DynoAnswer;
import witnessmark.study.result.DynoChange;
import witnessmark.study.result.DynoFactor;
import witnessmark.study.result.DynoFactor.Why;
import witnessmark.study.result.DynoVerdict;
import witnessmark.study.result.PullColumn;
import witnessmark.study.result.PullPoint;

/** Words what a dyno sheet comes to: the finding first, then what it rests on. */
public final class DynoWords {
    /** From here on a lower speed of the highest power is told with what it may come from (common practice, no source). */
    private static final double MOVED = 200;

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    public DynoWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    // The finding

    /**
     * "151.6 kW at 7 800 rpm, 0.5 % under the baseline of 17 Feb: within what the dyno repeats".
     *
     * @param day when the run of a sheet was, or null when nothing says
     */
    public String answer(DynoAnswer of, Function<DynoSheet, @Nullable LocalDate> day) {
        CurvePoint power = of.power();
        if (power == null) {
            return observedOnly(of);
        }
        String peak = kilowatts(power);
        DynoChange change = of.change();
        Entry<DynoSheet> baseline = change.baseline();
        String code = code(change.verdict());
        if (baseline == null) {
            return texts.get("dyno.answer." + code, peak);
        }
        LocalDate then = day.apply(baseline.fact());
        String since = then == null ? "" : measures.shortDate(then);
        return switch (change.verdict()) {
            case OTHER_DYNO ->
                texts.get("dyno.answer." + code, peak, since, baseline.fact().dyno());
            case OTHER_CORRECTION ->
                texts.get(
                        "dyno.answer." + code,
                        peak,
                        since,
                        records.word(baseline.fact().correction()));
            case NOT_TO_COMPARE -> texts.get("dyno.answer." + code, peak, since);
            case LOOK ->
                texts.get(
                        onlySomewhere(change) ? "dyno.answer.look_at" : "dyno.answer.look",
                        peak,
                        against(change.peak()),
                        since,
                        rpm(change.worstRpm()),
                        percent(change.worst()));
            default -> texts.get("dyno.answer." + code, peak, against(change.peak()), since);
        };
    }

    /** "152.4 kW at 7 800 rpm" of a sheet that is held against no other. */
    public String alone(DynoAnswer of) {
        CurvePoint power = of.power();
        return power == null ? observedOnly(of) : kilowatts(power);
    }

    /** Whether the highest power alone would not have asked for a look. */
    private static boolean onlySomewhere(DynoChange change) {
        return change.peak() > change.worst() + 0.005;
    }

    private String observedOnly(DynoAnswer of) {
        PullPoint peak = of.pulls().stream()
                .flatMap(pull -> pull.points().stream())
                .filter(point -> !Double.isNaN(point.observedPower()))
                .max(Comparator.comparingDouble(PullPoint::observedPower))
                .orElse(null);
        return peak == null
                ? texts.get("dyno.answer.nothing")
                : texts.get("dyno.answer.observed", one(peak.observedPower()), rpm(peak.rpm()));
    }

    /** What somebody has to look at, in a word or two. */
    public String verdict(DynoVerdict verdict) {
        return texts.get("dyno.verdict." + code(verdict));
    }

    /** "0.5 % under", "level with". */
    public String against(double change) {
        BigDecimal tenths = tenths(change);
        return tenths.signum() == 0
                ? texts.get("dyno.level")
                : texts.get(tenths.signum() < 0 ? "dyno.under" : "dyno.over", measures.number(tenths.abs(), 1));
    }

    /** A change with its sign, for a cell: "−0.5 %". */
    public String signed(double change) {
        BigDecimal tenths = tenths(change);
        String sign = tenths.signum() < 0 ? "−" : tenths.signum() > 0 ? "+" : "";
        return texts.get("dyno.percent", sign + measures.number(tenths.abs(), 1));
    }

    // Figures

    /** "151.6 kW at 7 800 rpm". */
    public String kilowatts(CurvePoint at) {
        return texts.get("dyno.power", one(at.power()), rpm(at.rpm()));
    }

    /** "197.6 N·m at 6 100 rpm". */
    public String newtonMetres(CurvePoint at) {
        return texts.get("dyno.torque", one(at.torque()), rpm(at.rpm()));
    }

    public String rpm(double rpm) {
        return measures.speed(new EngineSpeed((int) Math.round(rpm)));
    }

    /** One decimal. */
    public String one(double figure) {
        return measures.number(BigDecimal.valueOf(figure).setScale(1, RoundingMode.HALF_UP), 1);
    }

    private String percent(double change) {
        return measures.number(tenths(change).abs(), 1);
    }

    private static BigDecimal tenths(double share) {
        return BigDecimal.valueOf(share * 100).setScale(1, RoundingMode.HALF_UP);
    }

    private String factor(double factor) {
        return measures.number(BigDecimal.valueOf(factor).setScale(4, RoundingMode.HALF_UP), 4);
    }

    /** "torque in N·m". */
    public String column(PullColumn column) {
        return texts.get("dyno.column." + code(column));
    }

    // What it rests on

    /** The factor, what was observed, torque, how it repeats, where it moved, running in; in that order. */
    public List<String> basis(DynoAnswer of) {
        List<String> lines = new ArrayList<>();
        lines.add(factor(of.factor()));
        observed(of, lines);
        CurvePoint torque = of.torque();
        if (torque != null) {
            lines.add(texts.get("dyno.highest_torque", newtonMetres(torque)));
        }
        lines.add(repeats(of));
        change(of.change(), lines);
        if (!of.steps().isEmpty()) {
            RunningTime run =
                    of.steps().stream().map(step -> step.fact().lasted()).reduce(RunningTime.NONE, RunningTime::plus);
            lines.add(texts.get(
                    "dyno.run_in",
                    measures.running(run),
                    of.steps().size(),
                    measures.running(of.run().fact().running())));
        }
        return lines;
    }

    /** The same of a sheet whose correction is none that is known. */
    public List<String> basisUnknown(DynoAnswer of) {
        List<String> lines = new ArrayList<>(basis(of));
        lines.set(0, texts.get("dyno.factor.unknown"));
        return lines;
    }

    /** By what figures are multiplied, or why they are not. */
    public String factor(DynoFactor factor) {
        if (factor.correction() == CorrectionKind.NONE) {
            return texts.get("dyno.factor.none");
        }
        String standard = records.word(factor.correction());
        if (factor.byTheDyno()) {
            return byTheDyno(factor, standard);
        }
        if (!factor.missing().isEmpty()) {
            return texts.get("dyno.factor.missing", standard, missing(factor));
        }
        Double by = factor.factor();
        Double air = factor.byTotal() ? factor.total() : factor.dry();
        if (by == null || air == null) {
            return texts.get("dyno.factor.refused", standard, refused(factor));
        }
        return texts.get(
                factor.byTotal() ? "dyno.factor.worked.total" : "dyno.factor.worked", standard, factor(by), one(air));
    }

    private String byTheDyno(DynoFactor factor, String standard) {
        Double by = factor.factor();
        Double worked = factor.worked();
        String said = by == null
                ? texts.get("dyno.factor.unsaid", standard)
                : texts.get("dyno.factor.dyno", standard, factor(by));
        if (!factor.refused().isEmpty()) {
            return texts.get("dyno.two", said, texts.get("dyno.factor.beyond", refused(factor)));
        }
        if (worked == null) {
            return factor.missing().isEmpty()
                    ? said
                    : texts.get("dyno.two", said, texts.get("dyno.factor.unchecked", missing(factor)));
        }
        return texts.get(
                "dyno.two",
                said,
                texts.get(factor.differs() ? "dyno.factor.differs" : "dyno.factor.agrees", factor(worked)));
    }

    private String missing(DynoFactor factor) {
        return measures.all(factor.missing().stream()
                .map(needed -> texts.get("dyno.needed." + code(needed)))
                .toList());
    }

    private String refused(DynoFactor factor) {
        return measures.all(
                factor.refused().stream().map(why -> refused(why, factor)).toList());
    }

    private String refused(Why why, DynoFactor factor) {
        String key = "dyno.refused." + code(why);
        double limit = factor.limit(why);
        Double worked = factor.worked();
        return switch (why) {
            case TOO_COLD, TOO_WARM, TOO_THIN, TOO_DENSE -> texts.get(key, whole(limit));
            case FACTOR_BELOW, FACTOR_ABOVE -> texts.get(key, worked == null ? "" : factor(worked), limit(limit));
            case NO_AIR -> texts.get(key);
        };
    }

    private String whole(double figure) {
        return measures.number(Math.round(figure));
    }

    private String limit(double figure) {
        return measures.number(BigDecimal.valueOf(figure), 2);
    }

    /** What was read stays beside what it was turned to. */
    private void observed(DynoAnswer of, List<String> lines) {
        CurvePoint power = of.power();
        CurvePoint torque = of.torque();
        Double by = of.factor().factor();
        if (power != null && torque != null && by != null && of.factor().corrects()) {
            lines.add(texts.get("dyno.observed", one(power.power() / by), one(torque.torque() / by)));
        }
    }

    private String repeats(DynoAnswer of) {
        Double repeats = of.repeats();
        int pulls = of.pulls().size();
        if (repeats == null) {
            return texts.get(pulls > 1 ? "dyno.repeats.apart" : "dyno.repeats.one", pulls);
        }
        BigDecimal hundredths = BigDecimal.valueOf(repeats * 100).setScale(2, RoundingMode.HALF_UP);
        return texts.get("dyno.repeats", pulls, measures.number(hundredths, 2));
    }

    private void change(DynoChange change, List<String> lines) {
        if (Double.isNaN(change.peak())) {
            return;
        }
        lines.add(
                texts.get(change.noiseFromPulls() ? "dyno.noise.pulls" : "dyno.noise.usual", percent(change.noise())));
        if (change.peakMoved() <= -MOVED) {
            lines.add(texts.get("dyno.moved.springs", whole(-change.peakMoved())));
        } else if (change.peakMoved() != 0) {
            lines.add(texts.get(
                    change.peakMoved() < 0 ? "dyno.moved.down" : "dyno.moved.up", whole(Math.abs(change.peakMoved()))));
        }
        lines.add(texts.get("dyno.worst", rpm(change.worstRpm()), against(change.worst())));
        lines.add(texts.get("dyno.area", rpm(change.from()), rpm(change.to()), against(change.area())));
    }

    /** "Power run, 20 May". */
    public String name(Run run) {
        String name = run.name().isEmpty() ? records.label(records.word(run.kind())) : run.name();
        return texts.get("dyno.name", name, measures.date(run.start().day()));
    }

    private static String code(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
