package witnessmark.logbook.sheets;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.ReadingKind;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Length;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.typed.LengthUnit;
import witnessmark.quantity.typed.PressureUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedFigure;

/**
 * A figure of a reading.
 *
 * @param kind what was read, which is not graded
 * @param value in the kind's unit
 */
public record ReadingFigure(ReadingKind kind, long value) {
    private static final long WHOLE = 10_000;

    /** The figure typed in a field, echoed under it; null when it is empty or cannot be, and then noted. */
    static @Nullable Long read(ReadSheet in, SheetField field, ReadingKind kind) {
        String text = in.text(field);
        SheetUnits units = in.sight().units();
        in.note(
                field,
                SheetNote.of(
                        "reading_in",
                        switch (kind.unit()) {
                            case PASCAL -> units.pressure();
                            case NANOMETRE -> units.length();
                            default -> kind.unit();
                        }));
        Long value = new ReadValues(in).read(field, typed -> figure(kind.unit(), typed, units));
        if (value == null) {
            return null;
        }
        if (value < 0) {
            in.wrong(field, Problem.unread(field, text, example(kind.unit())));
            return null;
        }
        if (kind.unit() == ReadingKind.Unit.HUNDREDTH_OF_PERCENT && value > WHOLE) {
            in.wrong(
                    field,
                    ProblemKind.OUT_OF_RANGE,
                    field,
                    new ReadingFigure(kind, value),
                    new ReadingFigure(kind, 0),
                    new ReadingFigure(kind, WHOLE));
            return null;
        }
        in.note(field, SheetNote.echo("understood", new ReadingFigure(kind, value)));
        return value;
    }

    /** A share typed in percent, as hundredths of a percent. */
    static Typed<Long> percent(String text) {
        ReadingKind.Unit percent = ReadingKind.Unit.HUNDREDTH_OF_PERCENT;
        return TypedFigure.parts(text, 2, example(percent), "%");
    }

    private static Typed<Long> figure(ReadingKind.Unit unit, String text, SheetUnits units) {
        return switch (unit) {
            case HUNDREDTH_OF_PERCENT -> percent(text);
            case PASCAL -> whole(TypedFigure.read(text, units.pressure()), Pressure::pascals, text);
            case MILLINEWTON -> TypedFigure.parts(text, 3, example(unit), "n");
            case NANOMETRE -> whole(TypedFigure.read(text, units.length()), Length::nanometres, text);
            case TENTH_OF_BRINELL -> TypedFigure.parts(text, 1, example(unit), "hb", "hbw", "brinell");
            case MILLIGRAM_PER_TONNE -> TypedFigure.parts(text, 3, example(unit), "ppm");
            case GRADE -> throw new IllegalArgumentException("a grade is no figure");
        };
    }

    private static <Q> Typed<Long> whole(Typed<Q> typed, java.util.function.ToLongFunction<Q> count, String text) {
        if (typed instanceof Typed.Unreadable<Q> no) {
            return new Typed.Unreadable<>(no.examples());
        }
        if (typed instanceof Typed.Two<Q> two) {
            return new Typed.Two<>(count.applyAsLong(two.first()), count.applyAsLong(two.second()));
        }
        return new Typed.Read<>(typed.only().map(count::applyAsLong).orElseThrow(), text);
    }

    private static String example(ReadingKind.Unit unit) {
        return switch (unit) {
            case HUNDREDTH_OF_PERCENT -> "4.5 %";
            case PASCAL -> PressureUnit.BAR.example();
            case MILLINEWTON -> "291 N";
            case NANOMETRE -> LengthUnit.MILLIMETRE.example();
            case TENTH_OF_BRINELL -> "104 HB";
            case MILLIGRAM_PER_TONNE -> "12 ppm";
            case GRADE -> "";
        };
    }
}
