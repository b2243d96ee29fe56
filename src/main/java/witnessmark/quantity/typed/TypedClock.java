package witnessmark.quantity.typed;

import java.time.LocalTime;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time of day as people type it: {@code 10:40}, {@code 1040}, {@code 9}, {@code 9.30}, {@code 10h40}, {@code 9h},
 * {@code 9:30 pm}, {@code 10:40:15}. Minutes have two figures, so that {@code 9.3} is not taken for anything.
 */
public final class TypedClock {
    private static final List<String> EXAMPLES = List.of("10:40", "1040");
    private static final Pattern FORM = Pattern.compile("(?<hour>[0-9]{1,2})"
            + "(?:h|(?:[:.,h]?(?<minute>[0-5][0-9])(?::(?<second>[0-5][0-9]))?))?"
            + "(?: ?(?<half>am|pm))?");

    private TypedClock() {}

    /** Reads a time of day. */
    public static Typed<LocalTime> read(String text) {
        String plain = Plain.of(text);
        Matcher form = FORM.matcher(plain == null ? "" : plain);
        if (!form.matches()) {
            return new Typed.Unreadable<>(EXAMPLES);
        }
        String half = form.group("half");
        int hour = Integer.parseInt(form.group("hour"));
        boolean possible = half == null ? hour < 24 : hour >= 1 && hour <= 12;
        if (!possible) {
            return new Typed.Unreadable<>(EXAMPLES);
        }
        if (half != null) {
            hour = hour % 12 + (half.equals("pm") ? 12 : 0);
        }
        String minute = form.group("minute");
        String second = form.group("second");
        return new Typed.Read<>(
                LocalTime.of(
                        hour,
                        minute == null ? 0 : Integer.parseInt(minute),
                        second == null ? 0 : Integer.parseInt(second)),
                text);
    }
}
