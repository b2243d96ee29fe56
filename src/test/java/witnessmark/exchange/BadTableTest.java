package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.outcome.ProblemKind.CANNOT_READ_FILE;
import static witnessmark.outcome.ProblemKind.COLUMN_MISSING;
import static witnessmark.outcome.ProblemKind.COLUMN_UNKNOWN;
import static witnessmark.outcome.ProblemKind.DUPLICATE;
import static witnessmark.outcome.ProblemKind.FILE_CUT_SHORT;
import static witnessmark.outcome.ProblemKind.QUOTES_ASTRAY;
import static witnessmark.outcome.ProblemKind.ROWS_WAIT;
import static witnessmark.outcome.ProblemKind.ROW_LENGTH;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;

/** A table whose form is wrong is left out as a whole, or row by row where only rows are wrong. */
class BadTableTest extends ReadingTest {
    private static final String TOLD = "told-running.csv";
    private static final int TOLD_ROW = 34;

    @Test
    void a_column_nobody_knows_keeps_the_table_out() {
        assertRead(
                SeasonText.small().replace(TOLD, "told_by", "told_bye"),
                rows(TOLD_ROW),
                problem(TOLD, 1, "told_bye", COLUMN_UNKNOWN, "told_bye"),
                problem(TOLD, 1, "told_by", COLUMN_MISSING, "told_by"));
    }

    static Stream<String> columns_of_told_running() {
        return Heading.of(RecordTypes.named("told_running").orElseThrow()).stream();
    }

    @ParameterizedTest
    @MethodSource("columns_of_told_running")
    void a_listed_table_needs_every_column(String column) {
        assertRead(
                SeasonText.small().withoutColumn(TOLD, column),
                rows(TOLD_ROW),
                problem(TOLD, 1, column, COLUMN_MISSING, column));
    }

    @Test
    void a_column_that_stands_twice_keeps_the_table_out() {
        SeasonText season = SeasonText.small().grid(TOLD, grid -> grid.rows().forEach(row -> row.add(row.get(1))));
        assertRead(season, rows(TOLD_ROW), problem(TOLD, 1, "engine", DUPLICATE, "engine"));
    }

    @Test
    void a_row_with_too_many_or_too_few_fields_is_left_out_by_its_line() {
        SeasonText season = SeasonText.small().grid("runs.csv", grid -> {
            grid.rows().get(2).remove(5);
            grid.rows().get(3).add("more");
        });
        assertRead(
                season,
                rows(31, 32),
                problem("runs.csv", 4, null, ROW_LENGTH, 37, 38),
                problem("runs.csv", 5, null, ROW_LENGTH, 39, 38));
    }

    @Test
    void a_quote_that_is_never_closed_keeps_the_table_out() {
        assertRead(
                SeasonText.small().replace(TOLD, "customer C1", "\"customer C1"),
                rows(TOLD_ROW),
                problem(TOLD, 2, null, QUOTES_ASTRAY, TOLD));
    }

    @Test
    void letters_after_a_closing_quote_keep_the_table_out() {
        assertRead(
                SeasonText.small().replace(TOLD, "customer C1", "\"customer\" C1"),
                rows(TOLD_ROW),
                problem(TOLD, 2, null, QUOTES_ASTRAY, TOLD));
    }

    @Test
    void a_field_longer_than_anybody_types_keeps_the_table_out() {
        SeasonText season = SeasonText.small().replace(TOLD, "lap sheets", "x".repeat(3_000_000));
        Outcome<List<Entry<?>>> read = read(season);
        assertThat(read.problems()).hasSize(1);
        assertThat(read.problems().get(0).kind()).isEqualTo(CANNOT_READ_FILE);
        assertThat(read.problems().get(0).place()).isEqualTo(new Place(TOLD, 2, null));
        assertThat(read.orThrow()).hasSize(SMALL_SEASON_ROWS - 1);
    }

