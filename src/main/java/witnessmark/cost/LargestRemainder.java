package witnessmark.cost;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares a whole number out without losing or making any of it: each gets its exact share rounded down, and what is left
 * goes, one each, to the largest remainders; of equal ones the earlier comes first. Hamilton's method (Balinski and
 * Young, Fair Representation, 1982).
 */
public final class LargestRemainder {
    private LargestRemainder() {}

    /**
     * Shares out.
     *
     * @param total what is shared; below nothing it is shared like its opposite
     * @param weights how it is shared, each 0 or more, one of them more
     * @return one share for each weight, in their order; together exactly the total
     * @throws IllegalArgumentException if a weight is below 0 or all are 0
     */
    public static List<Long> split(long total, List<Long> weights) {
        BigInteger sum = BigInteger.ZERO;
        for (long weight : weights) {
            if (weight < 0) {
                throw new IllegalArgumentException("nobody has a share of less than nothing");
            }
            sum = sum.add(BigInteger.valueOf(weight));
        }
        if (sum.signum() == 0) {
            throw new IllegalArgumentException("somebody has to have a share");
        }
        BigInteger whole = BigInteger.valueOf(total).abs();
        List<Long> shares = new ArrayList<>();
        List<BigInteger> remainders = new ArrayList<>();
        BigInteger given = BigInteger.ZERO;
        for (long weight : weights) {
            BigInteger[] exact = whole.multiply(BigInteger.valueOf(weight)).divideAndRemainder(sum);
            shares.add(exact[0].longValueExact());
            remainders.add(exact[1]);
            given = given.add(exact[0]);
        }
        int left = whole.subtract(given).intValueExact();
        IntStream.range(0, shares.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> remainders.get(i)).reversed())
                .limit(left)
                .forEach(i -> shares.set(i, shares.get(i) + 1));
        return total < 0 ? shares.stream().map(share -> -share).toList() : List.copyOf(shares);
    }
}
