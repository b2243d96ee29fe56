package witnessmark.logbook.run;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.MarkState;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;

/**
 * Goes through the coming running of a car, run by run: what is left of the event in hand, then the next event it is
 * entered for. Only what a timetable states is counted.
 */
final class LookAhead {
    private final List<PlannedRun> coming;
    private final Facts facts;
    private final @Nullable Id<Event> inHand;

    private LookAhead(Facts facts, @Nullable Id<Event> inHand, List<PlannedRun> coming) {
        this.facts = facts;
        this.inHand = inHand;
        this.coming = coming;
    }

    /**
     * What comes after a run.
     *
     * @param day what was to come before this day is past
     */
    static LookAhead after(Facts facts, Run run, LocalDate day) {
        Id<Car> car = run.car();
        List<PlannedRun> coming = new ArrayList<>();
        if (car != null) {
            NextRun next = new NextRun(facts);
            Id<Event> event = run.event();
            if (event != null && !facts.of(Event.class).get(event).lastDay().isBefore(day)) {
                next.left(event, car).stream()
                        .filter(planned -> !planned.id().equals(run.planned()))
                        .forEach(planned -> coming.add(planned.fact()));
            }
            nextEvent(facts, car, run, day)
                    .ifPresent(entry -> next.left(entry.id(), car).forEach(planned -> coming.add(planned.fact())));
        }
        return new LookAhead(facts, run.event(), coming);
    }

    /** The coming run by which what is left of a limit is used up. */
    Optional<Due> usesUp(LimitUse use) {
        if (use.state() != MarkState.WITHIN) {
            return Optional.empty();
        }
        long left = use.left();
        for (PlannedRun planned : coming) {
            Long adds = adds(planned, use.used().counter());
            if (adds == null) {
                return Optional.empty();
            }
            left -= adds;
            if (left <= 0) {
                return Optional.of(new Due(
                        planned.name(),
                        planned.event().equals(inHand)
                                ? null
                                : facts.of(Event.class).get(planned.event()).name()));
            }
        }
        return Optional.empty();
    }

    /** What a planned run adds to a counter, or null when its timetable does not say. */
    private static @Nullable Long adds(PlannedRun planned, Counter counter) {
        return switch (counter) {
            case RUNNING -> {
                RunningTime expected = planned.expected();
                yield expected == null ? null : Long.valueOf(expected.millis());
            }
            case RACE_STARTS -> planned.kind() == RunKind.RACE ? 1L : 0L;
            case HEAT_CYCLES -> 1L;
            default -> null;
        };
    }

    private static Optional<Entry<Event>> nextEvent(Facts facts, Id<Car> car, Run run, LocalDate day) {
        return facts.of(Event.class)
                .inForce()
                .filter(event -> !event.id().equals(run.event()))
                .filter(event -> event.fact().firstDay().isAfter(day))
                .filter(event -> entered(facts, event.id(), car))
                .min(Comparator.comparing(event -> event.fact().firstDay()));
    }

    /** A car takes part where it is entered, or where no entry of any car is written down. */
    private static boolean entered(Facts facts, Id<Event> event, Id<Car> car) {
        List<Entry<EventEntry>> entries =
                facts.of(EventEntry.class).where(entry -> entry.event().equals(event));
        return entries.isEmpty()
                || entries.stream().anyMatch(entry -> entry.fact().car().equals(car));
    }
}
