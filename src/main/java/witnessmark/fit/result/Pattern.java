package witnessmark.fit.result;

import org.jspecify.annotations.Nullable;

/**
 * What a row of cylinders shows taken together.
 *
 * @param shape which
 * @param cylinder the one that stands out, or null
 */
public record Pattern(Shape shape, @Nullable Integer cylinder) {
    /** What each points at. */
    public enum Shape {
        /** No figure stands out. */
        EVEN,
        /** All lie below what is designed: gasket or deck. */
        ALL_LOW,
        /** All lie above what is designed: gasket or deck. */
        ALL_HIGH,
        /** One stands apart: its rod or piston. */
        ONE_APART,
        /** They rise or fall from front to back: the deck is not square to the crank. */
        RAMP,
        /** They differ by more than they may, in no order that tells why. */
        UNEVEN
    }
}
