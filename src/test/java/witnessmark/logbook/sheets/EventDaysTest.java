package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Event;
import witnessmark.domain.PlannedRun;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** The days of an event and what hangs on them, written and corrected on sheets. Tuesday 10 March 2026 is today. */
class EventDaysTest {
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

    private void round(String first, String last) {
        own.save(
                        new AddEvent(),
                        "name",
                        "Round 1",
                        "first_day",
                        first,
                        "last_day",
                        last,
                        "timetable",
                        "P1 Sat 09:00 25 min\nRace 1 Sun 15:00 40 min")
                .orThrow();
    }

    private WrittenSheet<Event> open() {
        return own.sheets.open(own.the(Event.class, "Round 1"), List.of(), LocalDate::toString);
    }

    private static Map<SheetField, String> typed(WrittenSheet<?> sheet, String... fields) {
        Map<SheetField, String> typed = new HashMap<>(sheet.texts());
        for (int i = 0; i < fields.length; i += 2) {
            typed.put(OwnLogbook.field(sheet.sheet(), fields[i]), fields[i + 1]);
        }
        return typed;
    }

    private List<String> timetable() {
        return own.desk.view().facts().of(PlannedRun.class).where(planned -> true).stream()
                .map(planned -> planned.fact().name() + " " + planned.fact().day())
                .toList();
    }

    @Test
    void a_timetable_moves_along_with_its_event_says_so_before_and_is_taken_back_with_it() {
        round("Sat 14 Mar", "Sun 15 Mar");
        WrittenSheet<Event> sheet = open();
        Map<SheetField, String> moved = typed(sheet, "firstDay", "21 Mar", "lastDay", "22 Mar");
        assertThat(sheet.read(moved).of(OwnLogbook.field(sheet.sheet(), "name")).note())
                .isEqualTo(SheetNote.echo("runs_move_along", 2));
        sheet.save(moved, "a week later").orThrow();
        assertThat(timetable()).containsExactly("Practice 1 2026-03-21", "Race 1 2026-03-22");
        own.desk.undo().orThrow();
        assertThat(timetable()).containsExactly("Practice 1 2026-03-14", "Race 1 2026-03-15");
        assertThat(own.the(Event.class, "Round 1").fact().firstDay()).isEqualTo(LocalDate.of(2026, 3, 14));
    }

    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource({"14 Mar, 14 Mar", "15 Mar, 15 Mar", "20 Mar, 22 Mar"})
    void days_that_leave_a_run_out_are_refused_as_where_the_event_is_added(String first, String last) {
        round("Sat 14 Mar", "Sun 15 Mar");
        WrittenSheet<Event> sheet = open();
        Outcome<Optional<Written>> outcome = sheet.save(typed(sheet, "firstDay", first, "lastDay", last), "by hand");
        assertThat(outcome.problems()).extracting(Problem::kind).containsExactly(ProblemKind.OUTSIDE_EVENT);
        assertThat(own.the(Event.class, "Round 1").fact().firstDay()).isEqualTo(LocalDate.of(2026, 3, 14));
    }

    @Test
    void more_days_are_no_matter_and_neither_is_a_run_moved_within_them() {
        round("Sat 14 Mar", "Sun 15 Mar");
        WrittenSheet<Event> sheet = open();
        sheet.save(typed(sheet, "firstDay", "13 Mar"), "a day more").orThrow();
        assertThat(timetable()).containsExactly("Practice 1 2026-03-14", "Race 1 2026-03-15");
        WrittenSheet<PlannedRun> run =
                own.sheets.open(own.the(PlannedRun.class, "Practice 1"), List.of(), LocalDate::toString);
        assertThat(run.save(typed(run, "day", "12 Mar"), "by hand").problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.OUTSIDE_EVENT);
        run.save(typed(run, "day", "fri"), "by hand").orThrow();
        assertThat(timetable()).containsExactly("Practice 1 2026-03-13", "Race 1 2026-03-15");
    }

    @ParameterizedTest(name = "{0} to {1}, truck {2}")
    @CsvSource({
        "sat, sun, fri, 2026-03-14, 2026-03-15, 2026-03-13",
        "mon, mon, sun, 2026-03-16, 2026-03-16, 2026-03-15",
        "tue, wed, tue, 2026-03-10, 2026-03-11, 2026-03-10",
        "sat, mon, wed, 2026-03-14, 2026-03-16, 2026-03-11",
        "28 Mar, sun, thu, 2026-03-28, 2026-03-29, 2026-03-26"
    })
    void a_weekday_alone_is_the_one_to_come_and_the_trucks_the_one_before_the_event(
            String first, String last, String truck, LocalDate firstDay, LocalDate lastDay, LocalDate leaves) {
        own.save(new AddEvent(), "name", "Round 1", "first_day", first, "last_day", last, "truck", truck)
                .orThrow();
        Event event = own.the(Event.class, "Round 1").fact();
        assertThat(event.firstDay()).isEqualTo(firstDay);
        assertThat(event.lastDay()).isEqualTo(lastDay);
        assertThat(event.truckLeaves().day()).isEqualTo(leaves);
    }

    @Test
    void what_can_hardly_be_meant_is_asked_beside_its_field_and_saved_all_the_same() {
        Map<SheetField, String> typed = own.filled(
                new AddEvent(),
                "name",
                "Round 1",
                "first_day",
                "sat",
                "last_day",
                "sun",
                "truck",
                "15 Mar",
                "timetable",
                "P1 Sat 09:00 25 min\nP2 Sat 09:20 25 min");
        assertThat(own.sheets.check(own.sheets.read(new AddEvent(), typed)))
                .extracting(
                        found -> found.problem().kind() + " " + found.field().key())
                .containsExactlyInAnyOrder("TRUCK_AFTER_BEGIN truck", "PLANNED_RUNS_OVERLAP timetable");
        own.sheets.save(new AddEvent(), typed, "by hand").orThrow();
        assertThat(timetable()).hasSize(2);
    }
}
