package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Grade;
import witnessmark.domain.Part;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.RunOn;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;

/** Bad readings, holds, clearances, run-ons and rules: each gives its problem beside its field, and nothing is written. */
class WhatSigningRefusesTest {
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
                        "Marl spring set")
                .orThrow();
    }

    @AfterEach
    void end() {
        own.close();
    }

    @Test
    void a_reading_without_what_it_needs_or_that_cannot_be() {
        Map<SheetField, String> good =
                own.filled(new WriteReading(), "reading_on", "H1", "reading_place", "1", "reading_value", "4");
        assertThat(stopped(new WriteReading(), good)).isEmpty();
        with(new WriteReading(), good, WriteReading.ON, "", ProblemKind.NEEDED);
        with(new WriteReading(), good, WriteReading.ON, "engine:nobody", ProblemKind.NOT_FOUND);
        with(new WriteReading(), good, WriteReading.VALUE, "", ProblemKind.NEEDED);
        for (String odd : List.of("four", "4 bar", "4,5,6", "4 % or so")) {
            with(new WriteReading(), good, WriteReading.VALUE, odd, ProblemKind.CANNOT_READ);
        }
        with(new WriteReading(), good, WriteReading.VALUE, "-4", ProblemKind.LESS_THAN_NOTHING);
        with(new WriteReading(), good, WriteReading.VALUE, "100.01", ProblemKind.OUT_OF_RANGE);
        with(new WriteReading(), good, WriteReading.WHEN, "11 Mar 2026", ProblemKind.RUN_IN_FUTURE);
        with(new WriteReading(), good, WriteReading.WHEN_TIME, "half three", ProblemKind.CANNOT_READ);
        good.put(WriteReading.KIND, ReadingKind.LASH.code());
        with(new WriteReading(), good, WriteReading.VALUE, "-0.2 mm", ProblemKind.LESS_THAN_NOTHING);
        good.put(WriteReading.KIND, ReadingKind.PLUG.code());
        with(new WriteReading(), good, WriteReading.GRADE, "", ProblemKind.NEEDED);
        with(new WriteReading(), good, WriteReading.GRADE, Grade.BEARING_COLOUR.code(), ProblemKind.NEEDED);
    }

    @Test
    void a_hold_that_does_not_say_why_or_what_to_look_at() {
        Map<SheetField, String> good =
                own.filled(new WriteHold(), "held_what", "VS-1", "held_why", "noise", "held_asks", "covers off");
        assertThat(stopped(new WriteHold(), good)).isEmpty();
        for (SheetField field : List.of(WriteHold.ON, WriteHold.WHY, WriteHold.ASKS, WriteHold.BY)) {
            with(new WriteHold(), good, field, " ", ProblemKind.NEEDED);
        }
    }

    @Test
    void a_clearance_of_nothing_or_that_does_not_say_what_was_done_and_found() {
        own.save(new WriteHold(), "held_what", "VS-1", "held_why", "noise", "held_asks", "covers off")
                .orThrow();
        Map<SheetField, String> good =
                own.filled(new SignClear(), "clear_done", "covers off", "clear_found", "a loose cap");
        good.put(SignClear.HELD, only(new SignClear(), SignClear.HELD));
        assertThat(stopped(new SignClear(), good)).isEmpty();
        for (SheetField field : List.of(SignClear.HELD, SignClear.DONE, SignClear.RESULT, SignClear.BY)) {
            with(new SignClear(), good, field, "", ProblemKind.NEEDED);
        }
        with(new SignClear(), good, SignClear.HELD, "nobody|nothing|", ProblemKind.NOT_FOUND);
        own.sheets.save(new SignClear(), good, "by hand").orThrow();
        assertThat(stopped(new SignClear(), good)).as("it is cleared already").containsExactly(SignClear.HELD);
    }

    @Test
    void a_run_on_that_ends_before_it_begins_or_at_the_limit() {
        limit("own", "running", "0.4");
        logRun();
        Map<SheetField, String> good = own.filled(new SignRunOn(), "up_to", "1", "run_on_why", "no set");
        good.put(SignRunOn.ASKED, "");
        good.put(SignRunOn.LIMIT, only(new SignRunOn(), SignRunOn.LIMIT));
        assertThat(stopped(new SignRunOn(), good)).isEmpty();
        with(new SignRunOn(), good, SignRunOn.UP_TO, "", ProblemKind.NEEDED);
        with(new SignRunOn(), good, SignRunOn.UP_TO, "soon", ProblemKind.CANNOT_READ);
        with(new SignRunOn(), good, SignRunOn.UP_TO, "0.5", ProblemKind.RUN_ON_OVER_ALREADY);
        with(new SignRunOn(), good, SignRunOn.WHY, "", ProblemKind.NEEDED);
        with(new SignRunOn(), good, SignRunOn.BY, "", ProblemKind.NEEDED);
        with(new SignRunOn(), good, SignRunOn.LIMIT, "nobody|nothing", ProblemKind.NOT_FOUND);
    }

    @Test
    void a_printed_date_is_not_in_the_list_and_whoever_comes_with_it_is_told_why() {
        dated(null, LocalDate.of(2026, 3, 9));
        assertThat(choices(new SignRunOn(), SignRunOn.LIMIT)).isEmpty();
        Map<SheetField, String> typed = own.filled(new SignRunOn(), "up_to", "1", "run_on_why", "no set");
        with(
                new SignRunOn(),
                typed,
                SignRunOn.LIMIT,
                "date|" + springs().id().text(),
                ProblemKind.PRINTED_DATE_NOT_PASSED);
    }

    @Test
    void a_printed_date_is_told_to_be_never_passed_before_it_is_past() {
        dated(null, LocalDate.of(2031, 6, 30));
        assertThat(new SignRunOn()
                        .notOffered(SignRunOn.LIMIT, new SheetTyped(Map.of()), own.sheets.sight())
                        .values())
                .containsExactly(SheetNote.of("printed_date_not_run_on", "VS-1", LocalDate.of(2031, 6, 30)));
    }

    @Test
    void months_of_a_run_on_are_counted_from_the_day_the_part_was_made() {
        dated(LocalDate.of(2025, 1, 10), null);
        limit("own", "months", "12");
        Map<SheetField, String> typed = own.filled(new SignRunOn(), "up_to", "15", "run_on_why", "no set");
        typed.put(SignRunOn.ASKED, "");
        typed.put(SignRunOn.LIMIT, only(new SignRunOn(), SignRunOn.LIMIT));
        with(new SignRunOn(), typed, SignRunOn.UP_TO, "14", ProblemKind.RUN_ON_OVER_ALREADY);
        own.sheets.save(new SignRunOn(), typed, "by hand").orThrow();
        // 10 Jan 2025 to 10 Apr 2026: 365 days and 31 - 10 + 28 + 31 + 10 = 90
        assertThat(own.desk.view().facts().of(RunOn.class).where(runOn -> true))
                .extracting(runOn -> runOn.fact().upTo())
                .containsExactly(455L);
    }

    @Test
    void a_limit_of_readings_that_asks_nothing_or_contradicts_itself() {
        Map<SheetField, String> good =
                own.filled(new SetReadingLimit(), "limit_name", "leak-down", "at_most", "10", "source", "ours");
        assertThat(stopped(new SetReadingLimit(), good)).isEmpty();
        with(new SetReadingLimit(), good, SetReadingLimit.AT_MOST, "", ProblemKind.NEEDED);
        with(new SetReadingLimit(), good, SetReadingLimit.FALL, "101 %", ProblemKind.CANNOT_READ);
        with(new SetReadingLimit(), good, SetReadingLimit.EVERY, "0", ProblemKind.CANNOT_READ);
        with(new SetReadingLimit(), good, SetReadingLimit.NAME, "", ProblemKind.NEEDED);
        with(new SetReadingLimit(), good, SetReadingLimit.SOURCE, "", ProblemKind.NEEDED);
        good.put(SetReadingLimit.AT_LEAST, "11");
        with(new SetReadingLimit(), good, SetReadingLimit.AT_MOST, "10", ProblemKind.SAYS_OTHERWISE);
        good.put(SetReadingLimit.KIND, ReadingKind.FILTER.code());
        with(new SetReadingLimit(), good, SetReadingLimit.WORST, "", ProblemKind.NEEDED);
        with(new SetReadingLimit(), good, SetReadingLimit.WORST, Grade.DAMAGED.code(), ProblemKind.NEEDED);
    }

    @Test
    void a_trigger_by_no_figure_or_for_parts_nobody_knows() {
        Map<SheetField, String> good = own.filled(
                new SetTrigger(),
                "trigger_name",
                "over-rev",
                "trigger_figure",
                "8500",
                "held_asks",
                "look",
                "source",
                "ours");
        assertThat(stopped(new SetTrigger(), good)).isEmpty();
        with(new SetTrigger(), good, SetTrigger.FIGURE, "", ProblemKind.NEEDED);
        with(new SetTrigger(), good, SetTrigger.FIGURE, "fast", ProblemKind.CANNOT_READ);
        with(new SetTrigger(), good, SetTrigger.FIGURE, "0", ProblemKind.OUT_OF_RANGE);
        with(new SetTrigger(), good, SetTrigger.LASTING, "a blip", ProblemKind.CANNOT_READ);
        with(new SetTrigger(), good, SetTrigger.HOLDS, "rods, roof", ProblemKind.CANNOT_READ);
        with(new SetTrigger(), good, SetTrigger.HOLDS, "rod", ProblemKind.CANNOT_READ);
        with(new SetTrigger(), good, SetTrigger.ASKS, "", ProblemKind.NEEDED);
        good.put(SetTrigger.HOLDS, "gearbox");
        assertThat(own.sheets.check(own.sheets.read(new SetTrigger(), good)))
                .extracting(found -> found.problem().kind(), FoundProblem::field)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(ProblemKind.TRIGGER_WITHOUT_PARTS, SetTrigger.HOLDS));
    }

    /** The sheet with one field typed otherwise has this problem there, and is not saved. */
    private void with(LogSheet sheet, Map<SheetField, String> good, SheetField field, String typed, ProblemKind kind) {
        Map<SheetField, String> bad = new java.util.HashMap<>(good);
        bad.put(field, typed);
        Problem problem = own.sheets.read(sheet, bad).of(field).problem();
        assertThat(problem).as("%s typed as '%s'", field.key(), typed).isNotNull();
        assertThat(java.util.Objects.requireNonNull(problem).kind()).isEqualTo(kind);
        long before = own.desk.view().facts().revision();
        assertThat(own.sheets.save(sheet, bad, "by hand").didWork()).isFalse();
        assertThat(own.desk.view().facts().revision()).isEqualTo(before);
    }

    private List<SheetField> stopped(LogSheet sheet, Map<SheetField, String> typed) {
        return own.sheets.read(sheet, typed).stopped();
    }

    private List<Choice> choices(LogSheet sheet, SheetField field) {
        return sheet.choices(field, new SheetTyped(Map.of()), own.sheets.sight());
    }

    private String only(LogSheet sheet, SheetField field) {
        List<Choice> all = choices(sheet, field);
        assertThat(all).hasSize(1);
        return all.get(0).key();
    }

    private void limit(String rank, String counter, String figure) {
        Map<SheetField, String> typed = own.filled(
                new SetLimit(),
                "part_kind",
                "valve springs",
                "work_due",
                "renew valve springs",
                "figure",
                figure,
                "rank",
                rank,
                "source",
                "a sheet",
                "limit_from",
                "1 Mar");
        typed.put(SetLimit.COUNTER, counter);
        own.sheets.save(new SetLimit(), typed, "by hand").orThrow();
    }

    private Entry<Part> springs() {
        return own.desk.view().facts().of(Part.class).named("VS-1").orElseThrow();
    }

    /** Writes down when the springs were made, or until when they may be used. */
    private void dated(@Nullable LocalDate made, @Nullable LocalDate useBy) {
        Entry<Part> entry = springs();
        Part was = entry.fact();
        Part dated = new Part(was.mark(), was.design(), "", "", null, made, useBy, null, null, null, "");
        own.desk
                .write(
                        "dates",
                        List.of(new Entry<>(
                                entry.id(), dated, entry.standing(), entry.struckBecause(), entry.rev() + 1)))
                .orThrow();
    }

    private void logRun() {
        RunSheet sheet = new RunSheet(own.desk, own.ids, FieldUnits.metric(DayOrder.DAY_FIRST));
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(
                own.desk.view().facts().of(Car.class).named("7").orElseThrow().id()));
        typed.put(RunField.RUNNING, "30");
        sheet.save(typed, "run").orThrow();
    }
}
