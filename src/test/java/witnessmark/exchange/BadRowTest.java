package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static witnessmark.outcome.ProblemKind.DUPLICATE;
import static witnessmark.outcome.ProblemKind.ID_UNREADABLE;
import static witnessmark.outcome.ProblemKind.REFERENCE_UNKNOWN;
import static witnessmark.outcome.ProblemKind.REFUSED_BY_LOGBOOK;
import static witnessmark.outcome.ProblemKind.ROWS_WAIT;
import static witnessmark.outcome.ProblemKind.TWO_READINGS;
import static witnessmark.outcome.ProblemKind.VALUE_UNREADABLE;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;

/** A bad row is left out with its line, its column and what is wrong with it; the good rows are taken. */
class BadRowTest extends ReadingTest {
    private static final String MOMENT = "2026-07-05T15:00:00+01:00[Europe/London]";

    /** The second run (line 4, since the first has a text of two lines) and the reading of each of its columns. */
    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "running_s|92:00|seconds: 1452 or 1452.5",
                "running_s|5520,5|seconds: 1452 or 1452.5",
                "running_s|5520.0001|seconds: 1452 or 1452.5",
                "running_s|-1|seconds: 1452 or 1452.5",
                "running_s|NaN|seconds: 1452 or 1452.5",
                "running_s|1e999999999|seconds: 1452 or 1452.5",
                "running_s|''|seconds: 1452 or 1452.5",
                "distance_km|33 km|kilometres: 39.8",
                "laps|15.0|12",
                "laps|9999999999|12",
                "highest_rpm|8,190|rpm: 8205",
                "oil_pressure_bar|4.6 bar|bar: 4.6",
                "oil_added_l|-0.2|litres: 0.2",
                "ambient_degc|-300|degrees Celsius: 84",
                "start|yesterday|" + MOMENT,
                "start|2026-02-30|" + MOMENT,
                "start|2026-02-17T25:00|" + MOMENT,
                "start|2026-02-17T10:00:00Z[Europe/Nowhere]|" + MOMENT,
                "start|2026-02-17T10:00:00.0001Z|" + MOMENT,
                "start|+999999999-12-31T23:59:59Z|" + MOMENT,
                "start|''|" + MOMENT,
                "kind|Race|practice, qualifying, race, test, dyno, warm-up, road, other",
                "start_known|now|timetable, trace, typed, estimate",
                "known_by|timed|running=timed;laps=trace",
                "known_by|running=guessed|running=timed;laps=trace",
                "known_by|speed=timed|running=timed;laps=trace",
                "highest_from|lap sheet|logger, tell-tale, driver",
                "driver_asked|''|said yes, said no, not asked",
                "engine|''|id or name",
                "standing|struck|in force, struck out, in conflict",
            })
    void a_value_that_cannot_be_read_is_named_with_the_form_expected(String column, String text, String form) {
        assertRead(
                SeasonText.small().cell("runs.csv", 2, column, text),
                rows(31),
                problem("runs.csv", 4, column, VALUE_UNREADABLE, column, text, form));
    }

    @ParameterizedTest
    @ValueSource(strings = {"31", "1-1-1-1-1", "01976c2e-0000-7000-8000-00000000003g"})
    void an_id_that_is_none_is_named(String text) {
        assertRead(
                SeasonText.small().cell("runs.csv", 2, "id", text),
                rows(31),
                problem("runs.csv", 4, "id", ID_UNREADABLE, text));
    }

    /** The first run has a text of two lines, so that the second is in line 4 of an editor and row 3 of a spreadsheet. */
    @Test
    void a_row_is_named_by_its_name_and_its_id_and_not_by_its_line_alone() {
        SeasonText season =
                SeasonText.small().cell("runs.csv", 2, "laps", "15.0").cell("timetables.csv", 2, "out", "late");
        assertThat(read(season).problems())
                .filteredOn(problem -> problem.kind() == VALUE_UNREADABLE)
                .extracting(problem -> Objects.requireNonNull(problem.place()))
                .extracting(Place::file, Place::row, Place::named)
                .containsExactly(
                        tuple("timetables.csv", 3L, "Race 1, 01976c2e-0000-7000-8000-000000000028"),
                        tuple("runs.csv", 4L, "Pulls, 01976c2e-0000-7000-8000-000000000031"));
    }

    @Test
    void other_forms_are_named_as_well() {
        assertRead(
                SeasonText.small()
                        .cell("team.csv", 1, "zone", "London")
                        .cell("positions.csv", 3, "needed", "perhaps")
                        .cell("parts.csv", 1, "bought_on", "2.11.2025")
                        .cell("timetables.csv", 2, "out", "half past nine")
                        .cell("limits.csv", 1, "counter", "hours")
                        .cell("run-ons.csv", 1, "up_to", "12"),
                rows(1, 9, 16, 21, 23, 24, 28, 33, 35, 43, 78, 113, 114, 115, 116, 117, 118, 119, 120, 121, 122),
                problem("team.csv", 2, "zone", VALUE_UNREADABLE, "zone", "London", "Europe/London"),
                problem("positions.csv", 4, "needed", VALUE_UNREADABLE, "needed", "perhaps", "yes or no"),
                problem("parts.csv", 2, "bought_on", VALUE_UNREADABLE, "bought_on", "2.11.2025", "2026-07-05"),
                problem("timetables.csv", 3, "out", VALUE_UNREADABLE, "out", "half past nine", "15:00"),
                problem(
                        "limits.csv",
                        2,
                        "counter",
                        VALUE_UNREADABLE,
                        "counter",
                        "hours",
                        "running, loaded, high speed, distance, laps, race starts, engine starts, heat cycles, pulls,"
                                + " over-revs, months, uses, torque cycles"),
                problem("run-ons.csv", 2, "up_to", VALUE_UNREADABLE, "up_to", "12", "12 h"),
                waiting("prior-lives.csv", 1, "parts.csv"),
                waiting("fitments.csv", 1, "parts.csv"),
                waiting("works.csv", 1, "parts.csv"),
                waiting("missed-runs.csv", 1, "timetables.csv"),
                waiting("missed-shares.csv", 1, "timetables.csv"),
                waiting("face-looks.csv", 1, "parts.csv"),
                waiting("face-points.csv", 2, "parts.csv"),
                waiting("face-lines.csv", 2, "parts.csv"),
                waiting("face-marks.csv", 2, "parts.csv"),
                waiting("skims.csv", 1, "parts.csv"),
                waiting("skim-passes.csv", 2, "parts.csv"));
    }

    @Test
    void every_bad_field_of_a_row_is_named() {
        assertRead(
                SeasonText.small()
                        .cell("runs.csv", 2, "kind", "pulls")
                        .cell("runs.csv", 2, "engine", "K99")
                        .cell("runs.csv", 2, "start", "Tuesday"),
                rows(31),
                problem("runs.csv", 4, "engine", REFERENCE_UNKNOWN, "engine", "K99", "engine"),
                problem(
                        "runs.csv",
                        4,
                        "kind",
                        VALUE_UNREADABLE,
                        "kind",
                        "pulls",
                        "practice, qualifying, race, test, dyno, warm-up, road, other"),
                problem("runs.csv", 4, "start", VALUE_UNREADABLE, "start", "Tuesday", MOMENT));
    }

    @ParameterizedTest
    @ValueSource(strings = {"K99", "K03/1", "01976c2e-0000-7000-8000-000000000099", "kilo"})
    void a_reference_to_nothing_is_named(String text) {
        assertRead(
                SeasonText.small().cell("runs.csv", 2, "engine", text),
                rows(31),
                problem("runs.csv", 4, "engine", REFERENCE_UNKNOWN, "engine", text, "engine"));
    }

    @Test
    void an_id_of_another_kind_is_no_reference() {
        assertRead(
                SeasonText.small().cell("runs.csv", 2, "engine", Folders.id(5)),
                rows(31),
                problem("runs.csv", 4, "engine", REFERENCE_UNKNOWN, "engine", Folders.id(5), "engine"));
    }

    @Test
    void a_name_that_means_two_rows_equally_well_is_named_with_both() {
        assertRead(
                SeasonText.small().cell("cars.csv", 2, "name", "4-1").cell("engines-in-cars.csv", 1, "car", "4 1"),
                rows(13),
                problem("engines-in-cars.csv", 2, "car", TWO_READINGS, "car", "4 1", Folders.id(5), Folders.id(6)));
    }

    @Test
    void the_second_row_with_an_id_is_left_out() {
        assertRead(
                SeasonText.small().cell("cars.csv", 2, "id", Folders.id(5)),
                rows(6),
                problem("cars.csv", 3, "id", DUPLICATE, Folders.id(5)));
    }

    @Test
    void the_second_row_in_force_with_a_name_is_left_out() {
        assertRead(
                SeasonText.small().cell("people.csv", 2, "name", "Mo").cell("runs.csv", 1, "driver", ""),
                rows(3),
                problem("people.csv", 3, "name", DUPLICATE, "Mo"));
        assertRead(
                SeasonText.small().cell("positions.csv", 2, "name", "rods").cell("positions.csv", 2, "kind", "rods"),
                rows(8),
                problem("positions.csv", 3, "name", DUPLICATE, "Four 16/rods"));
    }

    @Test
    void a_second_team_is_left_out() {
        assertRead(
                SeasonText.small().add("team.csv", ",Other Team,UTC,EUR,500,3000,7500,,"),
                rows(),
                problem("team.csv", 3, "name", DUPLICATE, "team"));
    }

    @Test
    void what_cannot_be_is_left_out_with_the_reason() {
        assertRead(
                SeasonText.small().cell("runs.csv", 2, "running_s", "0"),
                rows(31),
                problem(
                        "runs.csv",
                        4,
                        null,
                        REFUSED_BY_LOGBOOK,
                        "run",
                        "Pulls",
                        "a run lasts longer than nothing; one not taken is a missed run"));
        assertRead(
                SeasonText.small().cell("told-running.csv", 1, "likely_s", "60000"),
                rows(34),
                problem(
                        "told-running.csv",
                        2,
                        null,
                        REFUSED_BY_LOGBOOK,
                        "told_running",
                        "customer C1",
                        "likely hours lie between the lowest and the highest"));
    }

    @Test
    void rows_that_refer_to_a_row_left_out_wait_for_it_and_are_counted_by_file() {
        String designs = "engine-designs.csv";
        assertRead(
                SeasonText.small().cell("engine-designs.csv", 1, "cylinders", "four"),
                rows(
                        4, 7, 8, 10, 11, 12, 13, 22, 29, 23, 30, 31, 32, 33, 34, 35, 38, 39, 40, 54, 61, 62, 63, 64, 65,
                        78, 79, 101, 102, 103, 104, 105, 106, 107, 108, 110, 111, 112, 123, 124, 125, 127, 128, 129,
                        130, 131, 132, 133, 137, 139, 141, 142, 144, 145, 146),
                problem("engine-designs.csv", 2, "cylinders", VALUE_UNREADABLE, "cylinders", "four", "12"),
                waiting("positions.csv", 2, designs),
                waiting("engines.csv", 3, designs),
                waiting("engines-in-cars.csv", 1, designs),
                waiting("builds.csv", 1, designs),
                waiting("fitments.csv", 1, designs),
                waiting("entries.csv", 1, designs),
                waiting("runs.csv", 3, designs),
                waiting("missed-runs.csv", 1, designs),
                waiting("told-running.csv", 1, designs),
                waiting("limits.csv", 1, designs),
                waiting("readings.csv", 2, designs),
                waiting("over-revs.csv", 1, designs),
                waiting("parts-lists.csv", 1, designs),
                waiting("track-repairs.csv", 1, designs),
                waiting("build-proofs.csv", 1, designs),
                waiting("seals.csv", 1, designs),
                waiting("joints.csv", 1, designs),
                waiting("looks.csv", 1, designs),
                waiting("missed-shares.csv", 2, designs),
                waiting("size-limits.csv", 2, designs),
                waiting("measurements.csv", 3, designs),
                waiting("sign-offs.csv", 1, designs),
                waiting("signed-checks.csv", 2, designs),
                waiting("speed-figures.csv", 1, designs),
                waiting("face-outlines.csv", 1, designs),
                waiting("face-holes.csv", 2, designs),
                waiting("traces.csv", 1, designs),
                waiting("trace-marks.csv", 1, designs),
                waiting("logger-figures.csv", 1, designs),
                waiting("rev-exponents.csv", 1, designs),
                waiting("dyno-sheets.csv", 1, designs),
                waiting("dyno-points.csv", 1, designs),
                waiting("run-in-steps.csv", 1, designs),
                waiting("findings.csv", 3, designs),
                waiting("weighings.csv", 1, designs),
                waiting("actions-carried.csv", 1, designs),
                waiting("proofs-seen.csv", 1, designs),
                waiting("lessons.csv", 1, designs),
                waiting("lesson-answers.csv", 1, designs),
                waiting("photos.csv", 1, designs));
    }

    @Test
    void rows_that_refer_to_a_row_of_their_own_table_that_is_left_out_wait_for_it_too() {
        assertRead(
                SeasonText.small().cell("runs.csv", 1, "running_s", "?"),
                rows(30, 32, 40, 79, 124, 125, 129, 130, 131),
                problem("runs.csv", 2, "running_s", VALUE_UNREADABLE, "running_s", "?", "seconds: 1452 or 1452.5"),
                waiting("runs.csv", 1, "runs.csv"),
                waiting("over-revs.csv", 1, "runs.csv"),
                waiting("missed-shares.csv", 1, "runs.csv"),
                waiting("traces.csv", 1, "runs.csv"),
                waiting("trace-marks.csv", 1, "runs.csv"),
                waiting("dyno-sheets.csv", 1, "runs.csv"),
                waiting("dyno-points.csv", 1, "runs.csv"),
                waiting("run-in-steps.csv", 1, "runs.csv"));
    }

    @Test
    void a_row_with_a_fault_of_its_own_is_named_though_it_waits_as_well() {
        assertRead(
                SeasonText.small().cell("engines.csv", 2, "design", "nothing").cell("runs.csv", 2, "running_s", "?"),
                rows(
                        11, 22, 23, 29, 30, 31, 32, 33, 34, 38, 39, 40, 61, 62, 63, 64, 65, 78, 79, 103, 104, 105, 106,
                        107, 108, 124, 125, 129, 130, 131, 132, 133, 137, 139, 142, 144, 145, 146),
                problem("engines.csv", 3, "design", REFERENCE_UNKNOWN, "design", "nothing", "engine_design"),
                problem("runs.csv", 4, "running_s", VALUE_UNREADABLE, "running_s", "?", "seconds: 1452 or 1452.5"),
                waiting("builds.csv", 1, "engines.csv"),
                waiting("fitments.csv", 1, "engines.csv"),
                waiting("entries.csv", 1, "engines.csv"),
                waiting("runs.csv", 2, "engines.csv"),
                waiting("missed-runs.csv", 1, "engines.csv"),
                waiting("told-running.csv", 1, "engines.csv"),
                waiting("readings.csv", 2, "engines.csv"),
                waiting("over-revs.csv", 1, "engines.csv"),
                waiting("track-repairs.csv", 1, "engines.csv"),
                waiting("build-proofs.csv", 1, "engines.csv"),
                waiting("seals.csv", 1, "engines.csv"),
                waiting("joints.csv", 1, "engines.csv"),
                waiting("looks.csv", 1, "engines.csv"),
                waiting("missed-shares.csv", 2, "engines.csv"),
                waiting("measurements.csv", 3, "engines.csv"),
                waiting("sign-offs.csv", 1, "engines.csv"),
                waiting("signed-checks.csv", 2, "engines.csv"),
                waiting("traces.csv", 1, "engines.csv"),
                waiting("trace-marks.csv", 1, "engines.csv"),
                waiting("dyno-sheets.csv", 1, "engines.csv"),
                waiting("dyno-points.csv", 1, "engines.csv"),
                waiting("run-in-steps.csv", 1, "engines.csv"),
                waiting("findings.csv", 3, "engines.csv"),
                waiting("weighings.csv", 1, "engines.csv"),
                waiting("actions-carried.csv", 1, "engines.csv"),
                waiting("proofs-seen.csv", 1, "engines.csv"),
                waiting("lesson-answers.csv", 1, "engines.csv"),
                waiting("photos.csv", 1, "engines.csv"));
    }

    @Test
    void rows_that_refer_to_each_other_in_a_circle_are_left_out() {
        assertRead(
                SeasonText.small()
                        .cell("runs.csv", 1, "perhaps_same", Folders.id(32))
                        .cell("runs.csv", 2, "perhaps_same", Folders.id(31)),
                rows(30, 31, 32, 40, 79, 124, 125, 129, 130, 131),
                unknown("runs.csv", 2, "perhaps_same", Folders.id(32), "run"),
                unknown("runs.csv", 4, "perhaps_same", Folders.id(31), "run"),
                unknown("runs.csv", 5, "perhaps_same", Folders.id(30), "run"),
                unknown("over-revs.csv", 2, "run", Folders.id(30), "run"),
                unknown("missed-shares.csv", 3, "run", Folders.id(30), "run"),
                unknown("traces.csv", 2, "run", Folders.id(30), "run"),
                unknown("dyno-sheets.csv", 2, "run", Folders.id(30), "run"),
                unknown("run-in-steps.csv", 2, "run", Folders.id(30), "run"),
                waiting("trace-marks.csv", 1, "traces.csv"),
                waiting("dyno-points.csv", 1, "dyno-sheets.csv"));
    }

    @Test
    void a_long_text_is_not_repeated_whole() {
        assertThat(read(SeasonText.small().cell("runs.csv", 2, "laps", "9".repeat(900_000)))
                        .problems())
                .containsExactly(problem("runs.csv", 4, "laps", VALUE_UNREADABLE, "laps", "9".repeat(200) + "…", "12"));
    }

    private static Problem waiting(String file, int rows, String cause) {
        return problem(file, 0, null, ROWS_WAIT, rows, cause);
    }

    private static Problem unknown(String file, long line, String column, String text, String kind) {
        return problem(file, line, column, REFERENCE_UNKNOWN, column, text, kind);
    }
}
