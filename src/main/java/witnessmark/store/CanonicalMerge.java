package witnessmark.store;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Puts one canonical text over another, value by value, without reading the values: what {@link
 * witnessmark.domain.history.Fold} does with two amendments of a record. Nothing is taken that is not in the one form in
 * which such texts are written; whoever asks then goes the longer way.
 */
final class CanonicalMerge {
    /** A long has at least as many digits. */
    private static final int DIGITS = 18;

    /** What stands behind a backslash. */
    private static final String ESCAPES = "\"\\bfnrt";

    /** The same for letters below a space that have no sign of their own. */
    private static final Pattern UNICODE = Pattern.compile("u00(0[0-7BEF]|1[0-9A-F])");

    private static final int UNICODE_LENGTH = 5;

    private CanonicalMerge() {}

    /**
     * The values of both, the later where both have one.
     *
     * @return null when either is no canonical text, its names in order, each once
     */
    static byte @Nullable [] of(byte[] earlier, byte[] later) {
        Cursor first = new Cursor(earlier);
        Cursor second = new Cursor(later);
        byte[] merged = new byte[earlier.length + later.length];
        int size = 0;
        merged[size++] = '{';
        first.next();
        second.next();
        while (first.isAtPair() || second.isAtPair()) {
            int order = !second.isAtPair() ? -1 : !first.isAtPair() ? 1 : first.compare(second);
            Cursor taken = order < 0 ? first : second;
            if (size > 1) {
                merged[size++] = ',';
            }
            size = taken.copy(merged, size);
            if (order <= 0) {
                first.next();
            }
            if (order >= 0) {
                second.next();
            }
        }
        if (!first.isDone() || !second.isDone()) {
            return null;
        }
        merged[size++] = '}';
        return Arrays.copyOf(merged, size);
    }

    /**
     * A text without some of its values, each of which is null.
     *
     * @return null when one of them is something else, or it is no canonical text
     */
    static byte @Nullable [] without(byte[] text, List<String> nulls) {
        Set<String> pairs = nulls.stream().map(name -> '"' + name + "\":null").collect(Collectors.toSet());
        Cursor cursor = new Cursor(text);
        byte[] left = new byte[text.length];
        int size = 0;
        int met = 0;
        left[size++] = '{';
        for (cursor.next(); cursor.isAtPair(); cursor.next()) {
            if (pairs.contains(cursor.pair())) {
                met++;
                continue;
            }
            if (size > 1) {
                left[size++] = ',';
            }
            size = cursor.copy(left, size);
        }
        left[size++] = '}';
        return cursor.isDone() && met == pairs.size() ? Arrays.copyOf(left, size) : null;
    }

    /** Whether a text is of that form. */
    static boolean isCanonical(byte[] text) {
        Cursor cursor = new Cursor(text);
        do {
            cursor.next();
        } while (cursor.isAtPair());
        return cursor.isDone();
    }

    /** Goes from pair to pair; once something is amiss it is at no pair and not done. */
    private static final class Cursor {
        private final byte[] text;
        private int from;
        private int nameEnd;
        private int end;
        private boolean atPair;
        private boolean done;

        Cursor(byte[] text) {
            this.text = text;
        }

        boolean isAtPair() {
            return atPair;
        }

        boolean isDone() {
            return done;
        }

        void next() {
            boolean first = end == 0;
            if (!first && !atPair) {
                return;
            }
            atPair = false;
            if (first && !is(0, '{')) {
                end = -1;
                return;
            }
            int at = first ? 1 : end;
            if (is(at, '}')) {
                done = at == text.length - 1;
                end = -1;
                return;
            }
            int start = first ? at : is(at, ',') ? at + 1 : -1;
            int name = start < 0 ? -1 : string(start);
            int valueEnd = name < 0 || !is(name, ':') ? -1 : value(name + 1);
            boolean ascends =
                    valueEnd >= 0 && (first || Arrays.compareUnsigned(text, from, nameEnd, text, start, name) < 0);
            if (!ascends) {
                end = -1;
                return;
            }
            from = start;
            nameEnd = name;
            end = valueEnd;
            atPair = true;
        }

        int compare(Cursor other) {
            return Arrays.compareUnsigned(text, from, nameEnd, other.text, other.from, other.nameEnd);
        }

        int copy(byte[] to, int at) {
            System.arraycopy(text, from, to, at, end - from);
            return at + end - from;
        }

        String pair() {
            return new String(text, from, end - from, StandardCharsets.UTF_8);
        }

        private boolean is(int at, char wanted) {
            return at < text.length && text[at] == wanted;
        }

        private int value(int at) {
            if (is(at, '"')) {
                return string(at);
            }
            if (is(at, 'n')) {
                return is(at + 1, 'u') && is(at + 2, 'l') && is(at + 3, 'l') ? at + 4 : -1;
            }
            int digits = is(at, '-') ? at + 1 : at;
            int after = digits;
            while (after < text.length && text[after] >= '0' && text[after] <= '9') {
                after++;
            }
            boolean plain = after > digits && after - digits <= DIGITS && (after == digits + 1 || text[digits] != '0');
            return plain ? after : -1;
        }

        /** How many letters stand for one behind a backslash, or -1. */
        private int escape(int at) {
            if (at < text.length && ESCAPES.indexOf(text[at]) >= 0) {
                return 1;
            }
            boolean room = at + UNICODE_LENGTH <= text.length;
            return room
                            && UNICODE.matcher(new String(text, at, UNICODE_LENGTH, StandardCharsets.US_ASCII))
                                    .matches()
                    ? UNICODE_LENGTH
                    : -1;
        }

        /** Behind the string that begins there, or -1. */
        private int string(int at) {
            if (!is(at, '"')) {
                return -1;
            }
            for (int i = at + 1; i < text.length; i++) {
                byte each = text[i];
                if (each == '"') {
                    return i + 1;
                }
                if (each == '\\') {
                    int length = escape(i + 1);
                    if (length < 0) {
                        return -1;
                    }
                    i += length;
                } else if (each >= 0 && each < ' ') {
                    return -1;
                }
            }
            return -1;
        }
    }
}
