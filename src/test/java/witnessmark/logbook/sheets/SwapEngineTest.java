package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Run;
import witnessmark.domain.SentOut;
import witnessmark.domain.Standing;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunReading;
import witnessmark.logbook.run.RunSheet;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.DayOrder;

/**
 * An engine swapped on a Saturday night, by the sheet alone, and the runs logged before and afterwards. Oracle: hours
 * summed by hand in the comments, and stays that must neither overlap nor leave a gap.
 */
class SwapEngineTest extends ByHand {
    private final SwapEngine swap = new SwapEngine();

    @BeforeEach
    void aSpareEngine() {
        own.save(new AddEngine(), "number", "H2", "design", "Quarrow 2.0", "hours_how", "part_new")
                .orThrow();
    }

    @Test
    void a_swap_ends_one_stay_and_begins_the_other_in_one_change() {
        logRun("60", "8000", "09:00");
        swapAt("18:00").orThrow();

        assertThat(stay("H1").to()).isEqualTo(at(18, 0));
        assertThat(stay("H2").from()).isEqualTo(at(18, 0));
        assertThat(stay("H2").to()).isNull();
        assertThat(stay("H2").note()).isEqualTo("oil kept; cooler and lines cleaned");
        own.desk.undo().orThrow();
        assertThat(stay("H1").to()).isNull();
        assertThat(stays()).hasSize(1);
        assertThat(own.desk.logbook().verify()).isEmpty();
    }

    /** An hour in the morning on H1; half an hour told of late, before or after; the hours of the other stay as they were. */
    @ParameterizedTest(name = "{0}: H1 {1} min, H2 {2} min")
    @CsvSource({"before, 90, 0", "after, 60, 30"})
    void a_run_logged_after_the_swap_lands_on_the_engine_that_made_it(String said, int first, int second) {
        fitToCar("CL-1");
        logRun("60", "8000", "09:00");
        swapAt("18:00").orThrow();

        Map<RunField, String> typed = sheet("30");
        assertThat(asked(typed)).isEqualTo(ProblemKind.BEFORE_OR_AFTER_CHANGE);
        typed.put(RunField.OUT_AT, said);
        runs().save(typed, "run").orThrow();

        assertThat(minutes("H1")).isEqualTo(first);
        assertThat(minutes("H2")).isEqualTo(second);
        // What is fitted to the car was there in both.
        assertThat(own.desk.view().ledger().life(part("CL-1"), Counter.RUNNING).total() / 60_000)
                .isEqualTo(90);
        // The springs in H1 are charged what H1 ran.
        assertThat(own.desk.view().ledger().life(part("VS-1"), Counter.RUNNING).total() / 60_000)
                .isEqualTo(first);
    }

    @Test
    void it_is_asked_although_the_car_has_run_since() {
        logRun("60", "8000", "09:00");
        swapAt("12:00").orThrow();
        logRun("20", "8000", "15:00");
        assertThat(asked(sheet("30"))).isEqualTo(ProblemKind.BEFORE_OR_AFTER_CHANGE);
    }

    /** The only gaps that hold half an hour: 11:29 to 11:59 is taken from 11:40, and 12:01 to 12:31 from 12:10. */
    @ParameterizedTest(name = "{0}: out at {1}")
    @CsvSource({"before, 11:09", "after, 12:31"})
    void a_run_before_or_after_the_change_is_put_clear_of_the_others(String said, LocalTime out) {
        logRun("15", "8000", "11:40");
        swapAt("12:00").orThrow();
        logRun("20", "8000", "12:10");
        Map<RunField, String> typed = sheet("30");
        typed.put(RunField.OUT_AT, said);
        runs().save(typed, "run").orThrow();
        assertThat(last(Run.class).start().wallClock().toLocalTime()).isEqualTo(out);
    }

    @Test
    void a_swap_without_a_time_is_after_the_last_run_and_a_run_of_that_day_asks() {
        logRun("60", "8000", "09:00");
        swapAt("").orThrow();
        Map<RunField, String> typed = sheet("30");
        typed.put(RunField.OUT_AT, "15:00");
        assertThat(asked(typed)).isEqualTo(ProblemKind.ENGINE_CHANGED_WITHOUT_TIME);
        runs().save(typed, "run").orThrow();
        assertThat(minutes("H1")).isEqualTo(90);

        // It went in at noon: the same swap with its time, and the run of the afternoon goes with it.
        Map<SheetField, String> again = typed("12:00", "goes_in", "H2");
        again.put(SwapEngine.RUNS, "move");
        own.sheets.save(swap, again, "by hand").orThrow();
        assertThat(minutes("H1")).isEqualTo(60);
        assertThat(minutes("H2")).isEqualTo(30);
        assertThat(stay("H1").to()).isEqualTo(at(12, 0));
        assertThat(stay("H2").from()).isEqualTo(at(12, 0));
        assertThat(stays()).hasSize(2);
    }

