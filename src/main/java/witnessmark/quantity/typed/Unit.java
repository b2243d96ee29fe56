package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.util.List;

/**
 * A unit in which people type and read a quantity.
 *
 * @param <Q> the quantity
 */
public sealed interface Unit<Q> permits LengthUnit, PressureUnit, TemperatureUnit, VolumeUnit, DistanceUnit {
    /** The word it is stored under among the team's choices; never changes. */
    String code();

    /** The texts that name it, in small letters, the commonest first. */
    List<String> words();

    /** A text in this unit that can be read. */
    String example();

    /**
     * The quantity of a figure in this unit, to the nearest whole number of what the quantity is held in, halves away
     * from zero.
     *
     * @throws ArithmeticException if the figure is too large to hold
     * @throws IllegalArgumentException if the quantity cannot be that small
     */
    Q of(BigDecimal figure);

    /** The figure of a quantity in this unit, rounded once to that many decimals, halves away from zero. */
    BigDecimal in(Q quantity, int decimals);
}
