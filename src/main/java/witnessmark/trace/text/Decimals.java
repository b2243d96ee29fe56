package witnessmark.trace.text;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;

/**
 * Numbers as loggers write them: a sign, digits with marks between thousands, a decimal mark, an exponent. Read to the
 * last bit, as {@link Double#parseDouble} does.
 */
final class Decimals {
    private static final int LONGEST = 400;
    private static final int LONGEST_WORD = 9;
    private static final Set<String> NONE = Set.of(
            "nan",
            "-nan",
            "+nan",
            "nan(ind)",
            "-nan(ind)",
            "inf",
            "+inf",
            "-inf",
            "infinity",
            "-infinity",
            "#n/a",
            "n/a",
            "na",
            "null",
            "none",
            "-",
            "--",
            "---",
            "?",
            "*",
            "#value!",
            "#div/0!",
            "err",
            "error",
            "invalid",
            "1.#qnan",
            "-1.#ind",
            "1.#inf",
            "-1.#inf",
            "\u221e");

    private final char decimal;
    private final char thousands;
    private final byte[] plain = new byte[LONGEST];
    private double value;

    Decimals(char decimal, char thousands) {
        this.decimal = decimal;
        this.thousands = thousands;
    }

    /** Reads a number; false if the bytes are none, or one beyond the range of numbers. */
    boolean read(byte[] bytes, int from, int to) {
        int length = to - from <= LONGEST ? plain(bytes, from, to) : 0;
        if (length == 0) {
            return false;
        }
        value = JavaDoubleParser.parseDouble(plain, 0, length);
        return !Double.isInfinite(value);
    }

    /** The number last read. */
    double value() {
        return value;
    }

    /** Copies what is a number, with a point and no thousands; answers its length, or 0. */
    private int plain(byte[] bytes, int from, int to) {
        int p = from;
        int length = 0;
        if (p < to && (bytes[p] == '-' || bytes[p] == '+')) {
            plain[length++] = bytes[p++];
        }
        int digits = 0;
        int group = -1;
        while (p < to) {
            if (isDigit(bytes[p])) {
                plain[length++] = bytes[p++];
                digits++;
                group += group >= 0 ? 1 : 0;
            } else {
                int mark = thousandsMark(bytes, p, to);
                if (mark == 0 || digits == 0 || (group < 0 ? digits > 3 : group != 3)) {
                    break;
                }
                group = 0;
                p += mark;
            }
        }
        if (group >= 0 && group != 3) {
            return 0;
        }
        if (p < to && bytes[p] == decimal) {
            plain[length++] = '.';
            p++;
            while (p < to && isDigit(bytes[p])) {
                plain[length++] = bytes[p++];
                digits++;
            }
        }
        if (digits > 0 && p < to && (bytes[p] == 'e' || bytes[p] == 'E')) {
            int before = length;
            plain[length++] = bytes[p++];
            if (p < to && (bytes[p] == '-' || bytes[p] == '+')) {
                plain[length++] = bytes[p++];
            }
            int first = p;
            while (p < to && isDigit(bytes[p])) {
                plain[length++] = bytes[p++];
            }
            length = p == first ? before : length;
            p = p == first ? to + 1 : p;
        }
        return digits > 0 && p == to ? length : 0;
    }

    /** How many bytes a mark between thousands takes here; a space may be a no-break one. */
    private int thousandsMark(byte[] bytes, int p, int to) {
        if (thousands == 0) {
            return 0;
        }
        if (bytes[p] == (byte) thousands && thousands < 128) {
            return 1;
        }
        if (thousands != ' ') {
            return thousands == '\'' && p + 2 < to && Arrays.equals(bytes, p, p + 3, APOSTROPHE, 0, 3) ? 3 : 0;
        }
        for (byte[] space : SPACES) {
            if (p + space.length < to && Arrays.equals(bytes, p, p + space.length, space, 0, space.length)) {
                return space.length;
            }
        }
        return 0;
    }

    private static final byte[] APOSTROPHE = "\u2019".getBytes(StandardCharsets.UTF_8);
    private static final byte[][] SPACES = {
        "\u00a0".getBytes(StandardCharsets.UTF_8),
        "\u202f".getBytes(StandardCharsets.UTF_8),
        "\u00a0".getBytes(StandardCharsets.ISO_8859_1)
    };

    /** Whether the bytes are a word for no number. */
    boolean saysNone(byte[] bytes, int from, int to) {
        return to - from <= LONGEST_WORD
                && NONE.contains(new String(bytes, from, to - from, StandardCharsets.UTF_8).toLowerCase(Locale.ROOT));
    }

    private static boolean isDigit(byte b) {
        return b >= '0' && b <= '9';
    }
}
