package witnessmark.store;

import java.util.Arrays;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Ids read from the bytes of their text, in the one spelling in which they are written. */
final class UuidBytes {
    private static final int LENGTH = 36;
    private static final int DIGITS_OF_HALF = 16;
    private static final String DIGITS = "0123456789abcdef";
    private static final byte[] VALUES = values();

    private UuidBytes() {}

    /** @return null when it is no id in small letters */
    static @Nullable UUID read(byte[] text) {
        return read(text, 0, text.length);
    }

    /** One that stands within other bytes. */
    static @Nullable UUID read(byte[] text, int from, int to) {
        if (to - from != LENGTH) {
            return null;
        }
        long high = 0;
        long low = 0;
        int digits = 0;
        for (int i = 0; i < LENGTH; i++) {
            byte each = text[from + i];
            if (i == 8 || i == 13 || i == 18 || i == 23) {
                if (each != '-') {
                    return null;
                }
                continue;
            }
            int digit = each < 0 ? -1 : VALUES[each];
            if (digit < 0) {
                return null;
            }
            if (digits++ < DIGITS_OF_HALF) {
                high = high << 4 | digit;
            } else {
                low = low << 4 | digit;
            }
        }
        return new UUID(high, low);
    }

    private static byte[] values() {
        byte[] values = new byte[Byte.MAX_VALUE + 1];
        Arrays.fill(values, (byte) -1);
        for (int i = 0; i < DIGITS.length(); i++) {
            values[DIGITS.charAt(i)] = (byte) i;
        }
        return values;
    }
}
