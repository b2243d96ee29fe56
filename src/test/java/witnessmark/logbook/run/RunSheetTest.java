package witnessmark.logbook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.MissedHow;
import witnessmark.domain.MissedRun;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.Standing;
import witnessmark.domain.StartKnown;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.typed.DayOrder;

/** The use case behind the sheet, on the sample season. */
class RunSheetTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");

    private MemoryLogbook logbook = new MemoryLogbook(SampleBook.facts());
    private Desk book = new Desk(logbook, new SampleBook.Day(SATURDAY), "TE");
    private RunSheet sheet = new RunSheet(book, SampleBook.ids(), SampleBook.UNITS);

    private void with(Facts facts) {
        logbook = new MemoryLogbook(facts);
        book = new Desk(logbook, new SampleBook.Day(SATURDAY), "TE");
        sheet = new RunSheet(book, SampleBook.ids(), SampleBook.UNITS);
    }

    private Facts facts() {
        return book.view().facts();
    }

    private Id<Car> car(String name) {
        return facts().of(Car.class).named(name).orElseThrow().id();
    }

    private Id<Engine> engine(String number) {
        return facts().of(Engine.class).named(number).orElseThrow().id();
    }

    private Map<RunField, String> sheetOf(String car) {
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(car(car)));
        typed.put(RunField.RUNNING, "28:20");
        return typed;
    }

    @Test
    void a_saved_run_says_what_the_sheet_said() {
        Map<RunField, String> typed = sheetOf("41");
        typed.put(RunField.LAPS, "15");
        typed.put(RunField.WATER, "205F");
        typed.put(RunField.OIL_ADDED, "0,2");
        typed.put(RunField.DISTANCE, "41.3");
        typed.put(RunField.TRACK, "20");
        typed.put(RunField.REMARKS, "  Plugs clean. ");

        Run run = saved(typed);

        assertThat(run.car()).isEqualTo(car("41"));
        assertThat(run.engine()).isEqualTo(engine("K03"));
        assertThat(run.kind()).isEqualTo(RunKind.PRACTICE);
        assertThat(run.name()).isEqualTo("Practice 1");
        assertThat(run.start().wallClock()).hasToString("2026-07-25T09:00");
        assertThat(run.startKnown()).isEqualTo(StartKnown.TIMETABLE);
        assertThat(run.running()).isEqualTo(new RunningTime(1_700_000));
        // 205 °F is (205 - 32) * 5 / 9 = 96.111 °C: definition of the Fahrenheit scale
        assertThat(run.waterHighest()).isEqualTo(new Temperature(369_261));
        assertThat(run.oilAdded().text()).isEqualTo("0.2");
        assertThat(run.distance().metres()).isEqualTo(41_300);
        assertThat(run.raceStarts()).isZero();
        assertThat(run.overRevs()).isNull();
        assertThat(run.remarks()).isEqualTo("Plugs clean.");
        assertThat(run.asTyped().lines())
                .containsExactly(
                        "running=28:20", "laps=15", "water=205F", "oil_added=0,2", "track=20", "distance=41.3");
    }

    private Run saved(Map<RunField, String> typed) {
        var written = sheet.save(typed, "run").orThrow();
        return written.facts()
                .of(Run.class)
                .get(new Id<>(written.amendments().get(0).record()));
    }

    /** After each save the next run of the day's timetable comes up, and after the last none: not one of another day. */
    @Test
    void the_timetable_is_gone_through_run_by_run() {
        onSunday();

        assertThat(List.of(saved(sheetOf("41")).name(), saved(sheetOf("41")).name()))
                .containsExactly("Race 1", "Race 2");

        Id<Car> car = car("41");
        assertThat(sheet.fresh(car))
                .containsEntry(RunField.PLANNED, "kind:other")
                .containsEntry(RunField.DATE, "Sun 26 Jul 2026");
        assertThat(planned(sheet.fresh(car))).isEqualTo(Note.Kind.DAY_DONE);

        for (String left : List.of("Practice 1", "Practice 2", "Qualifying")) {
            Run late = saved(picked(left));
            assertThat(late.name()).isEqualTo(left);
            assertThat(late.start().day()).isEqualTo(SATURDAY);
        }
        assertThat(planned(sheet.fresh(car))).isEqualTo(Note.Kind.TIMETABLE_DONE);
    }

    private void onSunday() {
        book = new Desk(logbook, new SampleBook.Day(SATURDAY.plusDays(1)), "TE");
        sheet = new RunSheet(book, SampleBook.ids(), SampleBook.UNITS);
    }

    private Note.Kind planned(Map<RunField, String> typed) {
        return sheet.read(typed).of(RunField.PLANNED).note().kind();
    }

    /** The sheet of car 41 on which somebody picked a run of the timetable. */
    private Map<RunField, String> picked(String name) {
        Map<RunField, String> typed = sheetOf("41");
        String key = sheet.choices(RunField.PLANNED, typed).stream()
                .filter(choice -> choice.facts().get(0) instanceof PlannedRun planned
                        && planned.name().equals(name))
                .findFirst()
                .orElseThrow()
                .key();
        typed.put(RunField.PLANNED, key);
        typed.putAll(sheet.follows(RunField.PLANNED, typed));
        return typed;
    }

    /** A run of Saturday logged on Sunday has Saturday's date once it is picked. */
    @Test
    void a_run_logged_a_day_late_has_its_own_day() {
        onSunday();

        Run late = saved(picked("Practice 1"));

        assertThat(late.start().wallClock()).hasToString("2026-07-25T09:00");
    }

    /** As everywhere else: a missed start that names no run is the whole event. */
    @Test
    void of_an_event_a_car_missed_as_a_whole_no_run_is_proposed() {
        Entry<Event> event = facts().of(Event.class)
                .inForce()
                .filter(each -> !SATURDAY.isBefore(each.fact().firstDay())
                        && !SATURDAY.isAfter(each.fact().lastDay()))
                .findFirst()
                .orElseThrow();
        MissedRun missed = new MissedRun(
                event.id(),
                car("41"),
                null,
                null,
                Moment.of(SATURDAY.atTime(8, 0), book.view().zone()),
                MissedHow.WITHDRAWN,
                "");
        book.write(
                        "missed",
                        List.of(new Entry<>(SampleBook.ids().<MissedRun>next(), missed, Standing.IN_FORCE, null, 1)))
                .orThrow();

        assertThat(sheet.fresh(car("41"))).containsEntry(RunField.PLANNED, "kind:other");
        assertThat(planned(sheet.fresh(car("41")))).isEqualTo(Note.Kind.TIMETABLE_DONE);
        assertThat(sheet.fresh(car("57")).get(RunField.PLANNED)).startsWith("planned:");
    }

    @Test
    void the_same_planned_run_cannot_be_logged_twice_for_one_car() {
        Map<RunField, String> typed = sheetOf("41");
        saved(typed);
        typed.put(RunField.OUT_AT, "12:00");

        RunReading reading = sheet.read(typed);

        assertThat(kinds(reading)).contains(ProblemKind.PLANNED_RUN_TAKEN);
        assertThat(sheet.save(typed, "again").didWork()).isFalse();
        assertThat(sheet.choices(RunField.PLANNED, typed))
                .as("what is picked stays to be seen")
                .anyMatch(choice -> choice.key().equals(typed.get(RunField.PLANNED)));
    }

    @Test
    void one_run_logged_by_two_people_counts_once_and_is_marked() {
        Map<RunField, String> typed = sheetOf("41");
        Run first = saved(typed);
        Map<RunField, String> again = new EnumMap<>(typed);
        again.put(RunField.LAPS, "14");

        RunReading reading = sheet.read(again);
        assertThat(reading.problems()).extracting(Problem::kind).containsExactly(ProblemKind.PERHAPS_SAME_RUN);
        assertThat(reading.stops()).isFalse();

        Run second = saved(again);
        assertThat(second.perhapsSame()).isNotNull();
        assertThat(facts().of(Run.class).get(second.perhapsSame())).isEqualTo(first);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "9", "27"})
    void a_run_that_lies_in_another_is_stopped(String minutes) {
        saved(sheetOf("41"));
        Map<RunField, String> typed = sheetOf("41");
        typed.put(RunField.OUT_AT, "09:01");
        typed.put(RunField.RUNNING, minutes);

        assertThat(kinds(sheet.read(typed))).contains(ProblemKind.RUNS_OVERLAP);
        assertThat(sheet.save(typed, "inside").didWork()).isFalse();
    }

    @Test
    void a_car_without_an_engine_is_said_so() {
        Map<RunField, String> typed = sheetOf("41");
        typed.put(RunField.DATE, "1 Jan 2026");

        assertThat(sheet.read(typed).of(RunField.CAR).problem().kind()).isEqualTo(ProblemKind.NO_ENGINE_IN_CAR);
        assertThat(sheet.read(typed).stopped()).containsExactly(RunField.CAR);
    }

    @Test
    void an_engine_alone_runs_on_the_dyno() {
        Map<RunField, String> typed = sheetOf("41");
        typed.put(RunField.CAR, Keys.engine(engine("K05")));
        typed.put(RunField.EVENT, "");
        typed.put(RunField.PLANNED, "kind:dyno");
        typed.put(RunField.OUT_AT, "");

        Run run = saved(typed);

        assertThat(run.car()).isNull();
        assertThat(run.engine()).isEqualTo(engine("K05"));
        assertThat(run.kind()).isEqualTo(RunKind.DYNO);
        assertThat(run.startKnown()).isEqualTo(StartKnown.ESTIMATE);
    }

    /** K06 in car 41 from 18:00: who takes the hours of a run without a time out only the crew can say. */
    @ParameterizedTest(name = "{0}: engine {1}, out {2}")
    @CsvSource({"before, K03, 17:30:40", "after, K06, 18:01", "BEFORE, K03, 17:30:40"})
    void on_a_day_the_engine_was_changed_somebody_says_before_or_after(String said, String takes, LocalTime out) {
        swapAt(Moment.of(SATURDAY.atTime(18, 0), SampleBook.LONDON));
        Map<RunField, String> typed = sheetOf("41");
        typed.put(RunField.EVENT, "");
        typed.put(RunField.PLANNED, "kind:test");
        typed.put(RunField.OUT_AT, "");
        assertThat(sheet.read(typed).of(RunField.OUT_AT).problem().kind())
                .isEqualTo(ProblemKind.BEFORE_OR_AFTER_CHANGE);

        typed.put(RunField.OUT_AT, said);
        Run run = saved(typed);

        assertThat(run.engine()).isEqualTo(engine(takes));
        assertThat(run.start().wallClock().toLocalTime()).isEqualTo(out);
        assertThat(run.startKnown()).isEqualTo(StartKnown.ESTIMATE);
    }

    /** What stands in the field for the car names the engine that was in it when the run went out, not by the evening. */
    @ParameterizedTest(name = "out at {0}: {1}")
    @CsvSource({"12:00, K03", "18:30, K06"})
    void a_car_is_named_with_the_engine_that_was_in_it_then(String out, String number) {
        swapAt(Moment.of(SATURDAY.atTime(18, 0), SampleBook.LONDON));
        Map<RunField, String> typed = sheetOf("41");
        typed.put(RunField.EVENT, "");
        typed.put(RunField.PLANNED, "kind:test");
        typed.put(RunField.OUT_AT, out);
        assertThat(sheet.choices(RunField.CAR, typed).stream()
                        .filter(choice -> choice.key().equals(Keys.car(car("41"))))
                        .flatMap(choice -> choice.facts().stream())
                        .filter(Engine.class::isInstance)
                        .map(engine -> ((Engine) engine).number()))
                .containsExactly(number);
    }

    private void swapAt(Moment at) {
        Facts facts = SampleBook.facts();
        Id<Engine> k03 = engine("K03");
        Id<Engine> k06 = engine("K06");
        List<Entry<EngineInCar>> stays = facts.of(EngineInCar.class)
                .where(stay -> stay.to() == null
                        && (stay.engine().equals(k03) || stay.engine().equals(k06)));
        List<Entry<?>> changed = new java.util.ArrayList<>();
        for (Entry<EngineInCar> stay : stays) {
            EngineInCar in = stay.fact();
            changed.add(new Entry<>(
                    stay.id(), new EngineInCar(in.engine(), in.car(), in.from(), at, ""), Standing.IN_FORCE, null, 2));
        }
        changed.add(new Entry<>(
                SampleBook.ids().<EngineInCar>next(),
                new EngineInCar(k06, car("41"), at, null, ""),
                Standing.IN_FORCE,
                null,
                1));
        with(facts.with(changed));
    }

    @Test
    void what_the_logbook_refuses_is_handed_on() {
        logbook.refuse(Problem.of(ProblemKind.DISK_FULL, logbook.path()));

        assertThat(sheet.save(sheetOf("41"), "run").problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.DISK_FULL);
    }

    @Test
    void the_other_car_comes_after_and_round_again() {
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(null));
        int cars = facts().of(Car.class).where(c -> true).size();
        Id<Car> first = Keys.car(typed.get(RunField.CAR)).orElseThrow();
        Id<Car> at = first;
        for (int i = 0; i < cars; i++) {
            typed.put(RunField.CAR, Keys.car(at));
            at = sheet.nextCar(typed);
        }
        assertThat(at).isEqualTo(first);
    }

    /** A date typed, shown and stepped comes to the same day whatever its form. */
    @ParameterizedTest
    @ValueSource(strings = {"25/7", "25 Jul", "2026-07-25", "25.7.26", "today", "sat"})
    void a_date_may_be_typed_in_many_ways(String text) {
        Map<RunField, String> typed = sheetOf("41");
        typed.put(RunField.DATE, text);

        assertThat(sheet.read(typed).run().fact().start().day()).isEqualTo(SATURDAY);
        assertThat(sheet.stepped(RunField.DATE, typed, -7)).isEqualTo("Sat 18 Jul 2026");
    }

    @Test
    void stepping_a_date_up_and_down_again_changes_nothing() {
        LocalDate day = LocalDate.parse("2025-12-28");
        for (int i = 0; i < 400; i++) {
            String text = RunDefaults.DAY.format(day.plusDays(i));
            String up = Steps.day(text, SATURDAY.plusYears(2), DayOrder.DAY_FIRST, 1);
            assertThat(Steps.day(up, SATURDAY.plusYears(2), DayOrder.DAY_FIRST, -1))
                    .isEqualTo(text);
        }
    }

    @Test
    void an_event_nobody_has_planned_runs_for_says_so() {
        Event event = new Event(
                "Open day", "Dunmarrow", SATURDAY.minusDays(3), SATURDAY.minusDays(3), SampleBook.LONDON, null, "");
        Id<Event> id = SampleBook.ids().next();
        with(SampleBook.facts().with(List.of(new Entry<>(id, event, Standing.IN_FORCE, null, 1))));
        Map<RunField, String> typed = sheetOf("41");
        typed.put(RunField.EVENT, id.text());

        assertThat(sheet.read(typed).of(RunField.PLANNED).note().kind()).isEqualTo(Note.Kind.NO_TIMETABLE);
        assertThat(sheet.follows(RunField.EVENT, typed)).containsEntry(RunField.DATE, "Wed 22 Jul 2026");
        assertThat(facts().of(PlannedRun.class).where(run -> run.event().equals(id)))
                .isEmpty();
    }

    private static List<ProblemKind> kinds(RunReading reading) {
        return reading.problems().stream().map(Problem::kind).toList();
    }
}
