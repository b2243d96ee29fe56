package witnessmark.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.AtSpeed;
import witnessmark.fit.result.Closing;
import witnessmark.fit.result.Conditions;
import witnessmark.fit.result.MarkReading;
import witnessmark.fit.result.RodLoad;
import witnessmark.fit.result.SpeedAnswer;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Temperature;

/** What the fit at speed says, the answer first. It is an estimate, and no leave to run. */
public final class SpeedWords {
    private static final int HUNDREDTHS = 2;
    /** No speed of contact is known better, in revolutions a minute. */
    private static final int WORKED_OUT_TO = 50;

    private final Texts texts;
    private final Measures measures;
    private final FitWords fit;
    private final RecordWords records;

    public SpeedWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.fit = new FitWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    /** The word of the mark. */
    public String word(SpeedAnswer.Verdict verdict) {
        return texts.get("speed.verdict." + verdict.name().toLowerCase(Locale.ROOT));
    }

    /** The nearest side at rest and at each speed that matters, with its limit at rest; the answer in one line. */
    public String headline(SpeedAnswer answer, @Nullable Answer squish) {
        Integer rpm = answer.judgedAt();
        Optional<AtSpeed> nearest = rpm == null ? Optional.empty() : answer.nearest(rpm);
        if (nearest.isEmpty()) {
            return texts.get("speed.not_known");
        }
        AtSpeed side = nearest.get();
        List<String> parts = new ArrayList<>();
        parts.add(atRest(side, squish));
        if (answer.redLine() != null) {
            parts.add(texts.get("speed.at", speed(answer.redLine()), band(side.headAt(answer.redLine()))));
        }
        if (answer.seen() != null && !answer.seen().equals(answer.redLine())) {
            parts.add(texts.get("speed.seen", speed(answer.seen()), band(side.headAt(answer.seen()))));
        }
        return texts.get(
                answer.isCold(side) ? "speed.headline.cold" : "speed.headline",
                records.label(fit.of(side.place())),
                measures.row(parts));
    }

    /** What a chart of a side finds. */
    public String finding(SpeedAnswer answer, AtSpeed side) {
        double rpm = answer.judgedAt() == null ? side.reference() : answer.judgedAt();
        return texts.get(
                "speed.finding",
                records.label(fit.where(side.place())),
                millimetres(side.headAt(rpm).likely()),
                speed(rpm));
    }

    private String atRest(AtSpeed side, @Nullable Answer squish) {
        String rest = millimetres(side.deck() + side.above());
        return squish == null
                ? texts.get("speed.rest", rest)
                : squish.checks().stream()
                        .filter(check -> check.place().equals(side.place()))
                        .findFirst()
                        .map(check -> fit.bounds(MeasureKind.CROWN_TO_HEAD, check.bounds()))
                        .filter(bounds -> !bounds.isEmpty())
                        .map(bounds -> texts.get("speed.rest.bounds", rest, bounds))
                        .orElseGet(() -> texts.get("speed.rest", rest));
    }

    /** What is wanted at speed, and what closes most. */
    public List<String> beside(SpeedAnswer answer) {
        List<String> lines = new ArrayList<>();
        Integer rpm = answer.judgedAt();
        if (answer.margin() != null) {
            lines.add(texts.get("speed.margin", millimetres(answer.margin())));
        }
        if (rpm != null) {
            answer.nearest(rpm)
                    .flatMap(side -> side.most(rpm))
                    .ifPresent(closing -> lines.add(texts.get(
                            "speed.most", name(closing.kind()), millimetres(closing.at(rpm / reference(answer))))));
            rightened(answer, rpm).ifPresent(lines::add);
        }
        return lines;
    }

    private static double reference(SpeedAnswer answer) {
        return answer.hot().isEmpty() ? 1 : answer.hot().get(0).reference();
    }

    /** How much would have to lie between crown and head at rest, so that the margin is kept even at the low end. */
    private Optional<String> rightened(SpeedAnswer answer, int rpm) {
        Double margin = answer.margin();
        return margin == null
                ? Optional.empty()
                : answer.nearest(rpm)
                        .filter(side -> side.headAt(rpm).low() < margin)
                        .map(side -> {
                            double wanted = side.deck()
                                    + side.above()
                                    + margin
                                    - side.headAt(rpm).low();
                            return texts.get(
                                    "speed.righten",
                                    millimetres(margin),
                                    speed(rpm),
                                    millimetres(Math.ceil(wanted * 100) / 100));
                        });
    }

    /** Whether the ring is met, for each cylinder whose ring hangs over; a sentence that none does else. */
    public List<String> rings(SpeedAnswer answer) {
        List<AtSpeed> over = answer.hot().stream()
                .filter(AtSpeed::ringInTheWay)
                .sorted(Comparator.comparing((AtSpeed side) -> side.deck()))
                .toList();
        if (over.isEmpty()) {
            boolean known = answer.hot().stream().anyMatch(side -> side.overhang() != null);
            return answer.hot().isEmpty()
                    ? List.of()
                    : List.of(texts.get(known ? "speed.ring.none" : "speed.ring.not_known"));
        }
        return over.stream().map(side -> ring(side, answer)).toList();
    }

