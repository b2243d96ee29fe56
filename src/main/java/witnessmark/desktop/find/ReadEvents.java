package witnessmark.desktop.find;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * Makes events findable. The next one stands on the first place, once a run is logged: until then that place says how a
 * logbook is begun. Any other holds its runs, what else was planned, and the cars entered.
 */
final class ReadEvents {
    private final Texts texts;
    private final Measures measures;
    private final ReadRuns runs;

    ReadEvents(Texts texts, Measures measures, ReadRuns runs) {
        this.texts = texts;
        this.measures = measures;
        this.runs = runs;
    }

    /** Every event, the latest first. */
    List<Indexed> all(Facts facts, LocalDate today) {
        boolean begun = facts.of(Run.class)
                .inForce()
                .anyMatch(run -> run.fact().perhapsSame() == null
                        && !run.fact().start().day().isAfter(today));
        Optional<Id<Event>> next = facts.of(Event.class)
                .inForce()
                .filter(event -> begun)
                .filter(event -> !event.fact().lastDay().isBefore(today))
                .min(Comparator.comparing((Entry<Event> event) -> event.fact().firstDay())
                        .thenComparing(Entry::id))
                .map(Entry::id);
        return facts.of(Event.class)
                .inForce()
                .sorted(Comparator.comparing(
                                (Entry<Event> event) -> event.fact().firstDay())
                        .reversed())
                .map(event -> one(facts, event, next.filter(event.id()::equals).isPresent()))
                .toList();
    }

    private Indexed one(Facts facts, Entry<Event> event, boolean next) {
        Event fact = event.fact();
        List<Entry<Run>> taken = facts.of(Run.class).all().stream()
                .filter(run -> event.id().equals(run.fact().event()))
                .sorted(Comparator.comparing(run -> run.fact().start()))
                .toList();
        long inForce = taken.stream().filter(Entry::inForce).count();
        String note = texts.get("beforewego.find.event", measures.date(fact.firstDay()), inForce);
        String words = ReadRecords.words(
                fact.name(), fact.circuit(), note, fact.firstDay().toString(), fact.note());
        return next
                ? new Indexed(
                        fact.name(),
                        note,
                        "",
                        words,
                        PlaceId.BEFORE_WE_GO,
                        event.id().text())
                : new Indexed(
                        fact.name(),
                        texts.get("beforewego.find.event.holds", note),
                        "",
                        words,
                        null,
                        event.id().text(),
                        within(facts, event, taken));
    }

    private List<Indexed> within(Facts facts, Entry<Event> event, List<Entry<Run>> taken) {
        List<Indexed> within = new ArrayList<>();
        Set<Id<PlannedRun>> run = new HashSet<>();
        for (Entry<Run> one : taken) {
            within.add(runs.one(facts, one));
            if (one.inForce() && one.fact().planned() != null) {
                run.add(one.fact().planned());
            }
        }
        facts.of(PlannedRun.class).where(planned -> planned.event().equals(event.id())).stream()
                .filter(planned -> !run.contains(planned.id()))
                .sorted(Comparator.comparingInt(planned -> planned.fact().ordinal()))
                .forEach(planned -> within.add(line(planned(planned.fact()))));
        String cars = measures.row(
                facts.of(EventEntry.class).where(entry -> entry.event().equals(event.id())).stream()
                        .map(entry ->
                                facts.of(Car.class).get(entry.fact().car()).name())
                        .sorted()
                        .toList());
        if (taken.isEmpty() && !cars.isEmpty()) { // a run names its own car
            within.add(line(texts.get("beforewego.find.event.cars", cars)));
        }
        if (within.isEmpty()) {
            within.add(line(texts.get("beforewego.find.event.bare")));
        }
        return within;
    }

    private String planned(PlannedRun planned) {
        String day = measures.date(planned.day());
        String when = planned.out() == null ? day : texts.get("beforewego.comma", day, measures.time(planned.out()));
        String expected = planned.expected() == null
                ? when
                : texts.get("beforewego.comma", when, measures.running(planned.expected()));
        return texts.get("beforewego.find.planned", planned.name(), expected);
    }

    private static Indexed line(String words) {
        return new Indexed(words, "", "", "", null, "", List.of());
    }
}
