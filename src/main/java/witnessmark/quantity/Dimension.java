package witnessmark.quantity;

import java.math.BigDecimal;

/** What a figure of a build sheet measures, and in which whole parts it is kept. Figures may be negative. */
public enum Dimension {
    /** Nanometres. */
    LENGTH(6),
    /** Nanometres, shown in micrometres: the finish of a face. */
    ROUGHNESS(3),
    /** Microlitres, shown in cubic centimetres. */
    VOLUME(3),
    /** Hundredths of a square millimetre. */
    AREA(2),
    /** Millinewtons. */
    FORCE(3),
    /** Newton millimetres, shown in newton metres. */
    TORQUE(3),
    /** Thousandths of a degree. */
    ANGLE(3),
    /** Milligrams, shown in grams. */
    MASS(3),
    /** Ten-thousandths: a compression ratio. */
    RATIO(4),
    /** How many. */
    COUNT(0);

    private final int decimals;

    Dimension(int decimals) {
        this.decimals = decimals;
    }

    /** Decimals of the shown unit that one whole part stands for. */
    public int decimals() {
        return decimals;
    }

    /** The whole parts of a figure in the shown unit, to the nearest part, halves away from zero. */
    public long parts(BigDecimal shown) {
        return Exact.nearest(shown.movePointRight(decimals));
    }

    /** The figure in the shown unit, exact. */
    public BigDecimal shown(long parts) {
        return BigDecimal.valueOf(parts, decimals);
    }

    /** The figure in the shown unit: millimetres, micrometres for a finish, cubic centimetres, newtons … */
    public double number(long parts) {
        return shown(parts).doubleValue();
    }
}
