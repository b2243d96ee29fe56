package witnessmark.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;

/**
 * The text of {@link Canonical} as UTF-8 bytes, made without an object for each value, for a check that reads a whole
 * logbook. The names must be handed in in order. The two are held to the same bytes by test.
 */
final class CanonicalBytes {
    private static final byte[] NULL = "null".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] HEX = "0123456789ABCDEF".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] SMALL_HEX = "0123456789abcdef".getBytes(StandardCharsets.US_ASCII);
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

    /** @param utf8 of the value */
    void text(byte[] utf8) {
        text(utf8, 0, utf8.length);
    }

    /** A value that stands within other bytes. */
    void text(byte[] utf8, int from, int to) {
        room((to - from) * LONGEST_ESCAPE + 2);
        byte[] into = bytes;
        int at = size;
        into[at++] = '"';
        for (int i = from; i < to; i++) {
            byte each = utf8[i];
            if (each == '"' || each == '\\') {
                into[at++] = '\\';
                into[at++] = each;
            } else if (each < 0 || each >= ' ') {
                into[at++] = each;
            } else {
                size = at;
                escaped(each);
                at = size;
            }
        }
        into[at++] = '"';
        size = at;
    }

    /** A whole number as the digits in which it stands within other bytes. */
    void digits(byte[] ascii, int from, int to) {
        room(to - from);
        System.arraycopy(ascii, from, bytes, size, to - from);
        size += to - from;
    }

    void nothing() {
        raw(NULL);
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

    private void room(int more) {
        if (bytes.length - size < more) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, Math.addExact(size, more)));
        }
    }
}
