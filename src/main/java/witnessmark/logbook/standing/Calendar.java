package witnessmark.logbook.standing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.MissedRun;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;

/** Which event comes next. */
final class Calendar {
    private final Facts facts;
    private final LocalDate day;

    Calendar(Facts facts, LocalDate day) {
        this.facts = facts;
        this.day = day;
    }

    /** The event whose last day is not past and whose first day is the earliest. */
    Optional<NextEvent> next() {
        return facts.of(Event.class)
                .inForce()
                .filter(event -> !event.fact().lastDay().isBefore(day))
                .min(Comparator.comparing((Entry<Event> event) -> event.fact().firstDay())
                        .thenComparing(Entry::id))
                .map(this::counted);
    }

    private NextEvent counted(Entry<Event> event) {
        List<Entry<PlannedRun>> planned =
                facts.of(PlannedRun.class).where(run -> run.event().equals(event.id()));
        Set<Id<PlannedRun>> toCome = planned.stream()
                .filter(run -> !run.fact().day().isBefore(day))
                .map(Entry::id)
                .collect(Collectors.toSet());
        Set<Id<Car>> cars = facts
                .of(EventEntry.class)
                .where(entry -> entry.event().equals(event.id()))
                .stream()
                .map(entry -> entry.fact().car())
                .collect(Collectors.toSet());
        int left = toCome.size() * cars.size();
        long run = facts.of(Run.class)
                .inForce()
                .filter(entry -> toCome.contains(entry.fact().planned()))
                .filter(entry -> !entry.fact().start().day().isAfter(day))
                .count();
        long missed = facts.of(MissedRun.class)
                .inForce()
                .filter(entry -> toCome.contains(entry.fact().planned()))
                .filter(entry -> !entry.fact().at().day().isAfter(day))
                .count();
        return new NextEvent(
                event.id(), event.fact(), day, cars.size(), planned.size(), planned.size() * cars.size(), (int)
                        Math.max(0, left - run - missed));
    }
}
