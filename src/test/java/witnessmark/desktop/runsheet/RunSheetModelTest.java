package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.Choice;
import witnessmark.logbook.run.Note;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.logbook.run.SampleBook;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** Seen on the sample season: on the evening it opens, and on the Saturday of round 6. */
class RunSheetModelTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");

    private final Texts texts = Texts.in(Locale.UK);
    private final RunWords words = new RunWords(texts, new Measures(texts, Units.METRIC));
    private Desk book = SampleBook.on(SampleBook.OPENING);
    private RunSheet sheet = new RunSheet(book, SampleBook.ids(), SampleBook.UNITS);
    private RunSheetModel model = opened();

    private RunSheetModel opened() {
        RunSheetModel opened = new RunSheetModel(sheet);
        opened.fill(sheet.fresh(null));
        return opened;
    }

    private void on(LocalDate day) {
        book = SampleBook.on(day);
        sheet = new RunSheet(book, SampleBook.ids(), SampleBook.UNITS);
        model = opened();
    }

    private void put(RunField field, String text) {
        model.type(field, text);
        model.leave(field);
    }

    private void pick(RunField field, String shown) {
        model.type(field, key(field, shown));
        model.leave(field);
    }

    private String key(RunField field, String shown) {
        return model.choices(field).stream()
                .filter(choice -> words.choice(choice).equals(shown))
                .map(Choice::key)
                .findFirst()
                .orElseThrow();
    }

    private String shown(RunField field) {
        return model.choices(field).stream()
                .filter(choice -> choice.key().equals(model.text(field)))
                .map(words::choice)
                .findFirst()
                .orElse("");
    }

    private String line(RunField field) {
        return words.line(model.line(field));
    }

    private FieldLine.Level level(RunField field) {
        return model.line(field).level();
    }

    @Test
    void what_can_be_known_is_filled_in_and_what_was_measured_is_not() {
        on(SATURDAY);

        assertThat(shown(RunField.EVENT)).isEqualTo("Round 6, Thornacre");
        assertThat(shown(RunField.PLANNED)).isEqualTo("Practice 1");
        assertThat(model.text(RunField.DATE)).isEqualTo("Sat 25 Jul 2026");
        assertThat(model.text(RunField.OUT_AT)).isEqualTo("09:00");
        assertThat(model.text(RunField.HEAT_CYCLES)).isEqualTo("1");
        for (RunField field : RunField.values()) {
            if (field.measured()) {
                assertThat(model.text(field)).as(field.key()).isEmpty();
            }
        }
        assertThat(model.isDirty()).isFalse();
    }

    @Test
    void lines_say_where_what_stands_there_comes_from() {
        on(SATURDAY);
        pick(RunField.CAR, "41, engine K03");

        assertThat(line(RunField.CAR)).isEqualTo("K03 since 9 Jun, 12.87 h since rebuild");
        assertThat(line(RunField.EVENT)).isEqualTo("from the calendar");
        assertThat(line(RunField.PLANNED)).isEqualTo("first in the timetable");
        assertThat(line(RunField.DRIVER)).isEqualTo("same as last run");
        assertThat(line(RunField.DATE)).isEqualTo("today");
        assertThat(line(RunField.OUT_AT)).isEqualTo("timetable");
        assertThat(line(RunField.WATER)).isEqualTo("last run 84");
        assertThat(line(RunField.HIGHEST)).isEqualTo("limiter 8 200 rpm");
        assertThat(line(RunField.OVER_REVS)).isEqualTo("empty: not read");
    }

    @Test
    void on_a_day_without_an_event_the_next_one_is_named() {
        assertThat(shown(RunField.EVENT)).isEqualTo("none");
        assertThat(line(RunField.EVENT)).isEqualTo("next: Round 6, Thornacre, Sat 25 Jul");
        assertThat(line(RunField.OUT_AT)).as("its clock shows 9:41").isEqualTo("empty: about 09:41");
    }

    /** The timetable of Round 6: Race 1 on Sunday 26 July, Practice 1 the day before. */
    @Test
    void a_run_of_the_timetable_on_another_day_is_asked_about_and_alt_enter_takes_the_day_planned() {
        on(SATURDAY);
        pick(RunField.CAR, "41, engine K03");
        pickPlanned("Race 1");
        assertThat(line(RunField.DATE)).as("it has not been yet").isEqualTo("Planned for Sun 26 Jul 2026. Right?");
        assertThat(level(RunField.DATE)).isEqualTo(FieldLine.Level.QUERY);

        on(SATURDAY.plusDays(1));
        pick(RunField.CAR, "41, engine K03");
        pickPlanned("Practice 1");
        assertThat(line(RunField.DATE)).as("the day follows").isEqualTo("yesterday");
        put(RunField.DATE, "26 Jul");
        assertThat(line(RunField.DATE)).isEqualTo("Planned for Sat 25 Jul 2026. Right?");
        assertThat(model.take(RunField.DATE)).isTrue();
        put(RunField.RUNNING, "28:20");
        assertThat(model.reading().run().fact().start().day()).isEqualTo(SATURDAY);
        assertThat(model.reading().run().fact().queried()).isEmpty();
    }

    private void pickPlanned(String name) {
        model.type(
                RunField.PLANNED,
                model.choices(RunField.PLANNED).stream()
                        .filter(choice -> words.choice(choice).contains(name))
                        .map(Choice::key)
                        .findFirst()
                        .orElseThrow());
        model.leave(RunField.PLANNED);
    }

    @Test
    void a_needed_field_is_not_asked_for_before_somebody_saves() {
        model.leave(RunField.RUNNING);
        assertThat(level(RunField.RUNNING)).isEqualTo(FieldLine.Level.NOTE);

        assertThat(model.ask()).isFalse();

        assertThat(level(RunField.RUNNING)).isEqualTo(FieldLine.Level.STOP);
        assertThat(model.stopped()).containsExactly(RunField.RUNNING);
        put(RunField.RUNNING, "28:20");
        assertThat(model.stopped()).isEmpty();
        assertThat(line(RunField.RUNNING)).isEqualTo("= 28 min 20 s");
    }

    @Test
    void a_field_is_first_checked_when_it_is_left_and_then_at_each_key() {
        model.type(RunField.RUNNING, "1h7x");
        assertThat(level(RunField.RUNNING)).isEqualTo(FieldLine.Level.NOTE);

        model.leave(RunField.RUNNING);
        assertThat(level(RunField.RUNNING)).isEqualTo(FieldLine.Level.STOP);
        assertThat(model.text(RunField.RUNNING)).isEqualTo("1h7x");

        model.type(RunField.RUNNING, "1h7");
        assertThat(level(RunField.RUNNING)).isEqualTo(FieldLine.Level.ECHO);
        assertThat(line(RunField.RUNNING)).isEqualTo("= 1 h 7 min (67 min)");
    }

    @ParameterizedTest(name = "{0} = {1}: {2}")
    @CsvSource({
        "RUNNING, 1h7x, Can't read this; for example 1h20",
        "RUNNING, 0, A run of nothing is no run",
        "RUNNING, 72h, 'Longer than one run can be, 24 h'",
        "RUNNING, -5, Less than nothing; for example 1h20",
        "RUNNING, 1:20, '1 h 20 min, or 1 min 20 s?'",
        "LAPS, 12abc, Can't read this; for example 12",
        "LAPS, 900, Must be from 0 to 400",
        "HIGHEST, 99999, Must be from 500 to 20 000",
        "HIGHEST, fast, Can't read this; for example 8 230 rpm",
        "OVER_REVS, one, Can't read this; for example 0",
        "WATER, hot, Can't read this; for example 84 °C",
        "OIL, 500, Must be from 0 to 180",
        "OIL_PRESSURE, 4.5 barn, Can't read this; for example 4.5 bar",
        "OIL_ADDED, 20 gal, Can't read this; for example 0.3 L",
        "WARM_UP, x, Can't read this; for example 5 min 6 s",
        "DATE, 32 Jul, Can't read this; for example 8 Jul",
        "DATE, 31/12/2026, 'Later than today, Wed 8 Jul 2026'",
        "OUT_AT, 25:10, Can't read this; for example 10:40",
        "DISTANCE, far, Can't read this; for example 40.1 km",
        "HEAT_CYCLES, 99, Must be from 0 to 20",
        "AMBIENT, 300, Must be from −30 to 55",
    })
    void what_cannot_be_is_stopped_in_words_and_stays_as_typed(RunField field, String typed, String said) {
        put(RunField.RUNNING, "28:20");

        put(field, typed);

        assertThat(level(field)).isEqualTo(FieldLine.Level.STOP);
        assertThat(line(field)).isEqualTo(said);
        assertThat(words.inFull(model.line(field))).isNotEmpty();
        assertThat(model.ask()).isFalse();
        assertThat(model.stopped()).contains(field);
        assertThat(model.text(field)).isEqualTo(typed);
    }

    @Test
    void a_part_of_the_run_cannot_be_longer_than_the_run() {
        put(RunField.RUNNING, "28:20");
        put(RunField.LOADED, "40");
        assertThat(line(RunField.LOADED)).isEqualTo("Longer than the run, 28 min 20 s");

        put(RunField.RUNNING, "45");
        assertThat(level(RunField.LOADED)).isEqualTo(FieldLine.Level.ECHO);

        put(RunField.WARM_UP, "7");
        assertThat(line(RunField.WARM_UP)).isEqualTo("leaves 38 min");
    }

    /** K03 read 4.3 to 4.8 bar hot all season: sample season, engine sheet. */
    @Test
    void a_slipped_point_is_queried_and_alt_enter_takes_what_was_meant() {
        on(SATURDAY);
        pick(RunField.CAR, "41, engine K03");
        put(RunField.RUNNING, "28:20");
        put(RunField.OIL_PRESSURE, "45");

        assertThat(level(RunField.OIL_PRESSURE)).isEqualTo(FieldLine.Level.QUERY);
        assertThat(line(RunField.OIL_PRESSURE)).endsWith("Meant 4.5?");
        assertThat(model.ask()).isTrue();
        assertThat(model.reading().run().fact().queried()).isEqualTo("oil_pressure");

        assertThat(model.take(RunField.OIL_PRESSURE)).isTrue();
        assertThat(model.text(RunField.OIL_PRESSURE)).isEqualTo("4.5");
        assertThat(level(RunField.OIL_PRESSURE)).isEqualTo(FieldLine.Level.NOTE);
        assertThat(model.reading().run().fact().queried()).isEmpty();
        assertThat(model.take(RunField.OIL_PRESSURE)).isFalse();
    }

    @Test
    void alt_enter_in_a_field_not_left_yet_checks_it_and_takes_what_was_meant() {
        on(SATURDAY);
        pick(RunField.CAR, "41, engine K03");
        put(RunField.RUNNING, "28:20");
        model.type(RunField.OIL_PRESSURE, "45");

        assertThat(model.take(RunField.OIL_PRESSURE)).isTrue();
        assertThat(model.text(RunField.OIL_PRESSURE)).isEqualTo("4.5");
    }

    @Test
    void of_two_readings_alt_enter_takes_the_likelier() {
        put(RunField.RUNNING, "1:20");

        assertThat(model.take(RunField.RUNNING)).isTrue();

        assertThat(line(RunField.RUNNING)).isEqualTo("= 1 h 20 min (80 min)");
    }

    @Test
    void a_long_or_short_run_is_queried_and_saves() {
        put(RunField.RUNNING, "2");
        assertThat(level(RunField.RUNNING)).isEqualTo(FieldLine.Level.QUERY);
        assertThat(model.ask()).isTrue();
        assertThat(model.reading().run().fact().queried()).isEqualTo("running");
        assertThat(model.wholeRun()).isEmpty();
    }

    @Test
    void another_car_brings_its_driver_and_its_next_run() {
        on(SATURDAY);
        pick(RunField.CAR, "41, engine K03");
        assertThat(shown(RunField.DRIVER)).isEqualTo("Driver 1");
        pick(RunField.CAR, "57, engine K06");
        assertThat(shown(RunField.DRIVER)).isEqualTo("Driver 2");
    }

    @Test
    void what_follows_does_not_go_where_somebody_typed() {
        on(SATURDAY);
        put(RunField.OUT_AT, "09:17");
        pick(RunField.PLANNED, "Practice 2");
        assertThat(model.text(RunField.OUT_AT)).isEqualTo("09:17");
        assertThat(line(RunField.OUT_AT)).isEqualTo("= 09:17");

        on(SATURDAY);
        pick(RunField.PLANNED, "Practice 2");
        assertThat(model.text(RunField.OUT_AT)).isEqualTo("11:30");
    }

    @Test
    void a_race_brings_its_start_and_its_day() {
        on(SATURDAY.plusDays(1));
        assertThat(shown(RunField.PLANNED)).isEqualTo("Race 1");
        assertThat(model.text(RunField.RACE_STARTS)).isEqualTo("1");

        pick(RunField.PLANNED, "Qualifying");
        assertThat(model.text(RunField.RACE_STARTS)).isEqualTo("0");
        assertThat(model.text(RunField.DATE)).isEqualTo("Sat 25 Jul 2026");
        assertThat(model.text(RunField.OUT_AT)).isEqualTo("14:30");
    }

    @Test
    void another_date_brings_the_event_of_that_day() {
        on(SATURDAY);
        model.type(RunField.DATE, "22/7");
        assertThat(shown(RunField.EVENT)).isEqualTo("Round 6, Thornacre");
        model.leave(RunField.DATE);
        assertThat(shown(RunField.EVENT)).isEqualTo("none");
        assertThat(line(RunField.DATE)).isEqualTo("= Wed 22 Jul 2026, 3 days ago");
        assertThat(shown(RunField.PLANNED)).isEqualTo("Test");
    }

    @Test
    void an_event_that_is_over_brings_its_last_day() {
        pick(RunField.EVENT, "Round 5, Pellow Ridge");
        assertThat(model.text(RunField.DATE)).isEqualTo("Sun 5 Jul 2026");
        assertThat(line(RunField.PLANNED)).isEqualTo("timetable all logged");
    }

    @Test
    void arrow_keys_step_a_day_or_five_minutes() {
        on(SATURDAY);
        model.step(RunField.DATE, -1);
        assertThat(model.text(RunField.DATE)).isEqualTo("Fri 24 Jul 2026");
        model.step(RunField.DATE, 1);
        assertThat(model.text(RunField.DATE)).isEqualTo("Sat 25 Jul 2026");
        put(RunField.OUT_AT, "09:02");
        model.step(RunField.OUT_AT, 1);
        assertThat(model.text(RunField.OUT_AT)).isEqualTo("09:05");
        model.step(RunField.OUT_AT, 1);
        assertThat(model.text(RunField.OUT_AT)).isEqualTo("09:10");
        put(RunField.OUT_AT, "09:02");
        model.step(RunField.OUT_AT, -1);
        assertThat(model.text(RunField.OUT_AT)).isEqualTo("09:00");
        put(RunField.OUT_AT, "00:00");
        model.step(RunField.OUT_AT, -1);
        assertThat(model.text(RunField.OUT_AT)).isEqualTo("23:55");
    }

    @Test
    void now_goes_in_only_when_somebody_asks_for_it() {
        on(SATURDAY);
        model.outNow();
        assertThat(model.text(RunField.OUT_AT)).isEqualTo("09:41");
    }

    @Test
    void a_cleared_sheet_can_be_put_back_once() {
        put(RunField.RUNNING, "28:20");
        put(RunField.WATER, "hot");
        Map<RunField, String> before = model.texts();

        model.clear(sheet.fresh(null));
        assertThat(model.isDirty()).isFalse();
        assertThat(model.text(RunField.WATER)).isEmpty();
        assertThat(level(RunField.WATER)).isEqualTo(FieldLine.Level.NOTE);

        assertThat(model.canPutBack()).isTrue();
        model.putBack();
        assertThat(model.texts()).isEqualTo(before);
        assertThat(level(RunField.WATER)).isEqualTo(FieldLine.Level.STOP);
        assertThat(model.canPutBack()).isFalse();
    }

    @Test
    void what_was_typed_since_it_was_cleared_is_put_back_in_its_turn() {
        put(RunField.RUNNING, "28:20");
        model.clear(sheet.fresh(null));
        put(RunField.RUNNING, "11:05");
        model.putBack();
        assertThat(model.text(RunField.RUNNING)).isEqualTo("28:20");
        assertThat(model.canPutBack()).isTrue();
        model.putBack();
        assertThat(model.text(RunField.RUNNING)).isEqualTo("11:05");
    }

    @Test
    void after_saving_the_sheet_moves_on_and_takes_later_keys_along() {
        put(RunField.RUNNING, "28:20");
        Map<RunField, String> saved = model.texts();
        model.type(RunField.LAPS, "1");

        model.moveOn(saved, sheet.fresh(null));

        assertThat(model.text(RunField.RUNNING)).isEmpty();
        assertThat(model.text(RunField.LAPS)).isEqualTo("1");
        assertThat(model.stopped()).isEmpty();
        assertThat(model.firstEmpty()).isEqualTo(RunField.RUNNING);
    }

    @Test
    void a_run_that_overlaps_another_is_stopped_as_a_whole() {
        on(SampleBook.OPENING);
        pick(RunField.CAR, "41, engine K03");
        put(RunField.DATE, "5 Jul");
        put(RunField.OUT_AT, "15:10");
        put(RunField.RUNNING, "20");

        assertThat(model.wholeRun()).extracting(problem -> problem.kind()).contains(ProblemKind.RUNS_OVERLAP);
        assertThat(words.sentence(model.wholeRun().get(0))).startsWith("Engine K03 was already out on Race 2");
        assertThat(words.line(model.line(RunField.OUT_AT))).startsWith("Still out on Race 2, to 15:");
        assertThat(model.ask()).isFalse();
        assertThat(model.stopped()).as("it is put right there").containsExactly(RunField.OUT_AT);
        assertThat(model.text(RunField.RUNNING)).isEqualTo("20");
    }

    /** Race 2 of round 5, car 41: out at 15:00 for 1662 s. */
    @Test
    void a_run_that_may_be_another_again_is_said_so_and_saves() {
        pick(RunField.CAR, "41, engine K03");
        put(RunField.DATE, "5 Jul");
        put(RunField.OUT_AT, "15:00");
        put(RunField.RUNNING, "27:42");

        assertThat(model.wholeRun())
                .extracting(problem -> problem.kind())
                .containsExactly(ProblemKind.PERHAPS_SAME_RUN);
        assertThat(model.ask()).isTrue();
        var before = book.view().ledger();
        assertThat(sheet.save(model.texts(), "again").didWork()).isTrue();
        var k03 = book.view()
                .facts()
                .of(witnessmark.domain.Engine.class)
                .named("K03")
                .orElseThrow()
                .id();
        assertThat(book.view()
                        .ledger()
                        .engineLife(k03, witnessmark.quantity.Counter.RUNNING)
                        .total())
                .isEqualTo(before.engineLife(k03, witnessmark.quantity.Counter.RUNNING)
                        .total());
    }

    /** K05 came out of car 57 and K06 went in on 27 June: before that day the car runs K05. */
    @Test
    void the_engine_is_the_one_that_was_in_the_car_then() {
        pick(RunField.CAR, "57, engine K06");
        put(RunField.DATE, "13 Jun");
        assertThat(line(RunField.CAR)).startsWith("K05 since");
    }

    @Test
    void what_the_run_does_is_dropped_when_the_sheet_has_changed_meanwhile() {
        put(RunField.RUNNING, "28:20");
        var asked = model.reading();
        var answer = sheet.does(asked);
        model.type(RunField.RUNNING, "28:30");

        model.does(asked, answer);

        assertThat(model.does()).isEmpty();
    }

    @Test
    void nothing_is_said_of_the_whole_run_on_a_sheet_nobody_typed_on() {
        assertThat(model.wholeRun()).isEmpty();
        assertThat(model.line(RunField.REMARKS).note().kind()).isEqualTo(Note.Kind.NONE);
    }
}
