package witnessmark.logbook.run;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Id;
import witnessmark.logbook.port.Today;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * When a run went out of which nobody says when; always marked estimated. Today it has just come back, or gone out when
 * the car's last run came back, and never lies ahead of the clock. On any other day, also that of a story, it is half an
 * hour after the car's last run of that day, else noon.
 */
final class EstimatedOut {
    private static final long BETWEEN_RUNS_MINUTES = 30;

    private final RunsBefore before;
    private final Today today;

    EstimatedOut(RunsBefore before, Today today) {
        this.before = before;
        this.today = today;
    }

    /** @param running how long it ran, or null while that is not known */
    Moment on(LocalDate day, ZoneId zone, @Nullable Id<Car> car, @Nullable RunningTime running) {
        Optional<LocalTime> back = lastBack(day, car);
        Moment now = Moment.of(today.now(), zone);
        if (day.equals(today.day()) && day.equals(now.day())) {
            return Moment.of(day.atTime(justNow(now.wallClock().toLocalTime(), back, running)), zone);
        }
        LocalTime out = back.map(last -> last.plusMinutes(BETWEEN_RUNS_MINUTES)).orElse(LocalTime.NOON);
        return Moment.of(day.atTime(out.truncatedTo(ChronoUnit.MINUTES)), zone);
    }

    /** So long ago as it ran, but not before the car's last run was back, as long as that is not still to come. */
    private static LocalTime justNow(LocalTime now, Optional<LocalTime> back, @Nullable RunningTime running) {
        long millis = now.toNanoOfDay() / 1_000_000 - (running == null ? 0 : running.millis());
        LocalTime out = LocalTime.ofNanoOfDay(Math.max(0, millis) * 1_000_000);
        LocalTime after =
                back.map(EstimatedOut::minuteFrom).filter(out::isBefore).orElse(out);
        return (after.isAfter(now) ? now : after).truncatedTo(ChronoUnit.MINUTES);
    }

    /** The first whole minute that is not before it. */
    private static LocalTime minuteFrom(LocalTime time) {
        LocalTime minute = time.truncatedTo(ChronoUnit.MINUTES);
        return minute.equals(time) ? time : minute.plusMinutes(1);
    }

    private Optional<LocalTime> lastBack(LocalDate day, @Nullable Id<Car> car) {
        return before.last(run ->
                        run.start().day().equals(day) && (car == null ? run.car() == null : car.equals(run.car())))
                .map(run -> run.fact().back().wallClock())
                .filter(back -> back.toLocalDate().equals(day))
                .map(back -> back.toLocalTime());
    }
}
