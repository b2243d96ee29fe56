package witnessmark.trace.packed;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.function.BooleanSupplier;
import witnessmark.trace.InPieces;

/**
 * The bytes of a packed file as far as they were written. A copy that is broken off can leave a file of its full size whose end
 * is nothing but zeros, or ones, which would be unpacked to text that nobody wrote. Bytes alike are held back until another
 * follows, as their number alone.
 */
final class Written extends InPieces {
    private static final int LEAST = 64;

    private final byte[] ahead = new byte[1 << 13];
    private BooleanSupplier allOut = () -> false;
    private int from;
    private int to;
    private byte alike;
    private long count;
    private boolean blank;
    private boolean ended;

    Written(InputStream in) {
        super(in);
    }

    /**
     * The checksum of a text may itself end in zeros.
     *
     * @param yes whether all of the text was unpacked, so that what comes is handed out whatever it is
     */
    void wholeOnce(BooleanSupplier yes) {
        allOut = yes;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        int some;
        if (count > 0) {
            if (blank && !allOut.getAsBoolean()) {
                return -1;
            }
            some = (int) Math.min(length, count);
            Arrays.fill(into, offset, offset + some, alike);
            count -= some;
            return some;
        }
        if (from < to) {
            some = Math.min(length, to - from);
            System.arraycopy(ahead, from, into, offset, some);
            from += some;
        } else {
            some = ended ? -1 : in.read(into, offset, length);
        }
        if (some <= 0 || !isBlank(into[offset + some - 1])) {
            return some;
        }
        int kept = hold(into, offset, some);
        return kept > 0 ? kept : read(into, offset, length);
    }

    /** How many of these bytes were written, when the last may be the first of those that were not. */
    private int hold(byte[] into, int offset, int some) throws IOException {
        alike = into[offset + some - 1];
        int first = some;
        while (first > 0 && into[offset + first - 1] == alike) {
            first--;
        }
        count = (long) some - first;
        do {
            while (from < to && ahead[from] == alike) {
                from++;
                count++;
            }
        } while (from == to && fill());
        blank = ended && from == to && count >= LEAST;
        return first;
    }

    private boolean fill() throws IOException {
        from = 0;
        to = ended ? 0 : Math.max(0, in.read(ahead));
        ended = to == 0;
        return !ended;
    }

    private static boolean isBlank(byte value) {
        return value == 0 || value == -1;
    }

    @Override
    public int available() throws IOException {
        return (int) Math.min(Integer.MAX_VALUE, count + to - from + in.available());
    }
}
