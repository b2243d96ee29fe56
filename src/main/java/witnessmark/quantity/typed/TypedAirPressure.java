package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import witnessmark.quantity.Pressure;

/**
 * An air pressure as a dyno cell or a barometer shows it: {@code 98.2 kPa}, {@code 982 hPa}, {@code 982 mbar},
 * {@code 0.982 bar}, {@code 29.00 inHg}, {@code 736.6 mmHg}, {@code 14.24 psi}. The unit of a bare figure follows from its
 * size, as air lies within half and a little over one atmosphere: {@code 98.2} is kPa, {@code 982} hPa. What may be two of
 * them, as {@code 745}, comes back with both readings.
 *
 * <p>Absolute, not reduced to the sea. Inches and millimetres of mercury are the conventional ones (NIST SP 811, 2008,
 * appendix B.8: 3 386.389 Pa and 133.322 4 Pa); a psi is 6 894.757 Pa (there too).
 */
public final class TypedAirPressure {
    private static final List<String> EXAMPLES = List.of("98.2 kPa", "29.00 inHg");

    /** Between these a bare figure can be the air anywhere an engine is tested, from 4 500 m up to the deepest high. */
    private static final long LEAST = 55_000;

    private static final long MOST = 110_000;

    /** Millimetres of mercury are only taken where they are an air that people test in. */
    private static final long LEAST_OF_MERCURY = 80_000;

    /** Digits of pascals beyond which nothing is an air. */
    private static final int LONGEST = 18;

    private enum In {
        KILOPASCAL("1000", "kpa"),
        HECTOPASCAL("100", "hpa", "mbar", "mb", "millibar"),
        BAR("100000", "bar"),
        INCH_OF_MERCURY("3386.389", "inhg", "in hg", "in. hg", "\"hg", "in.hg"),
        MILLIMETRE_OF_MERCURY("133.3224", "mmhg", "mm hg", "torr"),
        PSI("6894.757", "psi", "psia"),
        PASCAL("1", "pa");

        private final BigDecimal pascals;
        private final List<String> words;

        In(String pascals, String... words) {
            this.pascals = new BigDecimal(pascals);
            this.words = List.of(words);
        }

        private Optional<Pressure> of(BigDecimal figure) {
            BigDecimal whole = figure.multiply(pascals).setScale(0, RoundingMode.HALF_UP);
            boolean held = whole.signum() > 0 && whole.precision() <= LONGEST;
            return held ? Optional.of(new Pressure(whole.longValueExact())) : Optional.empty();
        }

        private boolean mayBe(BigDecimal figure) {
            long least = this == MILLIMETRE_OF_MERCURY ? LEAST_OF_MERCURY : LEAST;
            return of(figure)
                    .filter(air -> air.pascals() >= least && air.pascals() <= MOST)
                    .isPresent();
        }
    }

    private TypedAirPressure() {}

    /** Reads what was typed, to the nearest pascal. */
    public static Typed<Pressure> read(String text) {
        Typed<Pressure> unreadable = new Typed.Unreadable<>(EXAMPLES);
        String plain = Plain.of(text);
        Numeral figure = plain == null ? null : Numeral.at(plain, 0);
        if (plain == null || figure == null) {
            return unreadable;
        }
        String word = plain.substring(figure.end()).strip();
        List<Pressure> readings = Stream.of(In.values())
                .filter(unit -> word.isEmpty() ? unit.mayBe(figure.value()) : unit.words.contains(word))
                .flatMap(unit -> unit.of(figure.value()).stream())
                .toList();
        return switch (readings.size()) {
            case 0 -> unreadable;
            case 1 -> new Typed.Read<>(readings.get(0), text);
            default -> new Typed.Two<>(readings.get(0), readings.get(1));
        };
    }

    /** In kPa, exact: {@code 98.2 kPa}, which reads back as it is. */
    public static String text(Pressure air) {
        BigDecimal figure = BigDecimal.valueOf(air.pascals(), 3).stripTrailingZeros();
        return figure.toPlainString() + " kPa";
    }
}
