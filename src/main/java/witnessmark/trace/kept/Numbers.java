package witnessmark.trace.kept;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;

/** Whole numbers as bytes, small ones in few. */
final class Numbers {
    private static final int START = 256;
    /** As many numbers in a row take the same number of bits: so few that a large one costs little, and whole bytes. */
    private static final int RUN = 16;
    /** Stands for a width that is written out, with how many zeros all end with. */
    private static final int WIDE = 15;

    private static final VarHandle LONGS = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    private byte[] bytes = new byte[START];
    private int length;

    void clear() {
        length = 0;
    }

    int length() {
        return length;
    }

    byte[] array() {
        return bytes;
    }

    void add(byte one) {
        if (length == bytes.length) {
            bytes = Arrays.copyOf(bytes, length * 2);
        }
        bytes[length++] = one;
    }

    /** Those that were written elsewhere. */
    void add(Numbers others) {
        if (length + others.length > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(length + others.length, 2 * length));
        }
        System.arraycopy(others.bytes, 0, bytes, length, others.length);
        length += others.length;
    }

    /** Seven bits a byte, the lowest first. */
    void unsigned(long value) {
        long rest = value;
        while ((rest & ~0x7FL) != 0) {
            add((byte) ((rest & 0x7F) | 0x80));
            rest >>>= 7;
        }
        add((byte) rest);
    }

    void signed(long value) {
        unsigned(value << 1 ^ value >> 63);
    }

    void bits(double value) {
        long bits = Double.doubleToRawLongBits(value);
        for (int shift = 56; shift >= 0; shift -= 8) {
            add((byte) (bits >>> shift));
        }
    }

    void text(String text) {
        byte[] utf = text.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        unsigned(utf.length);
        for (byte one : utf) {
            add(one);
        }
    }

    /**
     * Runs of numbers, those of each in as many bits as its largest needs; of a run of noughts none. The widths of two runs share
     * a byte.
     */
    void runs(long[] values, int count) {
        for (int first = 0; first < count; first += 2 * RUN) {
            long one = all(values, first, count);
            long other = all(values, first + RUN, count);
            add((byte) (code(one) << 4 | code(other)));
            run(values, first, Math.min(count, first + RUN), one);
            run(values, first + RUN, Math.min(count, first + 2 * RUN), other);
        }
    }

    /** Every bit that one of a run has. */
    private static long all(long[] values, int first, int count) {
        long all = 0;
        for (int i = first; i < Math.min(count, first + RUN); i++) {
            all |= values[i];
        }
        return all;
    }

    private static int code(long all) {
        return Math.min(WIDE, Long.SIZE - Long.numberOfLeadingZeros(all));
    }

    private void run(long[] values, int first, int end, long all) {
        int width = code(all);
        if (width == WIDE) {
            int shift = Long.numberOfTrailingZeros(all);
            int wide = Long.SIZE - Long.numberOfLeadingZeros(all) - shift;
            add((byte) wide);
            add((byte) shift);
            run(values, first, end, wide, shift);
        } else if (width > 0) {
            run(values, first, end, width, 0);
        }
    }

    private void run(long[] values, int first, int end, int width, int shift) {
        int most = length + RUN * Long.BYTES + Long.BYTES;
        if (most > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(most, 2 * length));
        }
        long waiting = 0;
        int bits = 0;
        for (int i = first; i < end; i++) {
            long value = values[i] >>> shift;
            waiting |= value << bits;
            bits += width;
            if (bits >= Long.SIZE) {
                LONGS.set(bytes, length, waiting);
                length += Long.BYTES;
                bits -= Long.SIZE;
                waiting = bits == 0 ? 0 : value >>> (width - bits);
            }
        }
        LONGS.set(bytes, length, waiting);
        length += (bits + 7) / 8;
    }

    /** Reads them back in the order they were written. */
    static final class Reading {
        private final byte[] bytes;
        private final int length;
        private int position;

        Reading(byte[] bytes, int length) {
            this.bytes = bytes;
            this.length = length;
        }

        byte one() throws KeptDamaged {
            if (position >= length) {
                throw new KeptDamaged("numbers end");
            }
            return bytes[position++];
        }

        long unsigned() throws KeptDamaged {
            int at = position;
            if (at < length && bytes[at] >= 0) { // by far the most are as small
                position = at + 1;
                return bytes[at];
            }
            return longer();
        }

        private long longer() throws KeptDamaged {
            int at = position;
            if (at + 1 < length && bytes[at + 1] >= 0) {
                position = at + 2;
                return (bytes[at] & 0x7F) | bytes[at + 1] << 7;
            }
            long value = 0;
            for (int shift = 0; shift < 64; shift += 7) {
                byte next = one();
                value |= (long) (next & 0x7F) << shift;
                if (next >= 0) {
                    return value;
                }
            }
            throw new KeptDamaged("a number too long");
        }

        /** Nothing stands after what was read. */
        void end() throws KeptDamaged {
            if (position != length) {
                throw new KeptDamaged("more than its figures");
            }
        }

        /** A count no larger than can be. */
        int count(int most) throws KeptDamaged {
            long value = unsigned();
            if (value < 0 || value > most) {
                throw new KeptDamaged("a count of " + value);
            }
            return (int) value;
        }

        long signed() throws KeptDamaged {
            long value = unsigned();
            return value >>> 1 ^ -(value & 1);
        }

        void runs(long[] values, int count) throws KeptDamaged {
            for (int first = 0; first < count; first += 2 * RUN) {
                int codes = one();
                run(values, first, Math.min(count, first + RUN), codes >>> 4 & 15);
                run(values, first + RUN, Math.min(count, first + 2 * RUN), codes & 15);
            }
        }

        private void run(long[] values, int first, int end, int code) throws KeptDamaged {
            if (first >= end) {
                return;
            }
            if (code == 0) {
                Arrays.fill(values, first, end, 0);
            } else if (code == WIDE) {
                run(values, first, end, one(), one());
            } else {
                run(values, first, end, code, 0);
            }
        }

        private void run(long[] values, int first, int end, int width, int shift) throws KeptDamaged {
            if (width < 1 || shift < 0 || width + shift > Long.SIZE) {
                throw new KeptDamaged("a run of " + width + " bits");
            }
            int size = ((end - first) * width + 7) / 8;
            if (size > length - position) {
                throw new KeptDamaged("a run ends");
            }
            byte[] from = bytes;
            int at = position;
            position += size;
            if (at + size + Long.BYTES > bytes.length) { // eight bytes are read at once, also the last of them
                from = Arrays.copyOfRange(bytes, at, at + size + Long.BYTES);
                at = 0;
            }
            long mask = -1L >>> (Long.SIZE - width);
            int bit = 0;
            for (int i = first; i < end; i++) {
                int byteAt = at + (bit >>> 3);
                int inByte = bit & 7;
                long value = (long) LONGS.get(from, byteAt) >>> inByte;
                if (width + inByte > Long.SIZE) {
                    value |= (long) from[byteAt + Long.BYTES] << (Long.SIZE - inByte);
                }
                values[i] = (value & mask) << shift;
                bit += width;
            }
        }

        double bits() throws KeptDamaged {
            long bits = 0;
            for (int i = 0; i < 8; i++) {
                bits = bits << 8 | (one() & 0xFF);
            }
            return Double.longBitsToDouble(bits);
        }

        String text() throws KeptDamaged {
            int size = count(length - position);
            position += size;
            return new String(bytes, position - size, size, java.nio.charset.StandardCharsets.UTF_8);
        }
    }
}
