package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.ledger.Holds;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.SeeLives;
import witnessmark.logbook.Subject;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.DayOrder;

/** A team makes its own logbook by sheets alone, and then logs a run. Oracle: sums done by hand in the comments. */
class LogbookMadeByHandTest {
    private static final long HOUR = 3_600_000;

    @TempDir
    Path folder;

    private OwnLogbook own;

    @BeforeEach
    void begin() {
        own = new OwnLogbook(folder);
    }

    @AfterEach
    void end() {
        own.close();
    }

    @Test
    void car_engine_springs_event_and_limit_by_hand_and_then_a_run_come_to_the_right_lives() {
        addCarAndEngineWithAboutNineHours();
        fitSprings("VS-1", "9 Mar");
        addEventAndLimit();

        logRun("30");

        // Engine: about 9 h (8 to 10.5) and half an hour. Springs: new, so half an hour, with 11.5 h left of 12.
        Life engine = life("H1");
        assertThat(engine.total()).isEqualTo(9 * HOUR + HOUR / 2);
        assertThat(engine.lowest()).isEqualTo(8 * HOUR + HOUR / 2);
        assertThat(engine.highest()).isEqualTo(11 * HOUR);
        assertThat(life("VS-1").total()).isEqualTo(HOUR / 2);
        assertThat(new witnessmark.ledger.LimitUses(own.desk.view().ledger()).all())
                .singleElement()
                .satisfies(use -> {
                    assertThat(use.state()).isEqualTo(MarkState.WITHIN);
                    assertThat(use.used().total()).isEqualTo(HOUR / 2);
                });
        assertThat(own.desk.logbook().verify()).isEmpty();
    }

    /** Whoever says above which speed an engine is to be looked at need not say it again as a trigger. */
    @ParameterizedTest(name = "highest {0}: held {1}")
    @CsvSource({"8500, false", "8501, true", "9340, true"})
    void an_engine_that_turned_faster_than_its_over_rev_figure_is_held(String highest, boolean isHeld) {
        addCarAndEngineWithAboutNineHours();
        RunSheet sheet = new RunSheet(own.desk, own.ids, FieldUnits.metric(DayOrder.DAY_FIRST));
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(
                own.desk.view().facts().of(Car.class).named("7").orElseThrow().id()));
        typed.put(RunField.RUNNING, "20");
        typed.put(RunField.HIGHEST, highest);

        sheet.save(typed, "run").orThrow();

