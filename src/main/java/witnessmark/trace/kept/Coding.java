package witnessmark.trace.kept;

/**
 * Figures of a channel as bytes, and back to the last bit. Short decimals become whole numbers and the change from one to the next,
 * others the bits that changed since the figure before; either in the fewest bits that hold a run of them.
 */
final class Coding {
    private static final byte DECIMALS = 1;
    private static final byte DECIMALS_WITH_HOLES = 2;
    private static final byte BITS = 3;
    private static final int MOST_PLACES = 6;
    private static final double LARGEST = 1L << 52;
    private static final double[] TENS = {1, 10, 100, 1e3, 1e4, 1e5, 1e6};
    private static final long NAN = Double.doubleToRawLongBits(Double.NaN);

    private final long[] whole;
    private boolean holes;

    /** @param most how many figures at once */
    Coding(int most) {
        whole = new long[most];
    }

    void figures(double[] values, int count, Numbers into) {
        for (int places = 0; places <= MOST_PLACES; places++) {
            if (exact(values, count, places)) {
                into.add(holes ? DECIMALS_WITH_HOLES : DECIMALS);
                into.add((byte) places);
                into.runs(changes(values, count, into), count);
                return;
            }
        }
        into.add(BITS);
        long before = 0;
        for (int i = 0; i < count; i++) {
            long bits = Double.doubleToRawLongBits(values[i]);
            whole[i] = bits ^ before;
            before = bits;
        }
        into.bits(values[0]);
        whole[0] = 0;
        into.runs(whole, count);
    }

    /** Whether all are whole numbers of so many decimals; then they are in hand as such. */
    private boolean exact(double[] values, int count, int places) {
        double tens = TENS[places];
        holes = false;
        for (int i = 0; i < count; i++) {
            double value = values[i];
            double scaled = Math.rint(value * tens);
            long bits = Double.doubleToRawLongBits(value);
            whole[i] = (long) scaled; // a zero with a sign is no whole number
            if (Math.abs(scaled) < LARGEST && Double.doubleToRawLongBits(whole[i] / tens) == bits) {
                continue;
            }
            if (bits != NAN) {
                return false;
            }
            holes = true;
        }
        return true;
    }

    /** Writes the first and answers the changes from each to the next, small for both directions; 0 for a hole where there are some. */
    private long[] changes(double[] values, int count, Numbers into) {
        long before = 0;
        boolean begun = false;
        int hole = holes ? 1 : 0;
        for (int i = 0; i < count; i++) {
            if (holes && Double.isNaN(values[i])) {
                whole[i] = 0;
                continue;
            }
            if (!begun) {
                before = whole[i];
                into.signed(before);
                begun = true;
            }
            long change = whole[i] - before;
            before = whole[i];
            whole[i] = (change << 1 ^ change >> 63) + hole;
        }
        if (!begun) {
            into.signed(0);
        }
        return whole;
    }

    /**
     * Reads figures back.
     *
     * @param changes room for as many numbers
     * @param into from there on
     */
    static void figures(Numbers.Reading from, long[] changes, int count, double[] into, int at) throws KeptDamaged {
        byte coding = from.one();
        if (coding == BITS) {
            bits(from, changes, count, into, at);
            return;
        }
        int places = from.one();
        if (places < 0 || places > MOST_PLACES || coding != DECIMALS && coding != DECIMALS_WITH_HOLES) {
            throw new KeptDamaged("a coding of another version");
        }
        double tens = TENS[places];
        long before = from.signed();
        from.runs(changes, count);
        if (coding == DECIMALS) {
            for (int i = 0; i < count; i++) {
                before += changes[i] >>> 1 ^ -(changes[i] & 1);
                into[at + i] = before / tens;
            }
            return;
        }
        for (int i = 0; i < count; i++) {
            long coded = changes[i] - 1;
            if (coded < 0) {
                into[at + i] = Double.NaN;
            } else {
                before += coded >>> 1 ^ -(coded & 1);
                into[at + i] = before / tens;
            }
        }
    }

    private static void bits(Numbers.Reading from, long[] changes, int count, double[] into, int at)
            throws KeptDamaged {
        long before = Double.doubleToRawLongBits(from.bits());
        from.runs(changes, count);
        for (int i = 0; i < count; i++) {
            before ^= changes[i];
            into[at + i] = Double.longBitsToDouble(before);
        }
    }

    /** Times as the change of their steps: none at all where a logger kept its rate. */
    void times(long[] micros, int count, Numbers into) {
        long before = micros[0];
        long step = count > 1 ? micros[1] - before : 0;
        into.signed(before);
        into.signed(step);
        whole[0] = 0;
        for (int i = 1; i < count; i++) {
            long next = micros[i] - micros[i - 1];
            long change = next - step;
            whole[i] = change << 1 ^ change >> 63;
            step = next;
        }
        into.runs(whole, count);
    }

    static void times(Numbers.Reading from, long[] changes, int count, long[] into, int at) throws KeptDamaged {
        if (count == 0) {
            throw new KeptDamaged("an empty stretch");
        }
        long time = from.signed();
        long step = from.signed();
        from.runs(changes, count);
        into[at] = time;
        for (int i = 1; i < count; i++) {
            step += changes[i] >>> 1 ^ -(changes[i] & 1);
            time += step;
            into[at + i] = time;
        }
    }
}
