package witnessmark.logbook.run;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.quantity.typed.TypedClock;
import witnessmark.quantity.typed.TypedDate;

/** Steps a date by days and a time of day by five minutes, as the arrow keys do. */
final class Steps {
    private static final int MINUTES = 5;
    private static final int DAY_IN_MINUTES = 24 * 60;

    private Steps() {}

    /** The day that many days later; from today when there is none to be read. */
    static String day(String text, LocalDate today, DayOrder order, int by) {
        Optional<LocalDate> day = TypedDate.read(text, today, order).only();
        return RunDefaults.DAY.format(day.map(from -> from.plusDays(by)).orElse(today));
    }

    /**
     * The next or last full five minutes; within the day.
     *
     * @param from the time the field stands for when it is empty
     */
    static String clock(String text, LocalTime from, int by) {
        LocalTime time = TypedClock.read(text).only().orElse(from);
        int minute = time.getHour() * 60 + time.getMinute();
        int next = Math.floorDiv(by > 0 ? minute : minute + MINUTES - 1, MINUTES) * MINUTES + by * MINUTES;
        int within = Math.floorMod(next, DAY_IN_MINUTES);
        return LocalTime.of(within / 60, within % 60).toString();
    }
}
