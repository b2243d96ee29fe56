package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;
import static witnessmark.ledger.Story.minutes;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Grade;
import witnessmark.domain.Id;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;
import witnessmark.domain.Warmth;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.ledger.result.ReadingUse.Broken;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** How the last readings stand to their limits, and how old they are. */
class ReadingUsesTest {
    private static final Moment MARCH = at("2026-03-01T08:00Z");
    private static final LocalDate FIRST = LocalDate.parse("2026-01-01");
    private static final long PERCENT = 100;
    private static final long NEWTON = 1000;

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);
    private final Id<PartDesign> springs = story.partDesign("single springs", PartKind.VALVE_SPRINGS, false);
    private final Id<Position> here = story.position(design, PartKind.VALVE_SPRINGS, "springs", 2, true);
    private final Id<Part> spring = story.part("S-1", springs);

    ReadingUsesTest() {
        story.fit(spring, engine, here, MARCH, null);
    }

    private ReadingUse only() {
        return (ReadingUse) mark().reason();
    }

    private Mark mark() {
        List<Mark> marks = new Marks(LifeLedger.of(story.facts(), asOf("2026-06-30")))
                .ofEngine(engine).stream()
                        .filter(mark -> mark.reason() instanceof ReadingUse)
                        .toList();
        assertThat(marks).hasSize(1);
        return marks.get(0);
    }

    private Id<ReadingLimit> leakDown(@Nullable Long atMost, @Nullable Long change, @Nullable RunningTime every) {
        return story.add(new ReadingLimit(
                "leak-down",
                ReadingKind.LEAK_DOWN,
                design,
                null,
                null,
                null,
                atMost,
                change,
                null,
                null,
                every,
                LimitRank.OWN,
                "",
                FIRST,
                null));
    }

    private Id<ReadingLimit> springForce(int fall) {
        return story.add(new ReadingLimit(
                "spring force",
                ReadingKind.SPRING_FORCE,
                null,
                PartKind.VALVE_SPRINGS,
                null,
                null,
                null,
                null,
                fall,
                null,
                null,
                LimitRank.OWN,
                "",
                FIRST,
                null));
    }

    private void leaks(String cylinder, long value, String when) {
        story.add(new Reading(
                ReadingKind.LEAK_DOWN,
                at(when),
                engine,
                null,
                cylinder,
                value,
                null,
                "",
                Warmth.HOT,
                false,
                "M1",
                "",
                null));
    }

    private void force(String place, long newton, String when, boolean baseline) {
        story.add(new Reading(
                ReadingKind.SPRING_FORCE,
                at(when),
                null,
                spring,
                place,
                newton * NEWTON,
                null,
                "",
                Warmth.COLD,
                baseline,
                "M1",
                "",
                null));
    }

    @Test
    void nothing_read_is_not_known_never_within() {
        leakDown(10 * PERCENT, null, null);

        assertThat(only().state()).isEqualTo(MarkState.NOT_KNOWN);
        assertThat(only().worst()).isNull();
    }

    @Test
    void the_worst_cylinder_of_the_last_round_stands_for_the_engine() {
        leakDown(10 * PERCENT, null, null);
        leaks("2", 14 * PERCENT, "2026-05-03T13:00Z");
        leaks("1", 4 * PERCENT, "2026-05-03T13:00Z");
        assertThat(only().broken()).isEqualTo(Broken.AT_MOST);
        assertThat(only().worst().fact().place()).isEqualTo("2");

        leaks("2", 10 * PERCENT, "2026-05-20T13:00Z");
        leaks("1", 3 * PERCENT, "2026-05-20T13:00Z");
        assertThat(only().state()).as("exactly the limit is inside").isEqualTo(MarkState.WITHIN);
        assertThat(only().worst().fact().place()).isEqualTo("2");
    }

    @Test
    void a_reading_grows_old_by_running_and_its_oldest_cylinder_counts() {
        leakDown(10 * PERCENT, null, minutes(120));
        leaks("1", 3 * PERCENT, "2026-05-01T08:00Z");
        story.run(engine, null, at("2026-05-01T10:00Z"), 60);
        leaks("2", 3 * PERCENT, "2026-05-01T12:00Z");
        story.run(engine, null, at("2026-05-02T10:00Z"), 59);
        assertThat(only().state()).isEqualTo(MarkState.WITHIN);

        story.run(engine, null, at("2026-05-03T10:00Z"), 1);

        assertThat(only().since().total()).isEqualTo(minutes(120).millis());
        assertThat(only().state()).isEqualTo(MarkState.NOT_KNOWN);
    }

    @Test
    void a_change_either_way_counts_against_the_baseline() {
        leakDown(null, 3 * PERCENT, null);
        leaks("1", 3 * PERCENT, "2026-02-17T08:00Z");
        leaks("1", 6 * PERCENT, "2026-05-01T08:00Z");
        assertThat(only().broken()).isEqualTo(Broken.NONE);

        leaks("1", 6 * PERCENT + 1, "2026-05-02T08:00Z");
        assertThat(only().broken()).isEqualTo(Broken.CHANGE);
        assertThat(only().baseline().fact().value()).isEqualTo(3 * PERCENT);
    }

    /** 291 N new: 8 % of it are 23.28 N, so that 268 N (-7.9 %) is inside and 267 N (-8.2 %) is not. */
    @Test
    void a_spring_is_held_against_its_own_new_force() {
        springForce(800);
        force("exhaust 3B", 291, "2026-02-17T08:00Z", false);
        force("exhaust 3B", 268, "2026-06-14T08:00Z", false);
        assertThat(only().state()).isEqualTo(MarkState.WITHIN);

        force("exhaust 3B", 267, "2026-06-20T08:00Z", false);
        force("inlet 1A", 285, "2026-06-20T08:00Z", false);
        assertThat(only().broken()).isEqualTo(Broken.FALL);
        assertThat(only().worst().fact().place()).isEqualTo("exhaust 3B");

        force("exhaust 3B", 267, "2026-06-21T08:00Z", true);
        assertThat(only().broken()).as("a new baseline").isEqualTo(Broken.NONE);
    }

    @Test
    void going_on_past_a_limit_of_readings_is_signed_up_to_a_running_time() {
        Id<ReadingLimit> limit = springForce(800);
        force("exhaust 3B", 291, "2026-02-17T08:00Z", false);
        force("exhaust 3B", 266, "2026-06-14T08:00Z", false);
        story.add(new RunOn(
                null,
                limit,
                spring,
                null,
                null,
                minutes(100).millis(),
                at("2026-06-15T08:00Z"),
                "OW",
                "",
                "",
                "no spare"));
        story.run(engine, null, at("2026-06-16T10:00Z"), 99);
        assertThat(mark().state()).isEqualTo(MarkState.RUN_ON);

        story.run(engine, null, at("2026-06-17T10:00Z"), 1);
        assertThat(mark().state()).as("used up").isEqualTo(MarkState.OVER);
    }

    @Test
    void a_grade_worse_than_allowed_is_over() {
        story.add(new ReadingLimit(
                "filter",
                ReadingKind.FILTER,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                Grade.FEW_SPECKS,
                null,
                LimitRank.OWN,
                "",
                FIRST,
                null));
        story.add(new Reading(
                ReadingKind.FILTER,
                MARCH,
                engine,
                null,
                "",
                null,
                Grade.FEW_SPECKS,
                "",
                Warmth.COLD,
                false,
                "",
                "",
                null));
        assertThat(mark().state()).isEqualTo(MarkState.WITHIN);

        story.add(new Reading(
                ReadingKind.FILTER,
                at("2026-04-14T08:00Z"),
                engine,
                null,
                "",
                null,
                Grade.BEARING_COLOUR,
                "",
                Warmth.COLD,
                false,
                "",
                "",
                null));
        assertThat(mark().state()).isEqualTo(MarkState.OVER);
    }

    @Test
    void readings_of_another_set_say_nothing_of_this_one() {
        springForce(800);
        Id<Part> old = story.part("S-0", springs);
        story.add(new Reading(
                ReadingKind.SPRING_FORCE,
                MARCH,
                null,
                old,
                "inlet 1A",
                200 * NEWTON,
                null,
                "",
                Warmth.COLD,
                false,
                "",
                "",
                null));

        assertThat(mark().state()).isEqualTo(MarkState.NOT_KNOWN);
    }
}
