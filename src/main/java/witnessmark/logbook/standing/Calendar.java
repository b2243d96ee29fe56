package witnessmark.logbook.standing;

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
import witnessmark.domain.PlannedRun;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.ahead.RunsTaken;

/** Which event comes next. */
final class Calendar {
    private final Facts facts;
    private final AsOf asOf;

    Calendar(Facts facts, AsOf asOf) {
        this.facts = facts;
        this.asOf = asOf;
    }

    /** The event whose last day is not past and whose first day is the earliest. */
    Optional<NextEvent> next() {
        return facts.of(Event.class)
                .inForce()
                .filter(event -> !event.fact().lastDay().isBefore(asOf.day()))
                .min(Comparator.comparing((Entry<Event> event) -> event.fact().firstDay())
                        .thenComparing(Entry::id))
                .map(this::counted);
    }

    private NextEvent counted(Entry<Event> event) {
        List<Entry<PlannedRun>> planned =
                facts.of(PlannedRun.class).where(run -> run.event().equals(event.id()));
        Set<Id<Car>> cars = facts
                .of(EventEntry.class)
                .where(entry -> entry.event().equals(event.id()))
                .stream()
                .map(entry -> entry.fact().car())
                .collect(Collectors.toSet());
        RunsTaken taken = RunsTaken.by(facts, asOf);
        long left = planned.stream()
                .filter(run -> !run.fact().day().isBefore(asOf.day()))
                .flatMap(run -> cars.stream().filter(car -> !taken.has(car, run)))
                .count();
        return new NextEvent(
                event.id(),
                event.fact(),
                asOf.day(),
                cars.size(),
                planned.size(),
                planned.size() * cars.size(),
                Math.toIntExact(left));
    }
}
