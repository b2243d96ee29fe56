package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;
import static witnessmark.ledger.Story.minutes;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Car;
import witnessmark.domain.Clearance;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Grade;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.LimitRank;
import witnessmark.domain.OverRev;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Run;
import witnessmark.domain.SpeedSource;
import witnessmark.domain.Standing;
import witnessmark.domain.Trigger;
import witnessmark.domain.TriggerKind;
import witnessmark.domain.Warmth;
import witnessmark.ledger.result.HeldBy;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;

/** What holds engines and parts, from evidence that comes at once or later, until somebody signs. */
class HoldsTest {
    private static final Moment MARCH = at("2026-03-01T08:00Z");
    private static final Moment RUN = at("2026-05-03T11:00Z");
    private static final Moment MOVED = at("2026-05-10T08:00Z");
    private static final LocalDate FIRST = LocalDate.parse("2026-01-01");

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);
    private final Id<Engine> other = story.engine("A2", design);
    private final Id<PartDesign> forged = story.partDesign("forged rods", PartKind.RODS, false);
    private final Id<PartDesign> springs = story.partDesign("single springs", PartKind.VALVE_SPRINGS, false);
    private final Id<Position> rodsHere = story.position(design, PartKind.RODS, "rods", 1, true);
    private final Id<Position> springsHere = story.position(design, PartKind.VALVE_SPRINGS, "springs", 2, true);
    private final Id<Part> rods = story.part("R-1", forged);
    private final Id<Part> later = story.part("R-2", forged);
    private final Id<Part> spring = story.part("S-1", springs);

    HoldsTest() {
        story.fit(rods, engine, rodsHere, MARCH, MOVED);
        story.fit(later, engine, rodsHere, MOVED, null);
        story.fit(rods, other, rodsHere, MOVED, null);
        story.fit(spring, engine, springsHere, MARCH, null);
    }

    private Holds holds() {
        return holds("2026-06-30");
    }

    private Holds holds(String day) {
        return new Holds(LifeLedger.of(story.facts(), asOf(day)));
    }

    private List<Id<Part>> heldParts() {
        return holds().open().stream().<Id<Part>>map(HeldBy::part).toList();
    }

    private Id<Trigger> overSpeed(Set<PartKind> holds, @Nullable RunningTime lasting) {
        return story.add(new Trigger(
                "over-rev",
                TriggerKind.SPEED_ABOVE,
                design,
                8500L,
                lasting,
                null,
                null,
                holds,
                "crack test rods",
                LimitRank.BUILDER,
                "",
                FIRST,
                null));
    }

    private Id<Run> run(@Nullable EngineSpeed highest) {
        return story.add(
                new RunDraft(engine, null, RUN, minutes(29)).highest(highest).written());
    }

    private void clear(@Nullable Id<Run> run, @Nullable Id<Trigger> rule, @Nullable Id<Part> part, String when) {
        story.add(new Clearance(null, run, null, rule, part, at(when), "crack tested", "no indication", "CC", ""));
    }

    @Test
    void an_over_rev_holds_the_parts_that_were_there_wherever_they_are_now() {
        overSpeed(EnumSet.of(PartKind.RODS, PartKind.VALVE_SPRINGS), null);
        run(new EngineSpeed(9340));

        assertThat(heldParts()).containsExactly(rods, spring);
    }

    /** Debris from an engine lies in the cooler of the car it was in, whatever car the engine is in now. */
    @Test
    void what_the_rule_names_of_the_car_is_held_too_and_stays_with_that_car() {
        Id<Car> car = story.car("57");
        Id<Car> next = story.car("41");
        Id<Part> cooler = story.part("OC-57", story.partDesign("cooler", PartKind.OIL_COOLER, false));
        Id<Part> elsewhere = story.part("OC-41", story.partDesign("cooler 2", PartKind.OIL_COOLER, false));
        Id<Position> here = story.position(design, PartKind.OIL_COOLER, "oil cooler", 3, false);
        story.put(engine, car, MARCH, MOVED);
        story.put(engine, next, MOVED, null);
        story.fitToCar(cooler, car, here, MARCH, null);
        story.fitToCar(elsewhere, next, here, MARCH, null);
        overSpeed(EnumSet.of(PartKind.RODS, PartKind.OIL_COOLER), null);

        run(new EngineSpeed(9340));

        assertThat(heldParts()).containsExactly(rods, cooler);
    }

    @Test
    void exactly_the_figure_does_not_raise_it_and_a_speed_not_read_says_nothing() {
        overSpeed(EnumSet.of(PartKind.RODS), null);
        run(new EngineSpeed(8500));
        run(null);

        assertThat(heldParts()).isEmpty();
    }

    @Test
    void a_rule_that_names_no_kind_holds_the_engine_with_all_that_is_in_it() {
        overSpeed(EnumSet.noneOf(PartKind.class), null);
        run(new EngineSpeed(9340));

        assertThat(holds().on(engine, true)).hasSize(1);
        assertThat(holds().on(other, true)).isEmpty();
    }

    @Test
    void evidence_that_comes_later_raises_it_too() {
        overSpeed(EnumSet.of(PartKind.RODS), null);
        Id<Run> run = run(null);
        assertThat(heldParts()).isEmpty();

        story.add(new OverRev(run, new EngineSpeed(9340), new RunningTime(420), "4 to 2", SpeedSource.LOGGER, ""));

        assertThat(heldParts()).containsExactly(rods);
        assertThat(holds().open()).extracting(HeldBy::figure).containsExactly(9340L);
    }

    @Test
    void a_peak_too_short_for_the_rule_explains_the_highest_speed_of_its_run() {
        overSpeed(EnumSet.of(PartKind.RODS), new RunningTime(100));
        Id<Run> run = run(new EngineSpeed(8700));
        assertThat(heldParts()).as("nobody knows how long").containsExactly(rods);

        Id<OverRev> peak =
                story.add(new OverRev(run, new EngineSpeed(8700), new RunningTime(99), "", SpeedSource.LOGGER, ""));
        assertThat(heldParts()).as("99 ms of at least 100").isEmpty();

        story.rewrite(
                peak,
                new OverRev(run, new EngineSpeed(8700), new RunningTime(100), "", SpeedSource.LOGGER, ""),
                Standing.IN_FORCE);
        assertThat(heldParts()).as("100 ms").containsExactly(rods);
    }

    @Test
    void it_holds_until_somebody_signs_and_stays_in_the_list_for_ever() {
        Id<Trigger> rule = overSpeed(EnumSet.of(PartKind.RODS, PartKind.VALVE_SPRINGS), null);
        Id<Run> run = run(new EngineSpeed(9340));
        clear(run, rule, rods, "2026-05-12T18:00Z");
        assertThat(heldParts()).containsExactly(spring);

        clear(run, rule, null, "2026-05-13T18:00Z");

        assertThat(heldParts()).isEmpty();
        assertThat(holds().all()).hasSize(2).allMatch(each -> each.clearance() != null);
        assertThat(holds("2026-05-11").open()).as("the day before").hasSize(2);
    }

    @Test
    void signing_one_rule_clear_leaves_what_another_holds() {
        Id<Trigger> rule = overSpeed(EnumSet.of(PartKind.RODS), null);
        story.add(new Trigger(
                "low oil pressure",
                TriggerKind.OIL_PRESSURE_BELOW,
                null,
                250_000L,
                null,
                null,
                null,
                EnumSet.of(PartKind.RODS),
                "pull a cap",
                LimitRank.OWN,
                "",
                FIRST,
                null));
        Id<Run> run = story.add(new RunDraft(engine, null, RUN, minutes(29))
                .highest(new EngineSpeed(9340))
                .oilPressure(new Pressure(190_000))
                .written());
        clear(run, rule, null, "2026-05-12T18:00Z");

        assertThat(holds().open()).hasSize(1);
    }

    @Test
    void a_rule_counts_for_what_happened_while_it_stood() {
        story.add(new Trigger(
                "over-rev",
                TriggerKind.SPEED_ABOVE,
                design,
                8500L,
                null,
                null,
                null,
                EnumSet.of(PartKind.RODS),
                "",
                LimitRank.OWN,
                "",
                LocalDate.parse("2026-05-04"),
                null));
        run(new EngineSpeed(9340));

        assertThat(heldParts()).isEmpty();
    }

    @Test
    void a_rule_for_another_design_does_not_hold_here() {
        story.add(new Trigger(
                "over-rev",
                TriggerKind.SPEED_ABOVE,
                story.design("six"),
                8500L,
                null,
                null,
                null,
                EnumSet.of(PartKind.RODS),
                "",
                LimitRank.OWN,
                "",
                FIRST,
                null));
        run(new EngineSpeed(9340));

        assertThat(heldParts()).isEmpty();
    }

    @Test
    void a_member_split_off_afterwards_is_held_with_its_set_and_one_split_off_before_is_not() {
        overSpeed(EnumSet.of(PartKind.RODS), null);
        run(new EngineSpeed(9340));
        story.split("R-1/1", forged, rods, at("2026-04-01T08:00Z"));
        Id<Part> after = story.split("R-1/3", forged, rods, MOVED);

        assertThat(heldParts()).containsExactly(rods, after);
    }

    @Test
    void a_run_that_is_perhaps_another_again_or_struck_out_holds_nothing() {
        overSpeed(EnumSet.of(PartKind.RODS), null);
        Id<Run> once = run(new EngineSpeed(8000));
        story.add(new RunDraft(engine, null, RUN, minutes(29))
                .highest(new EngineSpeed(9340))
                .perhapsSame(once)
                .written());
        story.add(
                new RunDraft(engine, null, RUN, minutes(29))
                        .highest(new EngineSpeed(9340))
                        .written(),
                Standing.STRUCK_OUT);

        assertThat(heldParts()).isEmpty();
    }

    @Test
    void what_a_person_holds_is_held_until_signed() {
        Id<Hold> hold = story.add(new Hold(engine, null, "", RUN, "water in cylinder 2", "look at the rod", "CC"));
        assertThat(holds().on(engine, true)).hasSize(1);
        assertThat(holds("2026-05-02").open()).isEmpty();

        story.add(new Clearance(hold, null, null, null, null, MOVED, "rod measured", "straight", "CC", ""));

        assertThat(holds().open()).isEmpty();
    }

    private void filter(Grade grade, String when) {
        story.add(new Reading(
                ReadingKind.FILTER, at(when), engine, null, "", null, grade, "", Warmth.COLD, false, "M1", "", null));
    }

    private void filterRule(TriggerKind kind, @Nullable Grade grade) {
        story.add(new Trigger(
                "debris",
                kind,
                null,
                null,
                null,
                ReadingKind.FILTER,
                grade,
                EnumSet.noneOf(PartKind.class),
                "",
                LimitRank.OWN,
                "",
                FIRST,
                null));
    }

    @Test
    void a_grade_as_bad_as_the_rules_or_worse_holds_the_engine() {
        filterRule(TriggerKind.GRADED, Grade.FLAKES);
        filter(Grade.FEW_SPECKS, "2026-04-01T10:00Z");
        assertThat(holds().open()).isEmpty();

        filter(Grade.FLAKES, "2026-04-02T10:00Z");
        filter(Grade.BEARING_COLOUR, "2026-04-03T10:00Z");

        assertThat(holds().on(engine, true)).hasSize(2);
    }

    @Test
    void a_grade_that_gets_worse_twice_running_holds_at_the_third() {
        filterRule(TriggerKind.WORSE_TWICE, null);
        filter(Grade.RUN_IN_GREY, "2026-02-18T10:00Z");
        filter(Grade.FEW_SPECKS, "2026-03-24T10:00Z");
        assertThat(holds().open()).isEmpty();
        filter(Grade.FLAKES, "2026-04-14T10:00Z");
        assertThat(holds().on(engine, true)).hasSize(1);

        filter(Grade.CLEAN, "2026-05-05T10:00Z");
        filter(Grade.FEW_SPECKS, "2026-05-26T10:00Z");
        assertThat(holds().on(engine, true)).as("worse once since").hasSize(1);
    }
}
