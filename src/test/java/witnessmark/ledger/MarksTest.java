package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.RunKind;
import witnessmark.domain.Standing;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.PrintedDate;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** How a part stands for reasons other than running, and which reason stands first. */
class MarksTest {
    private static final Moment MARCH = at("2026-03-01T08:00Z");

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);
    private final Id<Car> car = story.car("12");

    private List<Mark> marks(String day, Id<Part> part) {
        return new Marks(LifeLedger.of(story.facts(), asOf(day))).ofPart(part);
    }

    private Id<Event> event(String name, String first, String last) {
        return story.add(new Event(name, "north", LocalDate.parse(first), LocalDate.parse(last), Story.UTC, null, ""));
    }

    @Test
    void a_printed_date_is_over_the_day_after_and_due_before_the_next_event_is_over() {
        Id<Part> harness = harness("2026-07-05");
        assertThat(marks("2026-07-05", harness)).singleElement().satisfies(mark -> {
            assertThat(mark.reason()).isInstanceOf(PrintedDate.class);
            assertThat(mark.state()).isEqualTo(MarkState.WITHIN);
        });
        assertThat(marks("2026-07-06", harness)).extracting(Mark::state).containsExactly(MarkState.OVER);

        event("Round 5", "2026-07-04", "2026-07-06");
        assertThat(marks("2026-06-30", harness)).extracting(Mark::state).containsExactly(MarkState.DUE);
    }

    @Test
    void a_printed_date_that_lasts_through_the_event_and_the_next_is_within() {
        Id<Part> harness = harness("2026-07-31");
        event("Round 5", "2026-07-04", "2026-07-05");
        event("Round 6", "2026-07-25", "2026-07-26");
        assertThat(marks("2026-06-30", harness)).extracting(Mark::state).containsExactly(MarkState.WITHIN);

        event("Round 7", "2026-07-18", "2026-08-01");
        assertThat(marks("2026-06-30", harness))
                .as("the event after the next is Round 7 now")
                .extracting(Mark::state)
                .containsExactly(MarkState.DUE);
    }

    @Test
    void an_engine_swapped_in_while_the_event_runs_takes_what_is_left_of_it_and_the_one_meant_takes_nothing() {
        Id<Engine> other = story.engine("B2", design);
        story.put(engine, car, MARCH, at("2026-07-25T18:00Z"));
        story.put(other, car, at("2026-07-25T18:00Z"), null);
        Id<Event> round = event("Round 6", "2026-07-25", "2026-07-26");
        story.add(new EventEntry(round, car, engine));
        race(round, 1, "2026-07-25");
        Id<PlannedRun> left = race(round, 2, "2026-07-26");
        Id<Event> test = event("Test 2", "2026-10-17", "2026-10-17");
        race(test, 1, "2026-10-17");
        race(test, 2, "2026-10-17");
        limit(rods(other), Counter.RUNNING, 20 * 60_000);
        limit(rods(engine), Counter.RUNNING, 20 * 60_000);

        Mark in = new Marks(LifeLedger.of(story.facts(), asOf("2026-07-26")))
                .ofEngine(other)
                .get(0);
        assertThat(in.runsOut().planned().id()).isEqualTo(left);
        assertThat(in.expected().likely()).isEqualTo(30 * 60_000L);
        Mark out = new Marks(LifeLedger.of(story.facts(), asOf("2026-07-26")))
                .ofEngine(engine)
                .get(0);
        assertThat(out.expected()).as("it is in no car").isNull();

        Mark meant = new Marks(LifeLedger.of(story.facts(), asOf("2026-07-24")))
                .ofEngine(engine)
                .get(0);
        assertThat(meant.expected().likely()).as("before it runs, as meant").isEqualTo(2 * 30 * 60_000L);
    }

    private Id<PlannedRun> race(Id<Event> event, int ordinal, String day) {
        return story.add(new PlannedRun(
                event, ordinal, RunKind.RACE, "Race " + ordinal, LocalDate.parse(day), null, Story.minutes(30)));
    }

    private Id<Part> rods(Id<Engine> in) {
        Id<Part> rods = story.part("R-" + in, story.partDesign("forged " + in, PartKind.RODS, false));
        story.fit(rods, in, story.position(design, PartKind.RODS, "rods " + in, 1, true), MARCH, null);
        return rods;
    }

    private Id<Part> harness(String useBy) {
        Id<Part> harness = story.add(new Part(
                "H-1",
                story.partDesign("harness", PartKind.HARNESS, false),
                "",
                "",
                null,
                null,
                LocalDate.parse(useBy),
                null,
                null,
                null,
                ""));
        story.fitToCar(harness, car, story.carPosition(car, PartKind.HARNESS, "harness", 2), MARCH, null);
        return harness;
    }

    @Test
    void held_stands_before_over_and_what_is_not_known_of_a_part_that_can_wreck_the_engine_beside_over() {
        Id<Part> rods = story.part("R-1", story.partDesign("forged", PartKind.RODS, false));
        Id<Part> springs = story.part("S-1", story.partDesign("double", PartKind.VALVE_SPRINGS, false));
        story.fit(rods, engine, story.position(design, PartKind.RODS, "rods", 1, true), MARCH, null);
        story.fit(springs, engine, story.position(design, PartKind.VALVE_SPRINGS, "springs", 2, true), MARCH, null);
        limit(rods, Counter.RACE_STARTS, 100);
        limit(springs, Counter.RACE_STARTS, 100);
        limit(springs, Counter.RUNNING, 1);
        story.run(engine, null, at("2026-03-02T08:00Z"), 20);
        story.add(new Hold(null, springs, "exhaust 3B", at("2026-03-02T10:00Z"), "cracked?", "", "CC"));

        List<Mark> marks = new Marks(LifeLedger.of(story.facts(), asOf("2026-06-30"))).ofEngine(engine);

        assertThat(marks)
                .extracting(Mark::state)
                .containsExactly(MarkState.HELD, MarkState.OVER, MarkState.NOT_KNOWN, MarkState.NOT_KNOWN);
        assertThat(marks.get(2).part()).isEqualTo(rods);
        assertThat(marks.get(2).weight()).isEqualTo(MarkState.OVER.ordinal());
    }

    private void limit(Id<Part> part, Counter counter, long amount) {
        story.add(
                new Limit(
                        "renew",
                        LimitAction.RENEW,
                        null,
                        null,
                        null,
                        part,
                        null,
                        null,
                        counter,
                        amount,
                        LimitRank.OWN,
                        "",
                        LocalDate.parse("2026-01-01"),
                        null),
                Standing.IN_FORCE);
    }
}
