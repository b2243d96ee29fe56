package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A figure of a build sheet as typed: {@code 0.05}, {@code 0,05 mm}, {@code 2 thou}, {@code 50 µm}, {@code 0.05 proud}.
 * A bare figure is in the field's own unit. Where a sign has a side, the side may be said in words instead.
 *
 * @param parts whole parts of the unit's dimension
 * @param unit the unit it was typed in, or the field's own
 * @param sideSaid whether words said which side of zero it lies on
 */
public record TypedMeasure(long parts, MeasureUnit unit, boolean sideSaid) {
    private static final List<String> MINUS_SIDE = List.of("proud", "above", "up");
    private static final List<String> PLUS_SIDE = List.of("below", "down", "under");

    /**
     * @param text as typed
     * @param own the unit of a bare figure
     * @param sided whether a word may say the side: "proud", "above", "up" below zero; "below", "down",
     *     "under" above it, as deck clearance counts
     */
    public static Typed<TypedMeasure> read(String text, MeasureUnit own, boolean sided) {
        Typed<TypedMeasure> unreadable = new Typed.Unreadable<>(examples(own, sided));
        String plain = Plain.of(text);
        Numeral figure = plain == null ? null : Numeral.at(plain, 0);
        if (plain == null || figure == null) {
            return unreadable;
        }
        String rest = plain.substring(figure.end()).strip();
        int side = sided ? side(rest) : 0;
        if (side != 0) {
            rest = rest.contains(" ") ? rest.substring(0, rest.lastIndexOf(' ')).strip() : "";
        }
        MeasureUnit unit = unit(rest, own);
        if (unit == null || side != 0 && figure.value().signum() < 0) {
            return unreadable;
        }
        try {
            BigDecimal value = side < 0 ? figure.value().negate() : figure.value();
            return new Typed.Read<>(new TypedMeasure(unit.parts(value), unit, side != 0), text);
        } catch (ArithmeticException tooLarge) {
            return unreadable;
        }
    }

    private static int side(String rest) {
        String last = rest.substring(rest.lastIndexOf(' ') + 1);
        return MINUS_SIDE.contains(last) ? -1 : PLUS_SIDE.contains(last) ? 1 : 0;
    }

    private static @Nullable MeasureUnit unit(String word, MeasureUnit own) {
        return word.isEmpty()
                ? own
                : Stream.of(MeasureUnit.values())
                        .filter(unit -> unit.dimension() == own.dimension() && unit.named(word))
                        .findFirst()
                        .orElse(null);
    }

    private static List<String> examples(MeasureUnit own, boolean sided) {
        String figure = switch (own.dimension()) {
            case LENGTH -> "0.05 " + own.sign();
            case ROUGHNESS -> "0.6 " + own.sign();
            case VOLUME -> "32.7 " + own.sign();
            case AREA -> "4600 " + own.sign();
            case FORCE -> "290 " + own.sign();
            case TORQUE -> "60 " + own.sign();
            case ANGLE -> "106 " + own.sign();
            case MASS -> "412.5 " + own.sign();
            case RATIO -> "11.8 " + own.sign();
            case COUNT -> "2";
        };
        return sided ? List.of("0.05 proud", "0.20 down") : List.of(figure);
    }
}