    @Test
    void a_row_with_more_fields_than_any_table_has_keeps_the_table_out() {
        Outcome<List<Entry<?>>> read = read(SeasonText.small().replace(TOLD, "lap sheets", ",".repeat(100_000)));
        assertThat(read.problems()).extracting(Problem::kind).containsExactly(CANNOT_READ_FILE);
        assertThat(read.problems().get(0).place()).isEqualTo(new Place(TOLD, 2, null));
    }

    @Test
    void a_table_with_fewer_rows_than_the_index_says_is_cut_short() {
        assertRead(
                SeasonText.small().grid("runs.csv", grid -> grid.rows().remove(3)),
                rows(30, 31, 32, 40, 79, 124, 125, 129, 130, 131),
                problem("runs.csv", 0, null, FILE_CUT_SHORT, 2, 3),
                problem("over-revs.csv", 0, null, ROWS_WAIT, 1, "runs.csv"),
                problem("missed-shares.csv", 0, null, ROWS_WAIT, 1, "runs.csv"),
                problem("traces.csv", 0, null, ROWS_WAIT, 1, "runs.csv"),
                problem("trace-marks.csv", 0, null, ROWS_WAIT, 1, "runs.csv"),
                problem("dyno-sheets.csv", 0, null, ROWS_WAIT, 1, "runs.csv"),
                problem("dyno-points.csv", 0, null, ROWS_WAIT, 1, "runs.csv"),
                problem("run-in-steps.csv", 0, null, ROWS_WAIT, 1, "runs.csv"));
    }

    @Test
    void a_table_with_nothing_in_it_is_cut_short() {
        assertRead(SeasonText.small().text(TOLD, ""), rows(TOLD_ROW), problem(TOLD, 0, null, FILE_CUT_SHORT, 0, 1));
    }

    @Test
    void a_table_that_ends_inside_its_last_field_is_cut_short() {
        SeasonText season = SeasonText.small().cell(TOLD, 1, "standing", "struck out");
        season.cell(TOLD, 1, "struck_because", "told of another engine");
        String whole = season.text(TOLD);
        assertRead(season, rows());
        for (int end = whole.length() - 1; end > whole.indexOf("told of") + 1; end--) {
            assertRead(
                    season.text(TOLD, whole.substring(0, end)),
                    rows(TOLD_ROW),
                    problem(TOLD, 2, null, FILE_CUT_SHORT, 0, 1));
        }
    }

    @ParameterizedTest(name = "all but the last {0} letters")
    @ValueSource(ints = {2, 3, 4, 10, 20, 60, 150, 200})
    void a_table_that_ends_early_is_never_read_as_if_it_were_whole(int missing) {
        SeasonText season = SeasonText.small();
        String whole = season.text(TOLD);
        Outcome<List<Entry<?>>> read = read(season.text(TOLD, whole.substring(0, whole.length() - missing)));
        assertThat(read.problems()).isNotEmpty();
        assertThat(ids(read.orThrow())).doesNotContain(Folders.id(TOLD_ROW));
    }

    @Test
    void a_last_line_that_lost_only_its_end_is_whole() {
        SeasonText season = SeasonText.small();
        String whole = season.text(TOLD);
        assertRead(season.text(TOLD, whole.substring(0, whole.length() - 1)), rows());
    }

    @Test
    void rows_added_by_hand_are_read_whatever_the_index_says() {
        SeasonText season = SeasonText.small().add("cars.csv", ",99,new,,");
        Outcome<List<Entry<?>>> read = read(season);
        assertThat(read.problems()).isEmpty();
        assertThat(read.orThrow()).hasSize(SMALL_SEASON_ROWS + 1);
    }

    @Test
    void after_a_thousand_problems_nothing_is_taken() {
        String row = SeasonText.small().text(TOLD).lines().toList().get(1);
        SeasonText season = SeasonText.small();
        for (int i = 0; i < 1_200; i++) {
            season.add("people.csv", "bad id,Jo " + i + ",none,,");
        }
        season.add(TOLD, row);
        Outcome<List<Entry<?>>> read = read(season);
        assertThat(read.didWork()).isFalse();
        assertThat(read.problems()).hasSize(1_000);
        assertThat(read.problems().get(999).place()).isEqualTo(new Place("people.csv", 1_003, "id"));
    }
}
