package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.RunningTime;

/**
 * A running time as the trade types it: {@code 1h20}, {@code 1h 20m}, {@code 80}, {@code 80 min}, {@code 1.33 h},
 * {@code 1,33 h}, {@code 95 s}, {@code 27'30"}, {@code 1:20:30}.
 *
 * <p>A bare figure is in the field's own unit. With two figures and a colon, {@code 27:30} is minutes and seconds; a
 * first figure below five may as well be hours ({@code 1:20}), and so may any in a field of hours: both readings come
 * back, hours and minutes first.
 */
public final class TypedTime {
    private static final Pattern TWO = Pattern.compile("([0-9]{1,3}):([0-5][0-9])");
    private static final Pattern SECONDS_IN_PARTS = Pattern.compile("([0-9]{1,3}):([0-5][0-9][.,][0-9]{1,3})");
    private static final Pattern THREE = Pattern.compile("([0-9]{1,3}):([0-5][0-9]):([0-5][0-9](?:[.,][0-9]{1,3})?)");
    /** From this figure on, what stands before a single colon is taken for minutes. */
    private static final int SURELY_MINUTES = 5;

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private TypedTime() {}

    /** Reads what was typed into a field of minutes. */
    public static Typed<RunningTime> read(String text) {
        return read(text, TimeUnit.MINUTE);
    }

    /**
     * Reads what was typed.
     *
     * @param text as typed
     * @param own the unit of a bare figure
     */
    public static Typed<RunningTime> read(String text, TimeUnit own) {
        String plain = Plain.of(text);
        if (plain == null) {
            return new Typed.Unreadable<>(own.examples());
        }
        Matcher two = TWO.matcher(plain);
        if (two.matches()) {
            return twoFigures(two, own, text);
        }
        BigDecimal millis = colons(plain);
        if (millis == null) {
            millis = pieces(plain, own);
        }
        RunningTime time = millis == null ? null : time(millis);
        return time == null ? new Typed.Unreadable<>(own.examples()) : new Typed.Read<>(time, text);
    }

    private static Typed<RunningTime> twoFigures(Matcher two, TimeUnit own, String text) {
        long before = Long.parseLong(two.group(1));
        long after = Long.parseLong(two.group(2));
        RunningTime inMinutes = new RunningTime((before * 60 + after) * 1000);
        RunningTime inHours = new RunningTime((before * 60 + after) * 60_000);
        boolean minutes = before >= SURELY_MINUTES && own != TimeUnit.HOUR;
        return minutes || inMinutes.equals(inHours)
                ? new Typed.Read<>(inMinutes, text)
                : new Typed.Two<>(inHours, inMinutes);
    }

    /** Milliseconds of {@code h:mm:ss} or {@code mm:ss.s}, or null. */
    private static @Nullable BigDecimal colons(String plain) {
        Matcher three = THREE.matcher(plain);
        if (three.matches()) {
            return of(three.group(1), TimeUnit.HOUR)
                    .add(of(three.group(2), TimeUnit.MINUTE))
                    .add(of(three.group(3), TimeUnit.SECOND));
        }
        Matcher two = SECONDS_IN_PARTS.matcher(plain);
        return two.matches() ? of(two.group(1), TimeUnit.MINUTE).add(of(two.group(2), TimeUnit.SECOND)) : null;
    }

    private static BigDecimal of(String figure, TimeUnit unit) {
        return new BigDecimal(figure.replace(',', '.')).multiply(unit.millis());
    }

    /**
     * Milliseconds of figures with units, each smaller than the one before, or null. The last may go without its unit
     * ({@code 1h20}); only the last may have decimals; one that follows another is below sixty.
     */
    private static @Nullable BigDecimal pieces(String plain, TimeUnit own) {
        BigDecimal millis = BigDecimal.ZERO;
        TimeUnit last = null;
        int at = 0;
        while (at < plain.length()) {
            Numeral figure = Numeral.at(plain, at);
            if (figure == null || "+-".indexOf(plain.charAt(at)) >= 0) {
                return null;
            }
            int from = pastSpaces(plain, figure.end());
            int to = wordEnd(plain, from);
            TimeUnit bare = last == null ? own : last.finer();
            TimeUnit unit = from < to ? TimeUnit.named(plain.substring(from, to)) : bare;
            at = pastSpaces(plain, to);
            boolean follows = last != null
                    && unit != null
                    && unit.compareTo(last) > 0
                    && figure.value().compareTo(SIXTY) < 0;
            boolean unfinished = at < plain.length() && (from == to || figure.fractional());
            if (unit == null || unfinished || last != null && !follows) {
                return null;
            }
            millis = millis.add(figure.value().multiply(unit.millis()));
            last = unit;
        }
        return millis;
    }

    private static int pastSpaces(String plain, int from) {
        int at = from;
        while (at < plain.length() && plain.charAt(at) == ' ') {
            at++;
        }
        return at;
    }

    private static int wordEnd(String plain, int from) {
        int at = from;
        while (at < plain.length() && plain.charAt(at) != ' ' && !Character.isDigit(plain.charAt(at))) {
            at++;
        }
        return at;
    }

    /** The time to the nearest millisecond, or null when no running is that long or it is below none. */
    private static @Nullable RunningTime time(BigDecimal millis) {
        BigDecimal whole = millis.setScale(0, RoundingMode.HALF_UP);
        return whole.signum() < 0 || whole.compareTo(BigDecimal.valueOf(Long.MAX_VALUE)) > 0
                ? null
                : new RunningTime(whole.longValueExact());
    }
}
