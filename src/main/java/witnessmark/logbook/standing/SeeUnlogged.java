package witnessmark.logbook.standing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.ahead.RunsTaken;

/** Sees which runs of an event nobody logged: what is not logged is in no life. */
final class SeeUnlogged {
    /** So long after an event its gaps are told; whoever left them longer means to. */
    private static final int DAYS_AFTER = 7;

    private final Facts facts;
    private final LocalDate day;
    private final RunsTaken taken;

    SeeUnlogged(Facts facts, AsOf asOf) {
        this.facts = facts;
        this.day = asOf.day();
        this.taken = RunsTaken.by(facts, asOf);
    }

    /** By event and car; runs of the day itself are not past yet. */
    List<StillOpen.Unlogged> all() {
        return facts.of(Event.class)
                .inForce()
                .filter(event -> event.fact().firstDay().isBefore(day)
                        && !event.fact().lastDay().isBefore(day.minusDays(DAYS_AFTER)))
                .sorted(Comparator.comparing(
                        (Entry<Event> event) -> event.fact().firstDay()))
                .flatMap(event -> of(event).stream())
                .toList();
    }

    private List<StillOpen.Unlogged> of(Entry<Event> event) {
        List<Entry<PlannedRun>> past = facts
                .of(PlannedRun.class)
                .where(planned ->
                        planned.event().equals(event.id()) && planned.day().isBefore(day))
                .stream()
                .sorted(Comparator.comparingInt(planned -> planned.fact().ordinal()))
                .toList();
        List<StillOpen.Unlogged> all = new ArrayList<>();
        for (Entry<EventEntry> entry :
                facts.of(EventEntry.class).where(each -> each.event().equals(event.id()))) {
            Id<Car> car = entry.fact().car();
            List<Entry<PlannedRun>> open =
                    past.stream().filter(planned -> !taken.has(car, planned)).toList();
            if (!open.isEmpty()) {
                all.add(new StillOpen.Unlogged(facts.of(Car.class).find(car).orElseThrow(), event, open));
            }
        }
        return all;
    }
}
