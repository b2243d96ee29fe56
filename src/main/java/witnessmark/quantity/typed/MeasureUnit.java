package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import witnessmark.quantity.Dimension;

/**
 * Units in which figures of a build sheet are typed. Inch 25.4 mm, pound-force 4.4482216152605 N, foot 304.8 mm, all
 * exact (NIST SP 811, 2008, appendix B).
 */
public enum MeasureUnit {
    MILLIMETRE(Dimension.LENGTH, "1000000", "mm"),
    MICROMETRE(Dimension.LENGTH, "1000", "µm", "μm", "um", "micron", "microns"),
    INCH(Dimension.LENGTH, "25400000", "in", "\"", "″", "”", "in.", "inch", "inches"),
    THOU(Dimension.LENGTH, "25400", "thou"),
    FINISH_MICROMETRE(Dimension.ROUGHNESS, "1000", "µm", "μm", "um"),
    FINISH_MICROINCH(Dimension.ROUGHNESS, "25.4", "µin", "μin", "uin"),
    CUBIC_CENTIMETRE(Dimension.VOLUME, "1000", "cc", "cm³", "cm3", "ml"),
    CUBIC_INCH(Dimension.VOLUME, "16387.064", "in³", "in3", "cu in", "ci"),
    SQUARE_MILLIMETRE(Dimension.AREA, "100", "mm²", "mm2"),
    SQUARE_CENTIMETRE(Dimension.AREA, "10000", "cm²", "cm2"),
    SQUARE_INCH(Dimension.AREA, "64516", "in²", "in2", "sq in"),
    NEWTON(Dimension.FORCE, "1000", "N", "n"),
    KILONEWTON(Dimension.FORCE, "1000000", "kN", "kn"),
    POUND_FORCE(Dimension.FORCE, "4448.2216152605", "lbf", "lb", "lbs"),
    KILOGRAM_FORCE(Dimension.FORCE, "9806.65", "kgf", "kg"),
    NEWTON_METRE(Dimension.TORQUE, "1000", "N·m", "n·m", "nm", "n m"),
    POUND_FOOT(Dimension.TORQUE, "1355.8179483314004", "lb ft", "lbf ft", "ft lb", "lb·ft", "ft·lb"),
    POUND_INCH(Dimension.TORQUE, "112.9848290276167", "lb in", "in lb", "lbf in"),
    DEGREE(Dimension.ANGLE, "1000", "°", "deg", "degrees"),
    GRAM(Dimension.MASS, "1000", "g"),
    KILOGRAM(Dimension.MASS, "1000000", "kg"),
    OUNCE(Dimension.MASS, "28349.523125", "oz"),
    TO_ONE(Dimension.RATIO, "10000", ": 1", ":1", "to 1"),
    TIMES(Dimension.COUNT, "1", "×", "x", "times");

    private final Dimension dimension;
    private final Scale scale;
    private final String sign;
    private final List<String> words;

    MeasureUnit(Dimension dimension, String parts, String sign, String... others) {
        this.dimension = dimension;
        this.scale = Scale.of(parts);
        this.sign = sign;
        this.words = Stream.concat(Stream.of(sign), Stream.of(others)).toList();
    }

    public Dimension dimension() {
        return dimension;
    }

    /** As it is written behind a figure. */
    public String sign() {
        return sign;
    }

    /** The first unit of a dimension: the one bare figures are in where nothing else is said. */
    public static MeasureUnit shown(Dimension dimension) {
        return Stream.of(values())
                .filter(unit -> unit.dimension == dimension)
                .findFirst()
                .orElseThrow();
    }

    /** So many parts in the unit they are shown in, exact: {@code 0.195 mm}, {@code 32.7 cc}, {@code 106.2 °}. */
    public static String text(Dimension dimension, long parts) {
        BigDecimal figure = dimension.shown(parts);
        String digits = figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
        return digits + " " + shown(dimension).sign;
    }

    /**
     * Whole parts of the dimension, to the nearest, halves away from zero.
     *
     * @throws ArithmeticException if the figure is too large to hold
     */
    long parts(BigDecimal figure) {
        return scale.count(figure);
    }

    /** The figure of so many parts in this unit, rounded once to that many decimals, halves away from zero. */
    public BigDecimal figure(long parts, int decimals) {
        return scale.figure(parts, decimals);
    }

    boolean named(String word) {
        return words.contains(word);
    }
}
