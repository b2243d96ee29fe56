package witnessmark.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoField;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * Reads a moment as the season folder has it, and as people write one by hand: a day alone, which means after the last
 * run of that day, or a day and a time by the clock on the wall.
 */
final class MomentText {
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern WALL_CLOCK =
            Pattern.compile("\\d{4}-\\d{2}-\\d{2}[T ]\\d{2}:\\d{2}(:\\d{2}(\\.\\d{1,3})?)?");

    private MomentText() {}

    /**
     * Reads a moment.
     *
     * @param day the zone whose days the team counts in, or null when no team is known
     * @param wallClock the zone of the clock, or null when not known
     * @throws DateTimeException if it is no moment, is finer than a millisecond, or needs a zone that is not known
     */
    static Moment read(String text, @Nullable ZoneId day, @Nullable ZoneId wallClock) {
        if (DAY.matcher(text).matches()) {
            return Moment.endOf(LocalDate.parse(text), known(day));
        }
        if (WALL_CLOCK.matcher(text).matches()) {
            return Moment.of(LocalDateTime.parse(text.replace(' ', 'T')), known(wallClock));
        }
        if (text.indexOf('.') >= 0
                && DateTimeFormatter.ISO_ZONED_DATE_TIME.parse(text).get(ChronoField.NANO_OF_SECOND) % 1_000_000 != 0) {
            throw new DateTimeException("finer than a millisecond");
        }
        return Moment.parse(text);
    }

    /** Whether only a zone is missing to read it. */
    static boolean lacksZone(String text, @Nullable ZoneId day, @Nullable ZoneId wallClock) {
        return (day == null && DAY.matcher(text).matches())
                || (wallClock == null && WALL_CLOCK.matcher(text).matches());
    }

    private static ZoneId known(@Nullable ZoneId zone) {
        if (zone == null) {
            throw new DateTimeException("no zone is known");
        }
        return zone;
    }
}
