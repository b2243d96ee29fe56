package witnessmark.ledger;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** What is planned and can hardly be meant: a run outside its event, two at once, a truck that leaves once it has begun. */
final class EventChecks {
    private static final long MINUTE = 60_000;
    private static final Comparator<Entry<PlannedRun>> IN_TURN = Comparator.comparingInt(
                    (Entry<PlannedRun> planned) -> planned.fact().ordinal())
            .thenComparing(Entry::id);

    private final Surroundings around;
    private final Clashes clashes;
    private final Map<Id<Event>, List<Entry<PlannedRun>>> timetables = new HashMap<>();

    EventChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
    }

    void checkEvent(Entry<Event> entry) {
        Moment leaves = entry.fact().truckLeaves();
        if (leaves == null) {
            return;
        }
        LocalDate first = entry.fact().firstDay();
        LocalTime begins = timetable(entry.id()).stream()
                .filter(planned -> planned.fact().day().equals(first))
                .map(planned -> planned.fact().out())
                .filter(out -> out != null)
                .min(Comparator.naturalOrder())
                .orElse(LocalTime.MAX);
        boolean thatDay = leaves.day().equals(first) && !leaves.dayOnly();
        if (leaves.day().isAfter(first)
                || thatDay && leaves.wallClock().toLocalTime().isAfter(begins)) {
            clashes.addIn(entry, "truckLeaves", ProblemKind.TRUCK_AFTER_BEGIN, leaves, first);
        }
    }

    void checkPlanned(Entry<PlannedRun> entry) {
        PlannedRun planned = entry.fact();
        around.facts.of(Event.class).find(planned.event()).map(Entry::fact).ifPresent(event -> {
            if (planned.day().isBefore(event.firstDay()) || planned.day().isAfter(event.lastDay())) {
                clashes.addIn(
                        entry,
                        "day",
                        ProblemKind.PLANNED_OUTSIDE_EVENT,
                        planned.name(),
                        planned.day(),
                        event.firstDay(),
                        event.lastDay());
            }
        });
        timetable(planned.event()).stream()
                .filter(other -> !around.changed(other) || IN_TURN.compare(other, entry) < 0)
                .filter(other -> !other.id().equals(entry.id()) && atOnce(planned, other.fact()))
                .min(IN_TURN)
                .ifPresent(other -> overlap(entry, other.fact()));
    }

    private void overlap(Entry<PlannedRun> entry, PlannedRun other) {
        LocalTime out = other.out();
        if (out != null) {
            RunningTime expected = other.expected();
            LocalTime back = expected == null ? out : out.plusNanos(expected.millis() * 1_000_000);
            clashes.addIn(
                    entry, "out", ProblemKind.PLANNED_RUNS_OVERLAP, entry.fact().name(), other.name(), out, back);
        }
    }

    private static boolean atOnce(PlannedRun run, PlannedRun other) {
        LocalTime out = run.out();
        LocalTime there = other.out();
        return out != null
                && there != null
                && run.day().equals(other.day())
                && millis(out) < millis(there) + length(other.expected())
                && millis(there) < millis(out) + length(run.expected());
    }

    private static long millis(LocalTime time) {
        return time.toNanoOfDay() / 1_000_000;
    }

    /** A run whose length nobody expects takes a moment all the same: two cannot go out at once. */
    private static long length(@Nullable RunningTime expected) {
        return expected == null ? MINUTE : expected.millis();
    }

    private List<Entry<PlannedRun>> timetable(Id<Event> event) {
        if (timetables.isEmpty()) {
            around.facts
                    .of(PlannedRun.class)
                    .inForce()
                    .forEach(planned -> timetables
                            .computeIfAbsent(planned.fact().event(), any -> new ArrayList<>())
                            .add(planned));
        }
        return timetables.getOrDefault(event, List.of());
    }
}
