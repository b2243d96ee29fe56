package witnessmark.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;

/**
 * How long an engine ran, the base of every life in the logbook. Never negative.
 *
 * @param millis milliseconds, 0 or more
 */
public record RunningTime(long millis) implements Comparable<RunningTime> {
    public static final RunningTime NONE = new RunningTime(0);
    private static final long PER_SECOND = 1000;
    private static final long PER_MINUTE = 60 * PER_SECOND;
    private static final long PER_HOUR = 60 * PER_MINUTE;

    public RunningTime {
        if (millis < 0) {
            throw new IllegalArgumentException("a running time is 0 or more, not " + millis + " ms");
        }
    }

    /** A running time from hours, to the nearest millisecond, halves up. */
    public static RunningTime ofHours(BigDecimal hours) {
        return new RunningTime(Exact.nearest(hours.multiply(BigDecimal.valueOf(PER_HOUR))));
    }

    /** A running time from minutes, to the nearest millisecond, halves up. */
    public static RunningTime ofMinutes(BigDecimal minutes) {
        return new RunningTime(Exact.nearest(minutes.multiply(BigDecimal.valueOf(PER_MINUTE))));
    }

    /**
     * Reads back what {@link #text()} wrote: seconds as a plain decimal.
     *
     * @throws NumberFormatException if the text is no such figure or is finer than a millisecond
     */
    public static RunningTime parse(String seconds) {
        return new RunningTime(Exact.read(seconds, PER_SECOND));
    }

    /** Seconds as plain decimal text, exact. */
    public String text() {
        return Exact.text(millis, PER_SECOND);
    }

    /** Hours rounded to the given number of decimals, halves up. */
    public BigDecimal hours(int decimals) {
        return BigDecimal.valueOf(millis).divide(BigDecimal.valueOf(PER_HOUR), decimals, RoundingMode.HALF_UP);
    }

    /** Minutes rounded to the given number of decimals, halves up. */
    public BigDecimal minutes(int decimals) {
        return BigDecimal.valueOf(millis).divide(BigDecimal.valueOf(PER_MINUTE), decimals, RoundingMode.HALF_UP);
    }

    public Duration asDuration() {
        return Duration.ofMillis(millis);
    }

    public RunningTime plus(RunningTime other) {
        return new RunningTime(Math.addExact(millis, other.millis));
    }

    @Override
    public int compareTo(RunningTime other) {
        return Long.compare(millis, other.millis);
    }
}
