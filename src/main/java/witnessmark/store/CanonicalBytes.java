package witnessmark.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The text of {@link Canonical} as UTF-8 bytes, made without an object for each value, for a check that reads a whole
 * logbook. The names must be handed in in order. The two are held to the same bytes by test.
 */
final class CanonicalBytes {
    private static final byte[] NULL = "null".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] LEAST = Long.toString(Long.MIN_VALUE).getBytes(StandardCharsets.US_ASCII);
    private static final byte[] HEX = "0123456789ABCDEF".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] SMALL_HEX = "0123456789abcdef".getBytes(StandardCharsets.US_ASCII);
    private static final int DIGITS = 20;
    private static final int BASE = 10;
    private static final int LONGEST_ESCAPE = 6;
    private static final int LOW = 0x0F;

    private final MessageDigest sha256;
    private byte[] bytes = new byte[4_096];
    private int size;

    CanonicalBytes() {
        sha256 = Sha256.begun();
    }

    /** A column's name as {@link #name} takes it. */
    static byte[] quoted(String name) {
        return ('"' + name + "\":").getBytes(StandardCharsets.UTF_8);
    }

    void begin() {
        size = 0;
        room(1);
        bytes[size++] = '{';
    }

    /** @param quoted by {@link #quoted} */
    void name(byte[] quoted) {
        room(quoted.length + 1);
        if (size > 1) {
            bytes[size++] = ',';
        }
        System.arraycopy(quoted, 0, bytes, size, quoted.length);
        size += quoted.length;
    }

    /** @param utf8 of the value, or null */
    void text(byte @Nullable [] utf8) {
        if (utf8 == null) {
            raw(NULL);
            return;
        }
        room(utf8.length * LONGEST_ESCAPE + 2);
        bytes[size++] = '"';
        for (byte each : utf8) {
            if (each == '"' || each == '\\' || (each >= 0 && each < ' ')) {
                escaped(each);
            } else {
                bytes[size++] = each;
            }
        }
        bytes[size++] = '"';
    }

    void nothing() {
        raw(NULL);
    }

    void number(long value) {
        if (value == Long.MIN_VALUE) {
            raw(LEAST);
            return;
        }
        room(DIGITS);
        long left = Math.abs(value);
        if (value < 0) {
            bytes[size++] = '-';
        }
        int end = size + digits(left);
        size = end;
        do {
            bytes[--end] = (byte) ('0' + left % BASE);
            left /= BASE;
        } while (left > 0);
    }

    void end() {
        room(1);
        bytes[size++] = '}';
    }

    /** SHA-256 of what was put together, 32 bytes (FIPS 180-4). */
    byte[] hash() {
        sha256.update(bytes, 0, size);
        return sha256.digest();
    }

    /** SHA-256 of other bytes. */
    byte[] hash(byte[] others) {
        return sha256.digest(others);
    }

    byte[] copy() {
        return Arrays.copyOf(bytes, size);
    }

    /** Whether a text is a hash in small hexadecimal digits. */
    static boolean isHex(byte[] hash, byte[] text) {
        if (text.length != hash.length * 2) {
            return false;
        }
        for (int i = 0; i < hash.length; i++) {
            if (text[i * 2] != SMALL_HEX[hash[i] >> 4 & LOW] || text[i * 2 + 1] != SMALL_HEX[hash[i] & LOW]) {
                return false;
            }
        }
        return true;
    }

    private void raw(byte[] some) {
        room(some.length);
        System.arraycopy(some, 0, bytes, size, some.length);
        size += some.length;
    }

    private void escaped(byte each) {
        bytes[size++] = '\\';
        switch (each) {
            case '"', '\\' -> bytes[size++] = each;
            case '\b' -> bytes[size++] = 'b';
            case '\t' -> bytes[size++] = 't';
            case '\n' -> bytes[size++] = 'n';
            case '\f' -> bytes[size++] = 'f';
            case '\r' -> bytes[size++] = 'r';
            default -> {
                bytes[size++] = 'u';
                bytes[size++] = '0';
                bytes[size++] = '0';
                bytes[size++] = HEX[each >> 4];
                bytes[size++] = HEX[each & LOW];
            }
        }
    }

    private static int digits(long value) {
        int digits = 1;
        for (long left = value / BASE; left > 0; left /= BASE) {
            digits++;
        }
        return digits;
    }

    private void room(int more) {
        if (bytes.length - size < more) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, Math.addExact(size, more)));
        }
    }
}
