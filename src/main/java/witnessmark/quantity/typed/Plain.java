package witnessmark.quantity.typed;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Typed text made plain: one kind of space, one kind of minus, small letters. */
final class Plain {
    /** Longer texts are no measure; the bound keeps odd input from costing time. */
    private static final int LONGEST = 60;

    private Plain() {}

    /** The plain text, or null when it is empty or too long to be a measure. */
    static @Nullable String of(String text) {
        if (text.length() > LONGEST) {
            return null;
        }
        String plain = text.replace('\u00A0', ' ')
                .replace('\u2009', ' ')
                .replace('\u202F', ' ')
                .replace('\u2212', '-')
                .strip()
                .toLowerCase(Locale.ROOT);
        return plain.isEmpty() ? null : plain;
    }
}
