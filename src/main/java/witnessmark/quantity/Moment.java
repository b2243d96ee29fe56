package witnessmark.quantity;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import org.jspecify.annotations.Nullable;

/**
 * When something happened: an instant, the zone the people stood in and the offset their clocks showed. Two moments
 * are compared by instant alone. The text form is that of RFC 9557 ({@code 2026-07-05T15:00:00+01:00[Europe/London]}).
 *
 * @param epochMillis milliseconds since 1970-01-01T00:00Z
 * @param zone the zone whose wall clock was read
 * @param offset the offset that clock had; kept because zone rules change
 */
public record Moment(long epochMillis, ZoneId zone, ZoneOffset offset) implements Comparable<Moment> {
    /** A date alone means after the last run of that day. */
    private static final LocalTime LAST_OF_DAY = LocalTime.of(23, 59, 59, 999_000_000);

    /** From here on a time of day says no more than the day: it keeps the order of what has only a date. */
    private static final LocalTime ORDER_OF_DAY = LocalTime.of(23, 59, 59, 900_000_000);

    public static Moment of(Instant instant, ZoneId zone) {
        return new Moment(instant.toEpochMilli(), zone, zone.getRules().getOffset(instant));
    }

    /**
     * The moment a wall clock showed. A time that a clock change skips moves on by the gap; one that it repeats is the
     * earlier of the two (the rule of {@link ZonedDateTime#of}).
     */
    public static Moment of(LocalDateTime wallClock, ZoneId zone) {
        return of(ZonedDateTime.of(wallClock, zone).toInstant(), zone);
    }

    /** The last millisecond of a day: after every run of it. */
    public static Moment endOf(LocalDate day, ZoneId zone) {
        return of(day.atTime(LAST_OF_DAY), zone);
    }

    /**
     * Reads back what {@link #text()} wrote; the offset stays as written, whatever the zone's rules say today. A date
     * alone is not accepted here.
     *
     * @throws DateTimeParseException if the text is no such moment
     */
    public static Moment parse(String text) {
        TemporalAccessor read = DateTimeFormatter.ISO_ZONED_DATE_TIME.parse(text.strip());
        return new Moment(
                Instant.from(read).toEpochMilli(),
                ZoneId.from(read),
                ZoneOffset.ofTotalSeconds(read.get(ChronoField.OFFSET_SECONDS)));
    }

    public String text() {
        String local = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(instant().atOffset(offset));
        return zone instanceof ZoneOffset ? local : local + "[" + zone.getId() + "]";
    }

    public Instant instant() {
        return Instant.ofEpochMilli(epochMillis);
    }

    /** The day on the wall clock. */
    public LocalDate day() {
        return wallClock().toLocalDate();
    }

    /** Date and time on the wall clock. */
    public LocalDateTime wallClock() {
        return LocalDateTime.ofInstant(instant(), offset);
    }

    /** Whether only the day was given (see {@link #endOf} and {@link #before()}). */
    public boolean dayOnly() {
        return !wallClock().toLocalTime().isBefore(ORDER_OF_DAY);
    }

    /** The millisecond before. What has only a date stays so, and comes before what happened later that day. */
    public Moment before() {
        return new Moment(epochMillis - 1, zone, offset);
    }

    public Moment plus(RunningTime time) {
        return of(Instant.ofEpochMilli(Math.addExact(epochMillis, time.millis())), zone);
    }

    /** Whether two times share a moment; each leaves its end out, and without one lasts for ever. */
    public static boolean overlap(Moment from, @Nullable Moment to, Moment otherFrom, @Nullable Moment otherTo) {
        return (to == null || otherFrom.isBefore(to)) && (otherTo == null || from.isBefore(otherTo));
    }

    public boolean isBefore(Moment other) {
        return epochMillis < other.epochMillis;
    }

    public boolean isAfter(Moment other) {
        return epochMillis > other.epochMillis;
    }

    @Override
    public int compareTo(Moment other) {
        return Long.compare(epochMillis, other.epochMillis);
    }
}
