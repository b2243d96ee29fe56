package witnessmark.store;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Ids read from the bytes of their text, in the one spelling in which they are written. */
final class UuidBytes {
    private static final int LENGTH = 36;
    private static final int DIGITS_OF_HALF = 16;
    private static final int TEN = 10;

    private UuidBytes() {}

    /** @return null when it is no id in small letters */
    static @Nullable UUID read(byte[] text) {
        if (text.length != LENGTH) {
            return null;
        }
        long high = 0;
        long low = 0;
        int digits = 0;
        for (int at = 0; at < LENGTH; at++) {
            byte each = text[at];
            if (at == 8 || at == 13 || at == 18 || at == 23) {
                if (each != '-') {
                    return null;
                }
                continue;
            }
            int digit = each >= '0' && each <= '9' ? each - '0' : each >= 'a' && each <= 'f' ? each - 'a' + TEN : -1;
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
}
