package witnessmark.ledger.ahead;

import java.math.BigInteger;
import java.util.Collection;

/**
 * The quartiles of whole numbers: linear interpolation between the closest ranks at (n - 1)p, as in Hyndman and Fan,
 * Sample quantiles in statistical packages (1996), definition 7; rounded half up to whole numbers.
 *
 * @param low a quarter lies below
 * @param middle the median
 * @param high a quarter lies above
 */
record Quartiles(long low, long middle, long high) {
    /**
     * The quartiles of at least one number.
     *
     * @throws IllegalArgumentException if there is none
     */
    static Quartiles of(Collection<Long> numbers) {
        if (numbers.isEmpty()) {
            throw new IllegalArgumentException("nothing has no quartiles");
        }
        long[] sorted = numbers.stream().mapToLong(Long::longValue).sorted().toArray();
        return new Quartiles(at(sorted, 1), at(sorted, 2), at(sorted, 3));
    }

    /** Every figure times a share of two whole numbers, rounded half up. */
    Quartiles times(long numerator, long denominator) {
        return new Quartiles(
                scaled(low, numerator, denominator),
                scaled(middle, numerator, denominator),
                scaled(high, numerator, denominator));
    }

    private static long at(long[] sorted, int quarter) {
        int place = (sorted.length - 1) * quarter;
        long below = sorted[place / 4];
        long above = sorted[Math.min(sorted.length - 1, place / 4 + 1)];
        return below + Math.floorDiv((above - below) * (place % 4) * 2 + 4, 8);
    }

    /** A figure times a share of two whole numbers, rounded half up; at most as large as a figure can be. */
    static long scaled(long figure, long numerator, long denominator) {
        return BigInteger.valueOf(figure)
                .multiply(BigInteger.valueOf(numerator))
                .multiply(BigInteger.TWO)
                .add(BigInteger.valueOf(denominator))
                .divide(BigInteger.valueOf(denominator).multiply(BigInteger.TWO))
                .min(BigInteger.valueOf(Long.MAX_VALUE))
                .longValue();
    }
}