        assertThat(new Holds(own.desk.view().ledger()).open())
                .hasSize(isHeld ? 1 : 0)
                .allSatisfy(by -> {
                    assertThat(by.part()).as("the engine as a whole").isNull();
                    assertThat(by.figure()).isEqualTo(Long.parseLong(highest));
                });
    }

    @ParameterizedTest(name = "hours typed as {0}")
    @ValueSource(strings = {"about 9", "About 9 h", "~9", "~ 9.0", "ca. 9 h", "roughly 9"})
    void hours_typed_as_about_so_much_are_kept_as_an_estimate_and_the_only_car_is_taken(String hours) {
        own.save(new AddCar(), "name", "7").orThrow();
        own.save(new AddEngine(), "number", "H1", "design_name", "Quarrow 2.0", "cylinders", "4", "hours", hours)
                .orThrow();

        Life engine = life("H1");
        assertThat(engine.known()).isZero();
        assertThat(engine.told()).isEqualTo(9 * HOUR);
        assertThat(engine.lowest()).isEqualTo(9 * HOUR);
        assertThat(engine.highest()).isEqualTo(9 * HOUR);
        assertThat(own.desk.view().facts().of(EngineInCar.class).where(stay -> true))
                .singleElement()
                .satisfies(stay -> assertThat(stay.fact().to()).isNull());
    }

    @Test
    void the_timetable_is_kept_line_by_line() {
        own.save(
                        new AddEvent(),
                        "name",
                        "Round 2",
                        "first_day",
                        "Sat 14 Mar",
                        "last_day",
                        "Sun 15 Mar",
                        "timetable",
                        "P1 Sat 09:00 25 min\n\nQ Sat 14:30\nRace 1 Sun 15:00 40 min")
                .orThrow();

        assertThat(own.desk.view().facts().of(PlannedRun.class).where(run -> true))
                .extracting(run -> run.fact().ordinal() + " "
                        + run.fact().kind().code() + " " + run.fact().name() + " "
                        + run.fact().day() + " " + run.fact().out() + " "
                        + (run.fact().expected() == null
                                ? ""
                                : run.fact().expected().minutes(0)))
                .containsExactly(
                        "1 practice Practice 1 2026-03-14 09:00 25",
                        "2 qualifying Qualifying 2026-03-14 14:30 ",
                        "3 race Race 1 2026-03-15 15:00 40");
    }

    @Test
    void a_part_fitted_where_one_is_takes_that_one_off_at_the_same_moment_and_undo_puts_it_back() {
        own.save(new AddCar(), "name", "7").orThrow();
        addEngine("H1");
        fitSprings("VS-1", "1 Mar");
        own.save(
                        new FitPart(),
                        "place",
                        "H1",
                        "position",
                        "valve springs",
                        "since",
                        "5 Mar",
                        "since_time",
                        "18:00",
                        "off_why",
                        "lost force",
                        "mark",
                        "VS-2",
                        "part_design",
                        "Marl spring set")
                .orThrow();

        assertThat(fitments()).containsExactly("VS-1 until 2026-03-05T18:00 lost force", "VS-2 until further notice ");
        own.desk.undo().orThrow();
        assertThat(fitments()).containsExactly("VS-1 until further notice ");
    }

    @Test
    void an_engine_put_in_a_car_takes_the_one_before_out_at_that_moment() {
        own.save(new AddCar(), "name", "7").orThrow();
        addEngine("H1");
        addEngine("H2");
        own.save(new PutEngine(), "engine", "H1", "car", "7", "since", "1 Mar").orThrow();
        own.save(new PutEngine(), "engine", "H2", "car", "7", "since", "4 Mar", "since_time", "12:00")
                .orThrow();

        Id<Car> car =
                own.desk.view().facts().of(Car.class).named("7").orElseThrow().id();
        assertThat(engineIn(car, "2026-03-04T11:59:00Z")).isEqualTo("H1");
        assertThat(engineIn(car, "2026-03-04T12:00:00Z")).isEqualTo("H2");
    }

    @Test
    void hours_since_rebuild_begin_when_a_build_of_the_bottom_end_is_closed() {
        own.save(new AddCar(), "name", "7").orThrow();
        addEngine("H1");
        own.save(new PutEngine(), "engine", "H1", "car", "7", "since", "1 Mar").orThrow();
        logRun("30");
        own.save(
                        new WriteBuild(),
                        "engine",
                        "H1",
                        "zones",
                        "head, bottom",
                        "opened",
                        "2 Mar",
                        "closed",
                        "10 Mar",
                        "signed_by",
                        "Ada")
                .orThrow();
        Id<Engine> engine = own.desk
                .view()
                .facts()
                .of(Engine.class)
                .named("H1")
                .orElseThrow()
                .id();
        assertThat(own.desk
                        .view()
                        .ledger()
                        .sinceRebuild(engine, java.util.EnumSet.of(witnessmark.domain.Zone.BOTTOM_END), Counter.RUNNING)
                        .total())
                .isZero();
        assertThat(life("H1").total()).isEqualTo(HOUR / 2);
    }

    @Test
    void hours_of_a_part_stated_for_a_day_after_runs_with_it_are_a_query_and_saved_all_the_same() {
        engineInCarSince("1 Mar");
        logRun("30");
        Map<SheetField, String> typed = own.filled(
                new FitPart(),
                "place",
                "H1",
                "position",
                "valve springs",
                "since",
                "1 Mar",
                "mark",
                "VS-1",
                "part_design_name",
                "Marl spring set",
                "hours_how",
                "known",
                "hours",
                "4",
                "hours_as_of",
                "10 Mar");
        assertThat(own.sheets.check(own.sheets.read(new FitPart(), typed)))
                .extracting(
                        found -> found.problem().kind() + " " + found.problem().stops())
                .containsOnly("PRIOR_LIFE_OVERLAPS_RUNS false");
        own.sheets.save(new FitPart(), typed, "by hand").orThrow();
        assertThat(life("VS-1").total()).isEqualTo(4 * HOUR);
    }

    @Test
    void hours_of_a_part_without_a_day_are_those_when_it_was_fitted_so_that_later_runs_are_added() {
        engineInCarSince("1 Mar");
        own.save(
                        new FitPart(),
                        "place",
                        "H1",
                        "position",
                        "valve springs",
                        "since",
                        "1 Mar",
                        "mark",
                        "VS-1",
                        "part_design_name",
                        "Marl spring set",
                        "hours_how",
                        "known",
                        "hours",
                        "4")
                .orThrow();
        logRun("30");
        assertThat(life("VS-1").total()).isEqualTo(4 * HOUR + HOUR / 2);
    }

    @Test
    void a_part_goes_in_after_what_ran_today_and_before_it_when_nothing_did() {
        engineInCarSince("1 Mar");
        SheetField since = OwnLogbook.field(new FitPart(), "since");
        assertThat(new FitPart().fresh(own.sheets.sight())).containsEntry(since, "2026-03-09");
        fitSprings("VS-1", "9 Mar");
        logRun("30");
        assertThat(new FitPart().fresh(own.sheets.sight())).containsEntry(since, "2026-03-10");
        own.save(new FitPart(), "place", "H1", "position", "valve springs", "mark", "VS-2", "part_design_name", "Other")
                .orThrow();
        assertThat(life("VS-1").total()).isEqualTo(HOUR / 2);
        assertThat(life("VS-2").total()).isZero();
    }

    @Test
    void a_position_added_to_a_design_takes_a_part_and_cannot_be_added_twice() {
        addEngine("H1");
        own.save(new AddPosition(), "position_of", "Quarrow H1", "part_kind", "damper")
                .orThrow();
        own.save(new FitPart(), "place", "H1", "position", "damper", "mark", "DA-1", "part_design_name", "Damper 180")
                .orThrow();
        assertThat(fitments()).containsExactly("DA-1 until further notice ");
        assertThat(own.save(new AddPosition(), "position_of", "Quarrow H1", "part_kind", "damper")
                        .didWork())
                .isFalse();
    }

    private void engineInCarSince(String day) {
        own.save(new AddCar(), "name", "7").orThrow();
        addEngine("H1");
        own.save(new PutEngine(), "engine", "H1", "car", "7", "since", day).orThrow();
    }

    @Test
    void a_car_taken_back_by_undo_can_be_added_again() {
        own.save(new AddCar(), "name", "7").orThrow();
        own.desk.undo().orThrow();
        own.save(new AddCar(), "name", "7").orThrow();
        assertThat(own.desk.view().facts().of(Car.class).where(car -> true)).hasSize(1);
    }

    @Test
    void a_part_taken_off_is_a_spare_with_its_life_and_can_be_fitted_again() {
        own.save(new AddCar(), "name", "7").orThrow();
        addEngine("H1");
        addEngine("H2");
        fitSprings("VS-1", "1 Mar");
        own.save(new PutEngine(), "engine", "H1", "car", "7", "since", "1 Mar").orThrow();
        logRun("30");
        own.save(new TakeOffPart(), "place", "H1", "fitted", "VS-1", "off_when", "10 Mar", "off_reason", "to H2")
                .orThrow();
        own.save(new FitPart(), "place", "H2", "position", "valve springs", "since", "10 Mar", "part", "VS-1")
                .orThrow();
        assertThat(fitments()).hasSize(2).last().asString().startsWith("VS-1 until further notice");
        assertThat(life("VS-1").total()).isEqualTo(HOUR / 2);
    }

    private void addCarAndEngineWithAboutNineHours() {
        own.save(new AddCar(), "name", "7").orThrow();
        own.save(
                        new AddEngine(),
                        "number",
                        "H1",
                        "design_name",
                        "Quarrow 2.0",
                        "cylinders",
                        "4",
                        "limiter",
                        "8200",
                        "over_rev",
                        "8500",
                        "hours_how",
                        "about",
                        "hours",
                        "9",
                        "hours_lowest",
                        "8",
                        "hours_highest",
                        "10,5",
                        "hours_as_of",
                        "9 Mar",
                        "car",
                        "7",
                        "since",
                        "9 Mar")
                .orThrow();
    }

    private void addEventAndLimit() {
        own.save(
                        new AddEvent(),
                        "name",
                        "Round 1",
                        "circuit",
                        "Thornacre",
                        "first_day",
                        "10 Mar",
                        "timetable",
                        "P1 09:00 25 min\nQ 11:30 20\nR1 15:00 40 min")
                .orThrow();
        own.save(
                        new SetLimit(),
                        "part_kind",
                        "valve springs",
                        "work_due",
                        "renew valve springs",
                        "figure",
                        "12",
                        "source",
                        "our sheet",
                        "limit_from",
                        "1 Mar")
                .orThrow();
    }

    private void addEngine(String number) {
        own.save(
                        new AddEngine(),
                        "number",
                        number,
                        "design_name",
                        "Quarrow " + number,
                        "design",
                        "new_design",
                        "cylinders",
                        "4",
                        "hours_how",
                        "part_new",
                        "car",
                        "")
                .orThrow();
    }

    private void fitSprings(String mark, String since) {
        own.save(
                        new FitPart(),
                        "place",
                        "H1",
                        "position",
                        "valve springs",
                        "since",
                        since,
                        "mark",
                        mark,
                        "part_design_name",
                        "Marl spring set",
                        "maker",
                        "Marl")
                .orThrow();
    }

    private void logRun(String running) {
        RunSheet sheet = new RunSheet(own.desk, own.ids, FieldUnits.metric(DayOrder.DAY_FIRST));
        Id<Car> car =
                own.desk.view().facts().of(Car.class).named("7").orElseThrow().id();
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(car));
        typed.put(RunField.RUNNING, running);
        sheet.save(typed, "run").orThrow();
    }

    private Life life(String name) {
        return SeeLives.of(
                own.desk.view(), Subject.named(own.desk.view().facts(), name).orElseThrow(), Counter.RUNNING);
    }

    private String engineIn(Id<Car> car, String at) {
        return own.desk
                .view()
                .ledger()
                .engineIn(car, Moment.of(java.time.Instant.parse(at), java.time.ZoneOffset.UTC))
                .map(in -> own.desk
                        .view()
                        .facts()
                        .of(Engine.class)
                        .get(in.fact().engine())
                        .number())
                .orElse("none");
    }

    private java.util.List<String> fitments() {
        return own.desk.view().facts().of(Fitment.class).where(f -> true).stream()
                .map(fitment -> own.sheets
                                .sight()
                                .name(
                                        witnessmark.domain.Part.class,
                                        fitment.fact().part())
                        + " until "
                        + (fitment.fact().to() == null
                                ? "further notice"
                                : fitment.fact().to().wallClock())
                        + " " + fitment.fact().why())
                .toList();
    }
}
