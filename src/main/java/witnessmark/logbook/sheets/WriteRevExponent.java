package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.PartKind;
import witnessmark.domain.RevExponent;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.typed.TypedFigure;

/**
 * How speed wears a kind of part in engines of a design: the exponent is typed, or comes of the slope m of an S–N line
 * as 1 + 2m ({@link witnessmark.mechanics.RevDamage#ofSlope}). Nothing is taken as usual.
 */
public final class WriteRevExponent implements LogSheet {
    public static final SheetField OF = choice("wear_of", 2);
    public static final SheetField KIND = choice("part_kind", 1);
    public static final SheetField REFERENCE = of("wear_reference", FieldKind.SPEED);
    public static final SheetField EXPONENT = of("wear_exponent", FieldKind.TEXT);
    public static final SheetField SLOPE = of("wear_slope", FieldKind.TEXT);
    public static final SheetField SOURCE = text("source", 2);

    private static final BigDecimal LEAST = new BigDecimal("0.01");
    private static final BigDecimal MOST = BigDecimal.valueOf(100);
    private static final BigDecimal STEEPEST = new BigDecimal("49.5");
    private static final int DECIMALS = 2;

    @Override
    public String key() {
        return "write_rev_exponent";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("wear_parts", List.of(OF, KIND)),
                SheetGroup.of("wear_speed", List.of(REFERENCE, EXPONENT, SLOPE)),
                SheetGroup.of("speed_source", List.of(SOURCE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Entry<EngineDesign>> designs = sight.facts().of(EngineDesign.class).where(design -> true);
        return Map.of(OF, designs.size() == 1 ? designs.get(0).id().text() : "", KIND, "");
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(OF)) {
            return sight.all(EngineDesign.class, design -> true);
        }
        return field.equals(KIND) ? Choice.words(PartKind.values()) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<EngineDesign> design = in.chosen(OF, EngineDesign.class);
        @Nullable PartKind kind = in.word(KIND, PartKind.class);
        in.needed(REFERENCE);
        EngineSpeed reference = new ReadValues(in).speed(REFERENCE);
        if (reference == null) {
            in.note(REFERENCE, SheetNote.of("wear_reference"));
        }
        Integer exponent = exponent(in);
        String source = in.needed(SOURCE);
        in.note(SOURCE, SheetNote.of("source_example"));
        if (in.fine() && design != null && kind != null && reference != null && exponent != null) {
            RevExponent now = new RevExponent(design.id(), kind, reference, exponent, source);
            Optional<Entry<RevExponent>> before = before(in.sight(), design, kind);
            if (before.isPresent() && !in.isCorrecting()) {
                in.change(OF, before.get(), now);
            } else {
                in.make(OF, now);
            }
        }
    }

    /** Hundredths of the exponent, typed or of a slope; one of the two is asked for. */
    private static @Nullable Integer exponent(ReadSheet in) {
        BigDecimal typed = figure(in, EXPONENT, LEAST, MOST);
        BigDecimal slope = figure(in, SLOPE, LEAST, STEEPEST);
        if (slope != null) {
            BigDecimal k = slope.multiply(BigDecimal.valueOf(2)).add(BigDecimal.ONE);
            in.note(SLOPE, SheetNote.echo("wear_of_slope", k));
            if (typed != null && typed.compareTo(k) != 0) {
                in.wrong(SLOPE, ProblemKind.NOT_TOGETHER, RecordTypes.of(RevExponent.class));
                return null;
            }
            return hundredths(k);
        }
        if (in.text(SLOPE).isEmpty()) {
            in.note(SLOPE, SheetNote.of("wear_slope"));
            in.needed(EXPONENT);
        }
        return typed == null ? null : hundredths(typed);
    }

    private static @Nullable BigDecimal figure(ReadSheet in, SheetField field, BigDecimal least, BigDecimal most) {
        BigDecimal figure = new ReadValues(in).read(field, TypedFigure::decimal);
        if (figure == null) {
            return null;
        }
        if (figure.compareTo(least) < 0 || figure.compareTo(most) > 0) {
            in.wrong(field, ProblemKind.OUT_OF_RANGE, field, figure, least, most);
            return null;
        }
        if (figure.stripTrailingZeros().scale() > DECIMALS) {
            in.wrong(field, Problem.unread(field, in.text(field), List.of("6.5", "11")));
            return null;
        }
        return figure;
    }

    private static int hundredths(BigDecimal figure) {
        return figure.movePointRight(DECIMALS).intValueExact();
    }

    private static Optional<Entry<RevExponent>> before(SheetSight sight, Entry<EngineDesign> design, PartKind kind) {
        return sight
                .facts()
                .of(RevExponent.class)
                .where(wear -> wear.design().equals(design.id()) && wear.partKind() == kind)
                .stream()
                .reduce((one, other) -> other);
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof RevExponent wear)) {
            return Optional.empty();
        }
        return Optional.of(Map.of(
                OF, wear.design().text(),
                KIND, wear.partKind().code(),
                REFERENCE, Integer.toString(wear.reference().rpm()),
                EXPONENT,
                        BigDecimal.valueOf(wear.hundredths(), DECIMALS)
                                .stripTrailingZeros()
                                .toPlainString(),
                SOURCE, wear.source()));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                typed.text(KIND),
                sight.find(EngineDesign.class, typed.text(OF))
                        .map(design -> design.fact().name())
                        .orElse(""));
    }
}
