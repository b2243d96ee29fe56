package witnessmark.trace.kept;

import java.util.Arrays;

/** Whole numbers as bytes, small ones in few. */
final class Numbers {
    private static final int START = 256;

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
