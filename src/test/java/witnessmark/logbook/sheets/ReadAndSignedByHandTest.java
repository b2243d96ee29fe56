package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Clearance;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Fact;
import witnessmark.domain.Grade;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.Run;
import witnessmark.domain.RunOn;
import witnessmark.domain.Trigger;
import witnessmark.domain.TriggerKind;
import witnessmark.domain.Warmth;
import witnessmark.ledger.Holds;
import witnessmark.ledger.Marks;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.DayOrder;

/**
 * Readings, holds, clearances, run-ons and rules written by sheets alone. Oracle: each record spelt out by hand, and
 * sums done by hand in the comments.
 */
class ReadAndSignedByHandTest {
    private static final long HOUR = 3_600_000;
    private static final LocalDate FROM = LocalDate.of(2026, 3, 1);

    @TempDir
    Path folder;

    private OwnLogbook own;

    @BeforeEach
    void begin() {
        own = new OwnLogbook(folder);
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
                        "hours_how",
                        "part_new",
                        "car",
                        "7",
                        "since",
                        "1 Mar")
                .orThrow();
        fit("rods", "RS-1");
        fit("valve springs", "VS-1");
    }

    @AfterEach
    void end() {
        own.close();
    }

    @Test
    void a_leak_down_is_kept_as_typed_and_the_next_cylinder_takes_place_and_figure_only() {
        Map<SheetField, String> typed = reading("1", "4,5 %", "heard_at", "exhaust", "reading_time", "18:30");
        typed.put(WriteReading.WARMTH, Warmth.HOT.code());
        typed.put(WriteReading.BASELINE, "yes");
        typed.put(WriteReading.NOTE, "after the dyno");
        own.sheets.save(new WriteReading(), typed, "by hand").orThrow();

        assertThat(last(Reading.class))
                .isEqualTo(new Reading(
                        ReadingKind.LEAK_DOWN,
                        Moment.of(LocalDate.of(2026, 3, 9).atTime(18, 30), zone()),
                        engine(),
                        null,
                        "1",
                        450L,
                        null,
                        "exhaust",
                        Warmth.HOT,
                        true,
                        "Ada",
                        "after the dyno"));
        assertThat(new WriteReading().oneAfterTheOther()).isTrue();
        assertThat(new WriteReading().kept())
                .contains(WriteReading.KIND, WriteReading.ON, WriteReading.WHEN)
                .doesNotContain(WriteReading.PLACE, WriteReading.VALUE, WriteReading.HEARD, WriteReading.NOTE);
    }

    @Test
    void each_kind_of_figure_is_kept_in_whole_parts_of_its_unit() {
        // 12.4 bar = 1 240 000 Pa; 180 psi = 1 241 056.3 Pa (NIST SP 811, 6.894 757 kPa); 291 N; 0.25 mm; 10 thou =
        // 0.254 mm
        assertThat(value(ReadingKind.COMPRESSION, "12.4")).isEqualTo(1_240_000);
        assertThat(value(ReadingKind.COMPRESSION, "180 psi")).isEqualTo(1_241_056);
        assertThat(value(ReadingKind.SPRING_FORCE, "291 N")).isEqualTo(291_000);
        assertThat(value(ReadingKind.LASH, "0,25")).isEqualTo(250_000);
        assertThat(value(ReadingKind.LASH, "10 thou")).isEqualTo(254_000);
        assertThat(value(ReadingKind.HARDNESS, "103.5 HB")).isEqualTo(1035);
        assertThat(value(ReadingKind.OIL_PRESSURE, "4.2 bar")).isEqualTo(420_000);
        assertThat(value(ReadingKind.OIL_METAL, "12.5 ppm")).isEqualTo(12_500);
        assertThat(value(ReadingKind.LEAK_DOWN, "100")).isEqualTo(10_000);
    }

    @Test
    void a_grade_takes_the_place_of_the_figure_where_the_kind_is_graded() {
        Map<SheetField, String> typed = reading("", "");
        typed.put(WriteReading.KIND, ReadingKind.FILTER.code());
        typed.put(WriteReading.GRADE, Grade.FEW_SPECKS.code());
        assertThat(own.sheets.read(new WriteReading(), typed).asked())
                .contains(WriteReading.GRADE)
                .doesNotContain(WriteReading.VALUE, WriteReading.HEARD);
        own.sheets.save(new WriteReading(), typed, "by hand").orThrow();
        assertThat(last(Reading.class).grade()).isEqualTo(Grade.FEW_SPECKS);
        assertThat(last(Reading.class).value()).isNull();
    }

    @Test
    void a_reading_of_a_fitted_part_says_which_engine_it_was_in() {
        own.save(
                        new WriteReading(),
                        "reading_kind",
                        "spring force",
                        "reading_on",
                        "VS-1",
                        "reading_place",
                        "exhaust 3B",
                        "reading_value",
                        "291")
                .orThrow();
        assertThat(last(Reading.class).part()).isEqualTo(part("VS-1"));
        assertThat(last(Reading.class).engine()).isEqualTo(engine());
    }

    @Test
    void a_place_is_spelt_as_before_and_its_end_will_do_where_it_is_clear() {
        read("exhaust 3B", "4");
        assertThat(place("EXHAUST 3b")).isEqualTo("exhaust 3B");
        assertThat(place("3b")).isEqualTo("exhaust 3B");
        assertThat(place("B")).isEqualTo("B");
        read("inlet 3B", "4");
        SheetReading two = own.sheets.read(new WriteReading(), reading("3B", "4"));
        assertThat(Objects.requireNonNull(two.of(WriteReading.PLACE).problem()).kind())
                .isEqualTo(witnessmark.outcome.ProblemKind.TWO_READINGS);
    }

    @Test
    void a_figure_unlike_the_five_before_is_asked_about_and_saved_all_the_same() {
        for (String earlier : List.of("3", "4", "4", "3", "5")) {
            read("2", earlier);
        }
        // quartiles 3 and 4, spread 1, fences 1.5 and 5.5
        assertThat(own.sheets.read(new WriteReading(), reading("2", "5.5")).problems())
                .isEmpty();
        SheetReading far = own.sheets.read(new WriteReading(), reading("2", "45"));
        assertThat(far.problems()).extracting(problem -> problem.kind().name()).containsExactly("UNUSUAL");
        assertThat(own.sheets.read(new WriteReading(), reading("1", "45")).problems())
                .isEmpty();
        own.sheets.save(new WriteReading(), reading("2", "45"), "by hand").orThrow();
        assertThat(last(Reading.class).value()).isEqualTo(4500);
    }

    @Test
    void a_limit_of_readings_is_kept_as_typed_and_a_reading_beyond_it_is_over_until_undone() {
        own.save(
                        new SetReadingLimit(),
                        "limit_name",
                        "leak-down",
                        "at_most",
                        "10",
                        "change_at_most",
                        "3 %",
                        "every",
                        "3.5",
                        "rank",
                        "builder",
                        "source",
                        "builder's sheet",
                        "limit_from",
                        "1 Mar")
                .orThrow();
        assertThat(last(ReadingLimit.class))
                .isEqualTo(new ReadingLimit(
                        "leak-down",
                        ReadingKind.LEAK_DOWN,
                        design(),
                        null,
                        null,
                        null,
                        1000L,
                        300L,
                        null,
                        null,
                        new RunningTime(7 * HOUR / 2),
                        LimitRank.BUILDER,
                        "builder's sheet",
                        FROM,
                        null));
        read("1", "4");
        assertThat(readings()).isEqualTo(MarkState.WITHIN);
        read("1", "10.01");
        assertThat(readings()).isEqualTo(MarkState.OVER);
        own.desk.undo().orThrow();
        assertThat(readings()).isEqualTo(MarkState.WITHIN);
    }

    @Test
    void limits_of_readings_of_parts_of_one_engine_and_of_grades_are_kept_as_typed() {
        own.save(
                        new SetReadingLimit(),
                        "limit_name",
                        "spring force",
                        "reading_kind",
                        "spring force",
                        "limit_in",
                        "H1",
                        "limit_of",
                        "valve springs",
                        "at_least",
                        "280",
                        "fall_at_most",
                        "8",
                        "source",
                        "ours",
                        "limit_from",
                        "1 Mar")
                .orThrow();
        ReadingLimit force = last(ReadingLimit.class);
        assertThat(force.engine()).isEqualTo(engine());
        assertThat(force.design()).isNull();
        assertThat(force.partKind()).isEqualTo(PartKind.VALVE_SPRINGS);
        assertThat(force.atLeast()).isEqualTo(280_000);
        assertThat(force.fallAtMost()).isEqualTo(800);
        assertThat(force.every()).isNull();
        own.save(
                        new SetReadingLimit(),
                        "limit_name",
                        "filter",
                        "reading_kind",
                        "filter",
                        "limit_in",
                        "all_designs",
                        "worst_grade",
                        "few specks",
                        "source",
                        "ours")
                .orThrow();
        assertThat(last(ReadingLimit.class).worstGrade()).isEqualTo(Grade.FEW_SPECKS);
        assertThat(last(ReadingLimit.class).design()).isNull();
    }

    @Test
    void a_trigger_is_kept_as_typed_and_holds_what_ran_too_fast_until_each_part_or_all_are_signed_clear() {
        setOverRev();
        assertThat(last(Trigger.class))
                .isEqualTo(new Trigger(
                        "over-rev",
                        TriggerKind.SPEED_ABOVE,
                        design(),
                        8500L,
                        new RunningTime(100),
                        null,
                        null,
                        java.util.EnumSet.of(PartKind.RODS, PartKind.VALVE_SPRINGS),
                        "rods crack tested",
                        LimitRank.OWN,
                        "ours",
                        FROM,
                        null));
        logRun("30", "9340");
        assertThat(held()).containsExactlyInAnyOrder("RS-1", "VS-1");
        assertThat(clearChoices())
                .extracting(choice -> ((SheetNote) choice.facts().get(0)).key())
                .containsExactly("held_all", "held_part", "held_part");
        SheetNote rods = (SheetNote) clearChoices().stream()
                .filter(choice -> choice.facts().toString().contains("RS-1"))
                .findFirst()
                .orElseThrow()
                .facts()
                .get(0);
        assertThat(rods.facts())
                .isEqualTo(List.of(new EngineSpeed(9340), last(Run.class).start(), PartKind.RODS, "RS-1"));

        own.sheets.save(new SignClear(), clear("RS-1"), "by hand").orThrow();
        assertThat(last(Clearance.class))
                .isEqualTo(new Clearance(
                        null,
                        id(Run.class),
                        null,
                        id(Trigger.class),
                        part("RS-1"),
                        Moment.endOf(OwnLogbook.TODAY, zone()),
                        "crack tested",
                        "no indication",
                        "Ada",
                        ""));
        assertThat(held()).containsExactly("VS-1");
        own.desk.undo().orThrow();
        assertThat(held()).containsExactlyInAnyOrder("RS-1", "VS-1");

        Map<SheetField, String> all = clear("RS-1");
        all.put(SignClear.HELD, clearChoices().get(0).key());
        own.sheets.save(new SignClear(), all, "by hand").orThrow();
        assertThat(last(Clearance.class).part()).isNull();
        assertThat(held()).isEmpty();
        assertThat(clearChoices()).isEmpty();
    }

    @Test
    void triggers_by_temperature_pressure_and_grades_are_kept_in_their_own_units() {
        // 105 C = 378.15 K; 1.5 bar = 150 000 Pa
        assertThat(trigger("trigger_kind", "water above", "trigger_figure", "105")
                        .figure())
                .isEqualTo(378_150);
        assertThat(trigger("trigger_kind", "oil pressure below", "trigger_figure", "1.5")
                        .figure())
                .isEqualTo(150_000);
        Trigger graded = trigger("trigger_kind", "graded", "reading_kind", "plug", "trigger_grade", "damaged");
        assertThat(graded.readingKind()).isEqualTo(ReadingKind.PLUG);
        assertThat(graded.grade()).isEqualTo(Grade.DAMAGED);
        assertThat(graded.holds()).isEmpty();
        Trigger worse = trigger("trigger_kind", "worse twice", "reading_kind", "filter", "trigger_grade", "flakes");
        assertThat(worse.grade()).isNull();
        assertThat(worse.figure()).isNull();
    }

    @Test
    void a_hold_is_kept_as_typed_holds_the_engine_and_its_own_signer_is_asked_about() {
        own.save(
                        new WriteHold(),
                        "held_what",
                        "H1",
                        "held_since",
                        "9 Mar",
                        "held_time",
                        "16:20",
                        "held_why",
                        "detonation mark on the plug of 3",
                        "held_asks",
                        "head off")
                .orThrow();
        assertThat(last(Hold.class))
                .isEqualTo(new Hold(
                        engine(),
                        null,
                        "",
                        Moment.of(LocalDate.of(2026, 3, 9).atTime(16, 20), zone()),
                        "detonation mark on the plug of 3",
                        "head off",
                        "Ada"));
        Map<SheetField, String> typed = clear("H1");
        assertThat(found(new SignClear(), typed)).containsExactly("CLEARS_OWN_HOLD beside clear_by");
        typed.put(SignClear.WHEN, "8 Mar");
        assertThat(found(new SignClear(), typed)).contains("CLEARED_BEFORE beside clear_day");
        assertThat(own.sheets.save(new SignClear(), typed, "by hand").didWork()).isFalse();
        typed = clear("H1");
        typed.put(SignClear.BY, "Bea");
        assertThat(found(new SignClear(), typed)).isEmpty();
        own.sheets.save(new SignClear(), typed, "by hand").orThrow();
        assertThat(last(Clearance.class).hold()).isEqualTo(id(Hold.class));
        assertThat(new Holds(own.desk.view().ledger()).open()).isEmpty();
    }

    @Test
    void a_run_on_past_a_limit_of_our_own_is_kept_as_typed_and_needs_nobody_asked() {
        limit("own", "0.4");
        logRun("30", "8000");
        assertThat(springs()).isEqualTo(MarkState.OVER);
        Map<SheetField, String> typed = runOn("1.25", "");
        assertThat(own.sheets
                        .read(new SignRunOn(), runOn("", ""))
                        .of(SignRunOn.UP_TO)
                        .note()
                        .facts())
                .as("what is used, and no figure proposed")
                .isEqualTo(List.of(new SheetAmount(witnessmark.quantity.Counter.RUNNING, HOUR / 2)));
        assertThat(new SignRunOn().fresh(own.sheets.sight())).doesNotContainKey(SignRunOn.UP_TO);
        own.sheets.save(new SignRunOn(), typed, "by hand").orThrow();
        assertThat(last(RunOn.class))
                .isEqualTo(new RunOn(
                        id(Limit.class),
                        null,
                        part("VS-1"),
                        null,
                        null,
                        5 * HOUR / 4,
                        Moment.endOf(OwnLogbook.TODAY, zone()),
                        "Ada",
                        "",
                        "",
                        "no set on the shelf"));
        assertThat(springs()).isEqualTo(MarkState.RUN_ON);
        own.desk.undo().orThrow();
        assertThat(springs()).isEqualTo(MarkState.OVER);
    }

    @Test
    void for_a_limit_of_the_builder_it_has_to_be_said_whether_anybody_was_asked() {
        limit("builder", "0.4");
        logRun("30", "8000");
        SheetReading silent = own.sheets.read(new SignRunOn(), runOn("1", ""));
        assertThat(silent.stopped()).containsExactly(SignRunOn.ASKED);
        assertThat(found(new SignRunOn(), runOn("1", "nobody_asked"))).containsExactly("NOBODY_ASKED beside asked");
        Map<SheetField, String> asked = runOn("1", "somebody_asked");
        assertThat(own.sheets.read(new SignRunOn(), asked).stopped())
                .containsExactly(SignRunOn.ADVISER, SignRunOn.ADVICE);
        asked.put(SignRunOn.ADVISER, "Corbin, who built it");
        asked.put(SignRunOn.ADVICE, "one more hour at most");
        assertThat(found(new SignRunOn(), asked)).isEmpty();
        own.sheets.save(new SignRunOn(), asked, "by hand").orThrow();
        assertThat(last(RunOn.class).adviser()).isEqualTo("Corbin, who built it");
        assertThat(last(RunOn.class).advice()).isEqualTo("one more hour at most");
    }

    @Test
    void a_limit_of_the_rule_book_is_not_in_the_list_and_whoever_comes_with_it_is_told_why() {
        limit("rule book", "0.4");
        logRun("30", "8000");
        assertThat(new SignRunOn().choices(SignRunOn.LIMIT, new SheetTyped(Map.of()), own.sheets.sight()))
                .isEmpty();
        SheetReading empty = own.sheets.read(new SignRunOn(), own.filled(new SignRunOn()));
        assertThat(empty.of(SignRunOn.LIMIT).note()).isEqualTo(SheetNote.of("never_passed", 1));
        Map<SheetField, String> typed = own.filled(new SignRunOn());
        typed.put(SignRunOn.LIMIT, id(Limit.class).text() + "|" + part("VS-1").text());
        assertThat(Objects.requireNonNull(own.sheets
                                .read(new SignRunOn(), typed)
                                .of(SignRunOn.LIMIT)
                                .problem())
                        .kind())
                .isEqualTo(witnessmark.outcome.ProblemKind.RULE_BOOK_NOT_PASSED);
    }

    @Test
    void a_run_on_past_a_limit_of_readings_ends_at_the_running_of_the_engine() {
        own.save(
                        new SetReadingLimit(),
                        "limit_name",
                        "leak-down",
                        "at_most",
                        "10",
                        "source",
                        "ours",
                        "limit_from",
                        "1 Mar")
                .orThrow();
        read("4", "12");
        logRun("30", "8000");
        Map<SheetField, String> typed = runOn("0.5", "");
        assertThat(own.sheets.read(new SignRunOn(), typed).stopped()).containsExactly(SignRunOn.UP_TO);
        typed.put(SignRunOn.UP_TO, "1.5");
        own.sheets.save(new SignRunOn(), typed, "by hand").orThrow();
        assertThat(last(RunOn.class).readingLimit()).isEqualTo(id(ReadingLimit.class));
        assertThat(last(RunOn.class).engine()).isEqualTo(engine());
        assertThat(last(RunOn.class).upTo()).isEqualTo(3 * HOUR / 2);
        assertThat(readings()).isEqualTo(MarkState.RUN_ON);
    }

    private void setOverRev() {
        own.save(
                        new SetTrigger(),
                        "trigger_name",
                        "over-rev",
                        "trigger_figure",
                        "8500",
                        "lasting",
                        "0.1",
                        "holds",
                        "rods; valve spr",
                        "held_asks",
                        "rods crack tested",
                        "source",
                        "ours",
                        "limit_from",
                        "1 Mar")
                .orThrow();
    }

    private Trigger trigger(String... more) {
        Map<SheetField, String> typed = own.filled(
                new SetTrigger(), "trigger_name", "t", "held_asks", "look", "source", "ours", "limit_from", "1 Mar");
        typed.putAll(own.filled(new SetTrigger(), more).entrySet().stream()
                .filter(entry -> List.of(more).contains(entry.getKey().key()))
                .collect(java.util.stream.Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
        own.sheets.save(new SetTrigger(), typed, "by hand").orThrow();
        return last(Trigger.class);
    }

    private void limit(String rank, String hours) {
        own.save(
                        new SetLimit(),
                        "part_kind",
                        "valve springs",
                        "work_due",
                        "renew valve springs",
                        "figure",
                        hours,
                        "rank",
                        rank,
                        "source",
                        "a sheet",
                        "limit_from",
                        "1 Mar")
                .orThrow();
    }

    private Map<SheetField, String> runOn(String upTo, String asked) {
        Map<SheetField, String> typed = own.filled(new SignRunOn(), "up_to", upTo, "run_on_why", "no set on the shelf");
        typed.put(SignRunOn.ASKED, asked);
        typed.put(
                SignRunOn.LIMIT,
                new SignRunOn()
                        .choices(SignRunOn.LIMIT, new SheetTyped(typed), own.sheets.sight())
                        .get(0)
                        .key());
        return typed;
    }

    private Map<SheetField, String> clear(String what) {
        Map<SheetField, String> typed =
                own.filled(new SignClear(), "clear_done", "crack tested", "clear_found", "no indication");
        typed.put(
                SignClear.HELD,
                clearChoices().stream()
                        .filter(choice -> choice.facts().toString().contains(what))
                        .findFirst()
                        .orElseThrow()
                        .key());
        return typed;
    }

    private List<Choice> clearChoices() {
        return new SignClear().choices(SignClear.HELD, new SheetTyped(Map.of()), own.sheets.sight());
    }

    private List<String> found(LogSheet sheet, Map<SheetField, String> typed) {
        return own.sheets.check(own.sheets.read(sheet, typed)).stream()
                .map(found -> found.problem().kind() + " beside "
                        + (found.field() == null ? "none" : found.field().key()))
                .toList();
    }

    private Map<SheetField, String> reading(String place, String value, String... more) {
        Map<SheetField, String> typed = own.filled(
                new WriteReading(),
                "reading_on",
                "H1",
                "reading_place",
                place,
                "reading_value",
                value,
                "reading_day",
                "9 Mar");
        for (int i = 0; i < more.length; i += 2) {
            typed.put(OwnLogbook.field(new WriteReading(), more[i]), more[i + 1]);
        }
        return typed;
    }

    private void read(String place, String value) {
        own.sheets.save(new WriteReading(), reading(place, value), "by hand").orThrow();
    }

    private String place(String typed) {
        SheetReading reading = own.sheets.read(new WriteReading(), reading(typed, "4"));
        return ((Reading) reading.entries().get(0).fact()).place();
    }

    private long value(ReadingKind kind, String typed) {
        Map<SheetField, String> fields = reading("", typed);
        fields.put(WriteReading.KIND, kind.code());
        SheetReading reading = own.sheets.read(new WriteReading(), fields);
        return Objects.requireNonNull(((Reading) reading.entries().get(0).fact()).value());
    }

    private List<String> held() {
        return new Holds(own.desk.view().ledger())
                .open().stream()
                        .map(HeldBy::part)
                        .map(part -> own.sheets.sight().name(Part.class, Objects.requireNonNull(part)))
                        .toList();
    }

    private MarkState springs() {
        return new Marks(own.desk.view().ledger()).ofPart(part("VS-1")).get(0).state();
    }

    private MarkState readings() {
        return new Marks(own.desk.view().ledger())
                .ofEngine(engine()).stream()
                        .filter(mark -> mark.reason() instanceof ReadingUse)
                        .map(Mark::state)
                        .findFirst()
                        .orElseThrow();
    }

    private void fit(String position, String mark) {
        own.save(
                        new FitPart(),
                        "place",
                        "H1",
                        "position",
                        position,
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

    private void logRun(String running, String highest) {
        RunSheet sheet = new RunSheet(own.desk, own.ids, FieldUnits.metric(DayOrder.DAY_FIRST));
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(
                own.desk.view().facts().of(Car.class).named("7").orElseThrow().id()));
        typed.put(RunField.RUNNING, running);
        typed.put(RunField.HIGHEST, highest);
        sheet.save(typed, "run").orThrow();
    }

    private <F extends Fact> F last(Class<F> kind) {
        List<witnessmark.domain.Entry<F>> all = own.desk.view().facts().of(kind).where(fact -> true);
        return all.get(all.size() - 1).fact();
    }

    private <F extends Fact> Id<F> id(Class<F> kind) {
        List<witnessmark.domain.Entry<F>> all = own.desk.view().facts().of(kind).where(fact -> true);
        return all.get(all.size() - 1).id();
    }

    private Id<Engine> engine() {
        return id(Engine.class);
    }

    private Id<EngineDesign> design() {
        return id(EngineDesign.class);
    }

    private Id<Part> part(String mark) {
        return own.desk.view().facts().of(Part.class).named(mark).orElseThrow().id();
    }

    private java.time.ZoneId zone() {
        return own.desk.view().zone();
    }
}