    @Test
    void a_change_moved_to_a_later_time_gives_the_runs_between_back() {
        swapAt("10:00").orThrow();
        logRun("30", "8000", "11:00");
        Map<SheetField, String> again = typed("12:00", "goes_in", "H2");
        assertThat(problem(again, SwapEngine.RUNS)).isEqualTo(ProblemKind.NEEDED);
        again.put(SwapEngine.RUNS, "move");
        own.sheets.save(swap, again, "by hand").orThrow();
        assertThat(minutes("H1")).isEqualTo(30);
        assertThat(minutes("H2")).isZero();
    }

    @Test
    void a_swap_told_of_days_later_takes_the_runs_since_with_it() {
        logRun("60", "8000", "09:00");
        Map<SheetField, String> typed = typed("08:00", "goes_in", "H2");
        assertThat(problem(typed, SwapEngine.RUNS)).isEqualTo(ProblemKind.NEEDED);
        assertThat(own.sheets.save(swap, typed, "by hand").didWork()).isFalse();
        typed.put(SwapEngine.RUNS, "move");
        own.sheets.save(swap, typed, "by hand").orThrow();
        assertThat(minutes("H1")).isZero();
        assertThat(minutes("H2")).isEqualTo(60);
    }

    @Test
    void it_may_be_after_one_of_the_last_runs() {
        logRun("60", "8000", "09:00");
        Map<SheetField, String> typed = typed("", "goes_in", "H2");
        List<Choice> moments = swap.choices(SwapEngine.WHEN, new SheetTyped(typed), own.sheets.sight());
        assertThat(moments).hasSize(2);
        typed.put(SwapEngine.WHEN, moments.get(1).key());
        own.sheets.save(swap, typed, "by hand").orThrow();
        assertThat(stay("H2").from()).isEqualTo(at(10, 0));
    }

    @Test
    void a_swap_inside_a_run_is_refused() {
        logRun("60", "8000", "09:00");
        Map<SheetField, String> typed = typed("09:30", "goes_in", "H2");
        assertThat(found(swap, typed)).contains("CHANGE_INSIDE_RUN beside swap_time");
        assertThat(own.sheets.save(swap, typed, "by hand").didWork()).isFalse();
    }

    @Test
    void an_engine_in_another_car_leaves_it_and_is_asked_about() {
        own.save(new AddCar(), "name", "12").orThrow();
        own.save(new PutEngine(), "engine", "H2", "car", "12", "since", "5 Mar").orThrow();
        Map<SheetField, String> typed = typed("18:00", "goes_in", "H2");
        assertThat(problem(typed, SwapEngine.ENGINE)).isEqualTo(ProblemKind.ENGINE_LEAVES_CAR);
        own.sheets.save(swap, typed, "by hand").orThrow();
        assertThat(stays()).filteredOn(stay -> stay.to() == null).hasSize(1);
        assertThat(stays()).hasSize(3);
    }

    @Test
    void what_speaks_against_it_is_said_and_a_reason_is_needed() {
        SentOut sent =
                new SentOut(null, id("H2"), null, null, "the dyno", "a pull", "", at(8, 0), null, null, "", "Ada", "");
        own.desk
                .write("sent", List.of(new Entry<>(own.ids.<SentOut>next(), sent, Standing.IN_FORCE, null, 1)))
                .orThrow();
        own.save(new WriteHold(), "held_what", "H2", "held_why", "knocks", "held_asks", "look")
                .orThrow();
        Map<SheetField, String> typed = typed("18:00", "goes_in", "H2");
        SheetReading reading = own.sheets.read(swap, typed);
        assertThat(reading.of(SwapEngine.ANYWAY).note().facts())
                .extracting(fact -> ((SheetNote) fact).key())
                .containsExactly("against_away", "against_held");
        assertThat(problem(typed, SwapEngine.ANYWAY)).isEqualTo(ProblemKind.NEEDED);
        typed.put(SwapEngine.ANYWAY, "no other engine");
        own.sheets.save(swap, typed, "by hand").orThrow();
        assertThat(stay("H2").note()).endsWith("; no other engine");
    }

