package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;

/**
 * What becomes of a timetable when the days of its event are corrected. Where both move by as many days and all its runs
 * lay inside, they move along: then the event was meant to be on other days. Once one of them is logged its days are
 * known, and nothing moves by itself.
 */
final class EventDays {
    private final Event was;
    private final List<Entry<PlannedRun>> timetable;
    private final boolean begun;

    /** @param was the event as it was when it was opened */
    EventDays(Facts facts, Id<Event> event, Event was) {
        this.was = was;
        this.timetable = facts
                .of(PlannedRun.class)
                .where(planned -> planned.event().equals(event))
                .stream()
                .sorted(Comparator.comparingInt(planned -> planned.fact().ordinal()))
                .toList();
        this.begun = !facts.of(Run.class)
                .where(run -> event.equals(run.event()) && run.planned() != null)
                .isEmpty();
    }

    /** By how many days the runs of the timetable move with the event; 0 when they stay. */
    long moves(LocalDate first, LocalDate last) {
        long days = ChronoUnit.DAYS.between(was.firstDay(), first);
        boolean both = days == ChronoUnit.DAYS.between(was.lastDay(), last);
        return both && !begun && outside(was.firstDay(), was.lastDay()).isEmpty() ? days : 0;
    }

    List<Entry<PlannedRun>> timetable() {
        return timetable;
    }

    /** The first run of the timetable that days leave out, where these are not the event's own. */
    Optional<PlannedRun> leftOut(LocalDate first, LocalDate last) {
        boolean same = first.equals(was.firstDay()) && last.equals(was.lastDay());
        return same || moves(first, last) != 0 ? Optional.empty() : outside(first, last);
    }

    private Optional<PlannedRun> outside(LocalDate first, LocalDate last) {
        return timetable.stream()
                .map(Entry::fact)
                .filter(planned -> isOutside(planned.day(), first, last))
                .findFirst();
    }

    static boolean isOutside(@Nullable LocalDate day, LocalDate first, LocalDate last) {
        return day != null && (day.isBefore(first) || day.isAfter(last));
    }

    /** The same run so many days later, or earlier for less than nothing. */
    static PlannedRun moved(PlannedRun run, long days) {
        return new PlannedRun(
                run.event(),
                run.ordinal(),
                run.kind(),
                run.name(),
                run.day().plusDays(days),
                run.out(),
                run.expected());
    }
}
