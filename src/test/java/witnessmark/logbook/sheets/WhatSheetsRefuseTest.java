package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Car;
import witnessmark.domain.Fitment;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.DayOrder;

/** Each bad input gives its problem, beside its field, and nothing is written. */
class WhatSheetsRefuseTest {
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
                        "hours_how",
                        "part_new",
                        "car",
                        "7",
                        "since",
                        "1 Mar")
                .orThrow();
        own.sheets
                .save(
                        new FitPart(),
                        springs("VS-1", "since", "2 Mar", "part_design_name", "Marl spring set"),
                        "by hand")
                .orThrow();
    }

    @AfterEach
    void end() {
        own.close();
    }

    @Test
    void a_name_that_is_taken() {
        refused(new AddCar(), ProblemKind.NAME_TAKEN, "name", "name", "7");
        refused(new AddEngine(), ProblemKind.NAME_TAKEN, "number", "number", "h-1", "hours_how", "part_new");
        refused(new FitPart(), ProblemKind.NAME_TAKEN, "mark", springs("VS-1", "position", "head"));
    }

    /** The example is a speed of that engine, or tells the form alone. */
    @Test
    void a_speed_that_does_not_read_comes_with_the_limiter_of_that_engine() {
        assertThat(example(
                        new AddEngine(),
                        "over_rev",
                        "design",
                        SheetWord.NEW_DESIGN.key(),
                        "design_name",
                        "New",
                        "limiter",
                        "8200",
                        "over_rev",
                        "8,4k"))
                .isEqualTo("8200");
        assertThat(example(
                        new AddEngine(),
                        "over_rev",
                        "design",
                        SheetWord.NEW_DESIGN.key(),
                        "design_name",
                        "New",
                        "over_rev",
                        "8,4k"))
                .isEqualTo("1000 rpm");
    }

    /** Car 7 is the only one at first. */
    @Test
    void cars_of_an_event_are_asked_for_with_those_of_the_team_as_the_example() {
        SheetField cars = OwnLogbook.field(new AddEvent(), "cars_entered");
        Map<SheetField, String> empty = own.filled(new AddEvent());
        assertThat(own.sheets.read(new AddEvent(), empty).of(cars).note()).isEqualTo(SheetNote.of("cars"));
        own.save(new AddCar(), "name", "23").orThrow();
        assertThat(own.sheets.read(new AddEvent(), empty).of(cars).note())
                .isEqualTo(SheetNote.of("cars_form", "7", "23"));
    }

    /** The sheets refuse a day still to come, so that the example is today. */
    @Test
    void a_day_that_does_not_read_comes_with_today() {
        String example = example(new FitPart(), "since", springs("VS-2", "position", "head", "since", "32 Mar"));
        assertThat(own.sheets
                        .read(new FitPart(), own.filled(new FitPart(), "since", example))
                        .of(OwnLogbook.field(new FitPart(), "since"))
                        .problem())
                .isNull();
        assertThat(example).isEqualTo(own.desk.today().day().getDayOfMonth() + " Mar");
    }

    private Object example(LogSheet sheet, String field, String... typed) {
        return example(sheet, field, own.filled(sheet, typed)).toString();
    }

    private String example(LogSheet sheet, String field, Map<SheetField, String> typed) {
        Problem problem =
                own.sheets.read(sheet, typed).of(OwnLogbook.field(sheet, field)).problem();
        assertThat(problem).isNotNull();
        return problem.facts().get(2).toString();
    }

    @Test
    void what_is_needed_and_empty() {
        refused(new AddCar(), ProblemKind.NEEDED, "name", "name", "  ");
        refused(new SetLimit(), ProblemKind.NEEDED, "figure", limit("figure", ""));
    }

    @Test
    void a_part_fitted_before_it_was_bought() {
        refused(
                new FitPart(),
                ProblemKind.FITTED_BEFORE_BOUGHT,
                "since",
                springs("VS-2", "position", "head", "since", "2 Mar", "bought", "3 Mar"));
    }

    @Test
    void a_part_fitted_before_or_when_another_went_in_is_refused_until_the_day_is_after_that() {
        for (String day : List.of("1 Mar", "2 Mar")) {
            refused(
                    new FitPart(),
                    ProblemKind.FITTED_LATER,
                    "since",
                    springs("VS-2", "part_design", "Marl spring set", "since", day));
        }
        Map<SheetField, String> early = springs("VS-2", "part_design", "Marl spring set", "since", "1 Mar");
        SheetReading read = own.sheets.read(new FitPart(), early);
        assertThat(read.of(FitPart.POSITION).note().key()).isEqualTo("empty_position");
        assertThat(read.of(FitPart.POSITION).note().facts())
                .isEqualTo(List.of(
                        Moment.endOf(LocalDate.of(2026, 3, 1), own.desk.view().zone())));
        Map<SheetField, String> later = springs("VS-2", "part_design", "Marl spring set", "since", "3 Mar");
        assertThat(own.sheets.save(new FitPart(), later, "by hand").didWork()).isTrue();
    }

    @Test
    void a_part_that_came_off_later_by_what_is_written_keeps_why_when_it_comes_off_earlier() {
        own.save(new TakeOffPart(), "place", "H1", "fitted", "VS-1", "off_when", "8 Mar", "off_reason", "soft")
                .orThrow();
        Map<SheetField, String> typed = springs("VS-2", "part_design", "Marl spring set", "since", "5 Mar");
        SheetNote note =
                own.sheets.read(new FitPart(), typed).of(FitPart.POSITION).note();
        assertThat(note.key()).isEqualTo("comes_off_earlier");
        own.sheets.save(new FitPart(), typed, "by hand").orThrow();
        assertThat(own.desk.view().facts().of(Fitment.class).where(fitment -> fitment.to() != null))
                .singleElement()
                .satisfies(entry -> {
                    assertThat(entry.fact().why()).isEqualTo("soft");
                    assertThat(java.util.Objects.requireNonNull(entry.fact().to())
                                    .day())
                            .isEqualTo(LocalDate.of(2026, 3, 5));
                });
    }

    @Test
    void hours_that_do_not_go_with_how_they_are_known_stay_in_sight_and_keep_the_sheet_from_being_saved() {
        for (String how : List.of("not_known", "part_new")) {
            Map<SheetField, String> typed = own.filled(
                    new AddEngine(),
                    "number",
                    "H2",
                    "design_name",
                    "Other",
                    "cylinders",
                    "4",
                    "hours_how",
                    how,
                    "hours",
                    "about 9",
                    "hours_as_of",
                    "9 Mar");
            SheetReading read = own.sheets.read(new AddEngine(), typed);
            assertThat(read.asked()).contains(AddEngine.HOURS);
            assertThat(read.of(AddEngine.HOURS).problem())
                    .isEqualTo(Problem.of(
                            ProblemKind.SAYS_OTHERWISE,
                            AddEngine.HOURS,
                            "about 9",
                            AddEngine.HOURS_HOW,
                            SheetWord.valueOf(how.toUpperCase(java.util.Locale.ROOT))));
            assertThat(own.sheets.save(new AddEngine(), typed, "by hand").didWork())
                    .isFalse();
            typed.put(AddEngine.HOURS, "");
            assertThat(own.sheets.read(new AddEngine(), typed).asked()).doesNotContain(AddEngine.HOURS);
            assertThat(own.sheets.read(new AddEngine(), typed).stops()).isFalse();
        }
    }

    @Test
    void a_part_in_two_places() {
        own.save(new AddEngine(), "number", "H2", "design", "Quarrow 2.0", "hours_how", "part_new")
                .orThrow();
        String springs = own.desk
                .view()
                .facts()
                .of(witnessmark.domain.Part.class)
                .named("VS-1")
                .orElseThrow()
                .id()
                .text();
        refused(
                new FitPart(),
                ProblemKind.PART_IN_TWO_PLACES,
                "part",
                "place",
                "H2",
                "position",
                "valve springs",
                "since",
                "4 Mar",
                "part",
                springs);
    }

    @Test
    void a_change_inside_a_run() {
        logRun("30", "5 Mar", "10:00");
        refused(
                new FitPart(),
                ProblemKind.CHANGE_INSIDE_RUN,
                "since",
                springs("VS-2", "part_design", "Marl spring set", "since", "5 Mar", "since_time", "10:10"));
    }

    @Test
    void a_part_nobody_knows() {
        refused(
                new FitPart(),
                ProblemKind.NOT_FOUND,
                "part",
                "place",
                "H1",
                "position",
                "head",
                "since",
                "4 Mar",
                "part",
                "VS-99");
    }

    @Test
    void an_event_that_ends_before_it_begins() {
        refused(
                new AddEvent(),
                ProblemKind.ENDS_BEFORE_IT_BEGINS,
                "last_day",
                "name",
                "Round 1",
                "first_day",
                "14 Mar",
                "last_day",
                "13 Mar");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"Sat 09:00", "P1", "P1 Fri 09:00 25 min", "P1 Sat 09:00 lots", "P1 Sat 09:00 0 min"})
    void a_line_of_the_timetable_that_says_no_one_thing(String line) {
        assertThat(stopsIn(
                        new AddEvent(),
                        "timetable",
                        "name",
                        "Round 1",
                        "first_day",
                        "14 Mar",
                        "last_day",
                        "15 Mar",
                        "timetable",
                        "Q Sun 10:00\n" + line))
                .isTrue();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"0", "0 h", "1h7x", "-x"})
    void a_limit_of_nothing_or_that_cannot_be_read(String figure) {
        refused(new SetLimit(), ProblemKind.CANNOT_READ, "figure", limit("figure", figure));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"-3", "- 3", "\u22123", "-0.5 h", "-3x"})
    void a_limit_of_less_than_nothing(String figure) {
        refused(new SetLimit(), ProblemKind.LESS_THAN_NOTHING, "figure", limit("figure", figure));
    }

    @Test
    void an_engine_of_no_cylinders_and_hours_outside_their_own_range() {
        refused(
                new AddEngine(),
                ProblemKind.OUT_OF_RANGE,
                "cylinders",
                "number",
                "H3",
                "design",
                "new_design",
                "design_name",
                "Other",
                "cylinders",
                "0",
                "hours_how",
                "part_new");
        refused(
                new AddEngine(),
                ProblemKind.OUT_OF_RANGE,
                "hours",
                "number",
                "H3",
                "hours_how",
                "about",
                "hours",
                "9",
                "hours_lowest",
                "10",
                "hours_highest",
                "12");
    }

    @Test
    void a_day_that_has_not_come() {
        refused(new PutEngine(), ProblemKind.RUN_IN_FUTURE, "since", "engine", "H1", "car", "7", "since", "2026-04-01");
    }

    @Test
    void a_part_taken_off_before_it_was_fitted_or_without_a_reason() {
        refused(
                new TakeOffPart(),
                ProblemKind.ENDS_BEFORE_IT_BEGINS,
                "off_when",
                "place",
                "H1",
                "fitted",
                "VS-1",
                "off_when",
                "1 Mar",
                "off_reason",
                "lost force");
        refused(
                new TakeOffPart(),
                ProblemKind.NEEDED,
                "off_reason",
                "place",
                "H1",
                "fitted",
                "VS-1",
                "off_when",
                "4 Mar");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"0", "-0.05", "thin"})
    void a_skim_that_took_nothing_off_or_less(String removed) {
        refused(new WriteWork(), ProblemKind.CANNOT_READ, "removed", "work_on", "VS-1", "removed", removed);
    }

    @Test
    void a_build_closed_before_it_was_opened_and_a_zone_nobody_knows() {
        refused(
                new WriteBuild(),
                ProblemKind.ENDS_BEFORE_IT_BEGINS,
                "closed",
                "engine",
                "H1",
                "zones",
                "head",
                "opened",
                "5 Mar",
                "closed",
                "4 Mar");
        refused(new WriteBuild(), ProblemKind.CANNOT_READ, "zones", "engine", "H1", "zones", "head, roof");
    }

    @Test
    void an_engine_put_in_the_car_it_is_in() {
        refused(
                new PutEngine(),
                ProblemKind.ENGINE_IN_TWO_CARS,
                "engine",
                "engine",
                "H1",
                "car",
                "7",
                "since",
                "5 Mar");
    }

    private void refused(LogSheet sheet, ProblemKind kind, String field, String... typed) {
        refused(sheet, kind, field, own.filled(sheet, typed));
    }

    private void refused(LogSheet sheet, ProblemKind kind, String field, Map<SheetField, String> typed) {
        long before = own.desk.view().facts().revision();
        SheetReading reading = own.sheets.read(sheet, typed);
        Problem inField = reading.of(OwnLogbook.field(sheet, field)).problem();
        if (inField == null) {
            assertThat(own.sheets.check(reading))
                    .extracting(found -> found.problem().kind() + " beside "
                            + (found.field() == null ? "none" : found.field().key()))
                    .contains(kind + " beside " + field);
        } else {
            assertThat(inField.kind()).isEqualTo(kind);
        }
        Outcome<Written> outcome = own.sheets.save(sheet, typed, "by hand");
        assertThat(outcome.didWork()).isFalse();
        assertThat(outcome.problems()).extracting(Problem::kind).contains(kind);
        assertThat(own.desk.view().facts().revision()).isEqualTo(before);
    }

    private boolean stopsIn(LogSheet sheet, String field, String... typed) {
        Map<SheetField, String> filled = own.filled(sheet, typed);
        boolean stops = own.sheets
                .read(sheet, filled)
                .of(OwnLogbook.field(sheet, field))
                .stops();
        return stops && !own.sheets.save(sheet, filled, "by hand").didWork();
    }

    private Map<SheetField, String> limit(String... more) {
        Map<SheetField, String> typed = own.filled(
                new SetLimit(), "part_kind", "valve springs", "work_due", "renew valve springs", "source", "our sheet");
        typed.putAll(pairs(new SetLimit(), more));
        return typed;
    }

    /** A new spring set for the valve springs of H1, unless told otherwise. */
    private Map<SheetField, String> springs(String mark, String... more) {
        FitPart sheet = new FitPart();
        Map<SheetField, String> typed = own.filled(
                sheet,
                "place",
                "H1",
                "position",
                "valve springs",
                "mark",
                mark,
                "part_design_name",
                "Design of " + mark);
        Map<SheetField, String> changed = new java.util.HashMap<>(typed);
        for (int i = 0; i < more.length; i += 2) {
            String[] all = {"place", "H1", "position", "valve springs", more[i], more[i + 1]};
            SheetField field = OwnLogbook.field(sheet, more[i]);
            changed.put(field, own.filled(sheet, all).get(field));
        }
        return changed;
    }

    private static Map<SheetField, String> pairs(LogSheet sheet, String... more) {
        Map<SheetField, String> typed = new java.util.HashMap<>();
        for (int i = 0; i < more.length; i += 2) {
            typed.put(OwnLogbook.field(sheet, more[i]), more[i + 1]);
        }
        return typed;
    }

    private void logRun(String running, String day, String out) {
        RunSheet sheet = new RunSheet(own.desk, own.ids, FieldUnits.metric(DayOrder.DAY_FIRST));
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(
                own.desk.view().facts().of(Car.class).named("7").orElseThrow().id()));
        typed.put(RunField.RUNNING, running);
        typed.put(RunField.DATE, day);
        typed.put(RunField.OUT_AT, out);
        sheet.save(typed, "run").orThrow();
    }
}
