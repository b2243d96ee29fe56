package witnessmark.trace.kept;

/**
 * Reads back how figures of a channel were put into bytes at first: short decimals as whole numbers and their differences, others as
 * the bits that changed since the figure before, sorted by their place; all of it deflated.
 */
final class FirstCoding {
    private static final byte BITS = 1;
    private static final int MOST_PLACES = 6;
    private static final double[] TENS = {1, 10, 100, 1e3, 1e4, 1e5, 1e6};

    private FirstCoding() {}

    static double[] figures(int count, Numbers.Reading from) throws KeptDamaged {
        double[] values = new double[count];
        if (from.one() == BITS) {
            bits(values, from);
            return values;
        }
        int places = from.one();
        if (places < 0 || places > MOST_PLACES) {
            throw new KeptDamaged("decimals");
        }
        long before = 0;
        for (int i = 0; i < count; i++) {
            long coded = from.unsigned();
            if (coded == 0) {
                values[i] = Double.NaN;
            } else {
                long change = coded - 1;
                before += change >>> 1 ^ -(change & 1);
                values[i] = before / TENS[places];
            }
        }
        return values;
    }

    private static void bits(double[] values, Numbers.Reading from) throws KeptDamaged {
        long[] changes = new long[values.length];
        for (int place = 0; place < 8; place++) {
            for (int i = 0; i < changes.length; i++) {
                changes[i] = changes[i] << 8 | (from.one() & 0xFF);
            }
        }
        long before = 0;
        for (int i = 0; i < changes.length; i++) {
            before ^= changes[i];
            values[i] = Double.longBitsToDouble(before);
        }
    }

    /** From the change of their steps. */
    static long[] times(int count, Numbers.Reading from) throws KeptDamaged {
        long[] micros = new long[count];
        long before = 0;
        long step = 0;
        for (int i = 0; i < count; i++) {
            step += from.signed();
            before += step;
            micros[i] = before;
        }
        return micros;
    }
}
