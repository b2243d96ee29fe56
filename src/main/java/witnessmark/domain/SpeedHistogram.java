package witnessmark.domain;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Time the crankshaft turned in each band of 250 rpm: the first from 0 up to but not with 250, and so on. Whole
 * milliseconds, so that sums are exact.
 */
public final class SpeedHistogram {
    /** Width of a band, rpm. */
    public static final int WIDTH = 250;

    /** Bands reach to 30 000 rpm; what turned faster is in the last. */
    private static final int MOST = 120;

    private static final SpeedHistogram NOTHING = new SpeedHistogram(new long[0]);

    private final long[] millis;

    private SpeedHistogram(long[] millis) {
        int used = millis.length;
        while (used > 0 && millis[used - 1] == 0) {
            used--;
        }
        this.millis = Arrays.copyOf(millis, used);
    }

    public static SpeedHistogram nothing() {
        return NOTHING;
    }

    /**
     * @param millis time in each band from the lowest, milliseconds, 0 or more
     * @throws IllegalArgumentException if a time is below 0 or there are more than 120 bands
     */
    public static SpeedHistogram of(long... millis) {
        if (millis.length > MOST || Arrays.stream(millis).anyMatch(time -> time < 0)) {
            throw new IllegalArgumentException("bands of 0 ms or more, up to " + MOST);
        }
        return new SpeedHistogram(millis);
    }

    /** How many bands there can be. */
    public static int mostBands() {
        return MOST;
    }

    /**
     * Reads back what {@link #text()} wrote.
     *
     * @throws IllegalArgumentException if the text is none
     */
    public static SpeedHistogram parse(String text) {
        long[] millis = new long[MOST];
        int last = -1;
        for (String pair : text.isEmpty() ? new String[0] : text.split(";", -1)) {
            int colon = pair.indexOf(':');
            int rpm = Integer.parseInt(pair.substring(0, Math.max(colon, 0)));
            int band = rpm / WIDTH;
            if (rpm % WIDTH != 0 || band <= last || band >= MOST) {
                throw new IllegalArgumentException("no band of engine speed: " + pair);
            }
            millis[band] = Long.parseLong(pair.substring(colon + 1));
            if (millis[band] <= 0) {
                throw new IllegalArgumentException("a band of no time: " + pair);
            }
            last = band;
        }
        return new SpeedHistogram(millis);
    }

    /** Lower edge of each band in rpm and its milliseconds, those of no time left out: {@code 750:1200;1000:350}. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < millis.length; i++) {
            if (millis[i] != 0) {
                text.append(text.length() == 0 ? "" : ";")
                        .append(i * WIDTH)
                        .append(':')
                        .append(millis[i]);
            }
        }
        return text.toString();
    }

    /** How many bands there are, up to the highest with any time. */
    public int bands() {
        return millis.length;
    }

    /** Time in a band, milliseconds; band 0 begins at 0 rpm. */
    public long millis(int band) {
        return band < millis.length ? millis[band] : 0;
    }

    /** All of it, milliseconds. */
    public long total() {
        return Arrays.stream(millis).sum();
    }

    /** Time in bands that begin at this speed or higher, milliseconds. */
    public long from(int rpm) {
        long sum = 0;
        for (int i = Math.floorDiv(rpm + WIDTH - 1, WIDTH); i < millis.length; i++) {
            sum += millis[Math.max(i, 0)];
        }
        return sum;
    }

    /** Both together. */
    public SpeedHistogram plus(SpeedHistogram other) {
        long[] sum = Arrays.copyOf(millis, Math.max(millis.length, other.millis.length));
        for (int i = 0; i < other.millis.length; i++) {
            sum[i] += other.millis[i];
        }
        return new SpeedHistogram(sum);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SpeedHistogram that && Arrays.equals(millis, that.millis);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(millis);
    }

    @Override
    public String toString() {
        return text();
    }
}