    @Test
    void the_engine_that_is_in_it_is_not_offered_and_cannot_be_swapped_for_itself() {
        assertThat(swap.choices(SwapEngine.ENGINE, new SheetTyped(typed("18:00")), own.sheets.sight()))
                .hasSize(1);
        Map<SheetField, String> typed = typed("18:00");
        typed.put(SwapEngine.ENGINE, id("H1").text());
        assertThat(problem(typed, SwapEngine.ENGINE)).isEqualTo(ProblemKind.ENGINE_IN_TWO_CARS);
    }

    @Test
    void a_swap_written_between_two_others_lasts_to_the_next() {
        own.save(new AddEngine(), "number", "H3", "design", "Quarrow 2.0", "hours_how", "part_new")
                .orThrow();
        swapAt("18:00").orThrow();
        own.sheets.save(swap, typed("12:00", "goes_in", "H3"), "by hand").orThrow();
        assertThat(stay("H3").from()).isEqualTo(at(12, 0));
        assertThat(stay("H3").to()).isEqualTo(at(18, 0));
        assertThat(stay("H1").to()).isEqualTo(at(12, 0));
    }

    private Outcome<?> swapAt(String time) {
        return own.sheets.save(swap, typed(time, "goes_in", "H2"), "by hand");
    }

    private Map<SheetField, String> typed(String time, String... more) {
        Map<SheetField, String> typed = own.filled(
                swap, "swap_car", "7", "swap_time", time, "swap_oil", "oil_kept", "swap_cooler", "cooler_cleaned");
        for (int i = 0; i < more.length; i += 2) {
            typed.put(OwnLogbook.field(swap, more[i]), id(more[i + 1]).text());
        }
        return typed;
    }

    private @Nullable ProblemKind problem(Map<SheetField, String> typed, SheetField field) {
        Problem problem = own.sheets.read(swap, typed).of(field).problem();
        return problem == null ? null : problem.kind();
    }

    private @Nullable ProblemKind asked(Map<RunField, String> typed) {
        RunReading reading = runs().read(typed);
        Problem problem = reading.of(RunField.OUT_AT).problem();
        return problem == null ? null : problem.kind();
    }

    private Map<RunField, String> sheet(String running) {
        Map<RunField, String> typed = new EnumMap<>(runs().fresh(own.desk
                .view()
                .facts()
                .of(Car.class)
                .named("7")
                .orElseThrow()
                .id()));
        typed.put(RunField.RUNNING, running);
        typed.put(RunField.OUT_AT, "");
        return typed;
    }

    private RunSheet runs() {
        return new RunSheet(own.desk, own.ids, FieldUnits.metric(DayOrder.DAY_FIRST));
    }

    private void fitToCar(String mark) {
        Position clutch = new Position(
                null,
                own.desk.view().facts().of(Car.class).named("7").orElseThrow().id(),
                PartKind.CLUTCH,
                "clutch",
                1,
                false);
        own.desk
                .write("position", List.of(new Entry<>(own.ids.<Position>next(), clutch, Standing.IN_FORCE, null, 1)))
                .orThrow();
        own.save(
                        new FitPart(),
                        "place",
                        "7",
                        "position",
                        "clutch",
                        "since",
                        "1 Mar",
                        "mark",
                        mark,
                        "part_design",
                        "new_design",
                        "part_design_name",
                        "Design of " + mark)
                .orThrow();
    }

    private long minutes(String engine) {
        return own.desk.view().ledger().engineLife(id(engine), Counter.RUNNING).total() / 60_000;
    }

    private Id<Engine> id(String number) {
        return own.desk
                .view()
                .facts()
                .of(Engine.class)
                .named(number)
                .orElseThrow()
                .id();
    }

    private EngineInCar stay(String number) {
        return stays().stream()
                .filter(stay -> stay.engine().equals(id(number)))
                .findFirst()
                .orElseThrow();
    }

    private List<EngineInCar> stays() {
        return own.desk.view().facts().of(EngineInCar.class).where(stay -> true).stream()
                .map(Entry::fact)
                .toList();
    }

    private Moment at(int hour, int minute) {
        return Moment.of(OwnLogbook.TODAY.atTime(hour, minute), Objects.requireNonNull(zone()));
    }
}
