package witnessmark.trace.kept;

/**
 * Figures of a channel as bytes, and back to the last bit. Short decimals become whole numbers and their differences; others
 * the bits that changed since the figure before, sorted by their place so that they pack.
 */
final class Coding {
    private static final byte DECIMAL = 0;
    private static final byte BITS = 1;
    private static final int MOST_PLACES = 6;
    private static final double LARGEST = 1L << 52;
    private static final double[] TENS = {1, 10, 100, 1e3, 1e4, 1e5, 1e6};
    private static final long NAN = Double.doubleToRawLongBits(Double.NaN);

    private Coding() {}

    static void figures(double[] values, int count, Numbers into) {
        int places = places(values, count);
        if (places < 0) {
            into.add(BITS);
            bits(values, count, into);
            return;
        }
        into.add(DECIMAL);
        into.add((byte) places);
        long before = 0;
        for (int i = 0; i < count; i++) {
            if (Double.isNaN(values[i])) {
                into.unsigned(0);
            } else {
                long whole = Math.round(values[i] * TENS[places]);
                long change = whole - before;
                into.unsigned((change << 1 ^ change >> 63) + 1);
                before = whole;
            }
        }
    }

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

    /** With how many decimals all of them are exact; −1 if with none. */
    private static int places(double[] values, int count) {
        int places = 0;
        int raised = 0;
        for (int i = 0; i < count; i++) {
            double value = values[i];
            long bits = Double.doubleToRawLongBits(value);
            if (bits == NAN) {
                continue;
            }
            while (places <= MOST_PLACES && !exact(value, bits, places)) {
                places++;
                raised = i;
            }
            if (places > MOST_PLACES) {
                return -1;
            }
        }
        for (int i = 0; i < raised; i++) { // more decimals may be too many for a figure before
            long bits = Double.doubleToRawLongBits(values[i]);
            if (bits != NAN && !exact(values[i], bits, places)) {
                return -1;
            }
        }
        return places;
    }

    private static boolean exact(double value, long bits, int places) {
        double scaled = value * TENS[places];
        return Math.abs(scaled) < LARGEST && Double.doubleToRawLongBits(Math.round(scaled) / TENS[places]) == bits;
    }

    private static void bits(double[] values, int count, Numbers into) {
        long[] changes = new long[count];
        long before = 0;
        for (int i = 0; i < count; i++) {
            long bits = Double.doubleToRawLongBits(values[i]);
            changes[i] = bits ^ before;
            before = bits;
        }
        for (int shift = 56; shift >= 0; shift -= 8) {
            for (long change : changes) {
                into.add((byte) (change >>> shift));
            }
        }
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

    /** Times as the change of their steps. */
    static void times(long[] micros, int count, Numbers into) {
        long before = 0;
        long step = 0;
        for (int i = 0; i < count; i++) {
            long next = micros[i] - before;
            into.signed(next - step);
            step = next;
            before = micros[i];
        }
    }

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
