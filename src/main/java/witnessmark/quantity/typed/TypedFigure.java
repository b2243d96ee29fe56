package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.EngineSpeed;

/**
 * A figure with or without its unit: {@code 0.05}, {@code 0,05 mm}, {@code 2 thou}, {@code 205F}. A bare figure is in
 * the field's own unit. A lone comma or point stands before decimals ({@code 1,234} is a little over one); where both
 * occur, or one occurs twice, the text is not read. Spaces may set thousands apart; the minus may be a hyphen or
 * U+2212; the whole text has to be used.
 */
public final class TypedFigure {
    private static final List<String> SPEED_WORDS = List.of("rpm", "r/min", "1/min");
    /** Tells the form and nothing of an engine: who knows the engine has a better one. */
    private static final List<String> SPEED_EXAMPLES = List.of("1000 rpm");

    private static final BigDecimal MOST = BigDecimal.valueOf(Integer.MAX_VALUE);
    private static final List<String> COUNT_EXAMPLES = List.of("1");

    private TypedFigure() {}

    /**
     * A measure in one of the units of its kind.
     *
     * @param text as typed
     * @param own the field's own unit
     */
    public static <Q, U extends Enum<U> & Unit<Q>> Typed<Q> read(String text, U own) {
        Typed<Q> unreadable = new Typed.Unreadable<>(examples(own));
        String plain = Plain.of(text);
        Numeral figure = plain == null ? null : Numeral.at(plain, 0);
        if (plain == null || figure == null) {
            return unreadable;
        }
        U unit = unit(plain.substring(figure.end()).strip(), own);
        if (unit == null) {
            return unreadable;
        }
        try {
            return new Typed.Read<>(unit.of(figure.value()), text);
        } catch (ArithmeticException | IllegalArgumentException tooLargeOrTooSmall) {
            return unreadable;
        }
    }

    /** A speed of the crankshaft in whole revolutions a minute: {@code 9150}, {@code 9 150 rpm}, {@code 9,150}. */
    public static Typed<EngineSpeed> engineSpeed(String text) {
        String plain = Plain.of(text);
        if (plain != null) {
            for (String word : SPEED_WORDS) {
                if (plain.endsWith(word)) {
                    plain = plain.substring(0, plain.length() - word.length()).strip();
                    break;
                }
            }
        }
        Integer rpm = whole(plain);
        return rpm == null ? new Typed.Unreadable<>(SPEED_EXAMPLES) : new Typed.Read<>(new EngineSpeed(rpm), text);
    }

    /**
     * A bare figure, or one with a word for its unit, in whole parts: {@code 14.5 %} with two decimals is 1 450. Finer
     * figures are rounded to the nearest part, halves away from zero.
     *
     * @param decimals how many decimals a part stands for
     * @param example a text that can be read
     * @param words the unit's words, in small letters
     */
    public static Typed<Long> parts(String text, int decimals, String example, String... words) {
        String plain = Plain.of(text);
        Numeral figure = plain == null ? null : Numeral.at(plain, 0);
        String rest = plain == null || figure == null
                ? ""
                : plain.substring(figure.end()).strip();
        if (figure == null || !rest.isEmpty() && !List.of(words).contains(rest)) {
            return new Typed.Unreadable<>(List.of(example));
        }
        BigDecimal parts = figure.value().movePointRight(decimals).setScale(0, RoundingMode.HALF_UP);
        return parts.signum() < 0 || parts.compareTo(MOST) > 0
                ? new Typed.Unreadable<>(List.of(example))
                : new Typed.Read<>(parts.longValueExact(), text);
    }

    /** A bare figure, exact, 0 or more: points of a series. */
    public static Typed<BigDecimal> decimal(String text) {
        String plain = Plain.of(text);
        Numeral figure = plain == null ? null : Numeral.at(plain, 0);
        boolean whole = plain != null && figure != null && figure.end() == plain.length();
        return figure != null && whole && figure.value().signum() >= 0
                ? new Typed.Read<>(figure.value(), text)
                : new Typed.Unreadable<>(COUNT_EXAMPLES);
    }

    /** How many: a whole number, 0 or more. */
    public static Typed<Integer> count(String text) {
        Integer count = whole(Plain.of(text));
        return count == null ? new Typed.Unreadable<>(COUNT_EXAMPLES) : new Typed.Read<>(count, text);
    }

    private static @Nullable Integer whole(@Nullable String plain) {
        BigDecimal figure = plain == null ? null : Numeral.whole(plain);
        return figure == null || figure.compareTo(MOST) > 0 ? null : figure.intValueExact();
    }

    private static <U extends Enum<U> & Unit<?>> @Nullable U unit(String word, U own) {
        if (word.isEmpty()) {
            return own;
        }
        for (U unit : own.getDeclaringClass().getEnumConstants()) {
            if (unit.words().contains(word)) {
                return unit;
            }
        }
        return null;
    }

    private static <U extends Enum<U> & Unit<?>> List<String> examples(U own) {
        U[] all = own.getDeclaringClass().getEnumConstants();
        return List.of(own.example(), all[(own.ordinal() + 1) % all.length].example());
    }
}