    private String ring(AtSpeed side, SpeedAnswer answer) {
        double top = answer.top();
        AtSpeed.Contact contact = side.contact(top);
        String where = fit.where(side.place());
        String over = millimetres(Objects.requireNonNull(side.overhang()));
        String seen = answer.seen() == null
                ? texts.get("speed.ring.seen.not")
                : texts.get("speed.ring.seen", speed(answer.seen()));
        if (contact.notBefore() == null) {
            return texts.get("speed.ring.clear", over, where, speed(top), seen);
        }
        String from = speed(Math.floor(contact.notBefore() / WORKED_OUT_TO) * WORKED_OUT_TO);
        return contact.sureBy() == null
                ? texts.get("speed.ring.from", over, where, from, speed(top), seen)
                : texts.get(
                        "speed.ring.between",
                        over,
                        where,
                        from,
                        speed(Math.ceil(contact.sureBy() / WORKED_OUT_TO) * WORKED_OUT_TO),
                        seen);
    }

    /** What makes the clearance of a side at a speed, its sum last. */
    public List<FitWords.Line> column(AtSpeed side, double rpm) {
        List<FitWords.Line> lines = new ArrayList<>();
        lines.add(new FitWords.Line(texts.get("speed.column.deck"), millimetres(side.deck()), ""));
        lines.add(new FitWords.Line(texts.get("speed.column.above"), millimetres(side.above()), ""));
        for (Closing closing : side.closings()) {
            lines.add(new FitWords.Line(
                    texts.get("speed.column." + closing.kind().name().toLowerCase(Locale.ROOT)),
                    millimetres(-closing.at(rpm / side.reference())),
                    texts.get("fit.basis." + closing.basis().name().toLowerCase(Locale.ROOT))));
        }
        lines.add(new FitWords.Line(texts.get("speed.column.sum", speed(rpm)), band(side.headAt(rpm)), ""));
        return lines;
    }

    /** What is missing, and what is taken as usual. */
    public List<String> missing(SpeedAnswer answer) {
        List<String> lines = new ArrayList<>();
        if (!answer.lacks().isEmpty()) {
            lines.add(texts.get(
                    "speed.lacks",
                    measures.row(answer.lacks().stream()
                            .sorted()
                            .map(lack -> texts.get("speed.lack." + lack.name().toLowerCase(Locale.ROOT)))
                            .toList())));
        }
        answer.taken().stream()
                .sorted()
                .map(taken -> texts.get("speed.taken." + taken.name().toLowerCase(Locale.ROOT)))
                .forEach(lines::add);
        return lines;
    }

    /** How warm, and of what. */
    public String conditions(Conditions warm) {
        return texts.get(
                "speed.conditions",
                part(records.word(warm.metals().block()), warm.block()),
                part(records.word(warm.metals().crank()), warm.crank()),
                part(records.word(warm.metals().rods()), warm.rods()),
                part(records.word(warm.metals().pistons()), warm.pistons()),
                degrees(warm.measuredAt()));
    }

    private String part(String metal, double celsius) {
        return texts.get("speed.part", metal, degrees(celsius));
    }

    private String degrees(double celsius) {
        return measures.temperature(Temperature.ofCelsius(BigDecimal.valueOf(celsius)));
    }

    /** What the rod bolts hold at a speed. */
    public String load(RodLoad load, boolean overRev) {
        String key = overRev ? "speed.load.over_rev" : "speed.load";
        String rod = kilonewtons(load.rod());
        if (load.bolt() == null) {
            return texts.get(key + ".rod", speed(load.rpm()), rod);
        }
        String bolt = kilonewtons(load.bolt());
        return load.margin() == null
                ? texts.get(key + ".bolt", speed(load.rpm()), rod, bolt)
                : texts.get(
                        key + ".margin",
                        speed(load.rpm()),
                        rod,
                        bolt,
                        measures.number(BigDecimal.valueOf(load.margin()), 1));
    }

    /** What the marks fit, as a hint. */
    public List<String> marks(MarkReading reading) {
        List<String> lines = new ArrayList<>();
        lines.add(texts.get(reading.toldApart() ? "speed.marks" : "speed.marks.alike"));
        reading.fits()
                .forEach(each -> lines.add(texts.get(
                        "speed.marks." + each.how().name().toLowerCase(Locale.ROOT),
                        millimetres(each.amount()),
                        millimetres(each.leftOver()),
                        each.cylinder() == null ? 0 : each.cylinder())));
        lines.add(texts.get("speed.marks.ask"));
        return lines;
    }

    private String name(Closing.Kind kind) {
        return texts.get("speed.kind." + kind.name().toLowerCase(Locale.ROOT));
    }

    /** Shown to a hundredth: nothing here is known better. */
    public String millimetres(double figure) {
        return texts.get("measures.figure", bare(figure), "mm");
    }

    private String bare(double figure) {
        BigDecimal rounded = BigDecimal.valueOf(figure).setScale(HUNDREDTHS, RoundingMode.HALF_UP);
        return measures.number(rounded, HUNDREDTHS);
    }

    private String band(AtSpeed.Band band) {
        return texts.get("speed.band", millimetres(band.likely()), bare(band.low()), bare(band.high()));
    }

    private String speed(double rpm) {
        return measures.speed(new EngineSpeed((int) Math.round(rpm)));
    }

    private String kilonewtons(double newtons) {
        return texts.get("measures.figure", measures.number(BigDecimal.valueOf(newtons / 1000), 1), "kN");
    }
}
