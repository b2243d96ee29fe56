package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * One table of the sample season broken in one way: the cause is said first, what depends on it is counted. The counts
 * are held against the rows of the tables themselves, read by {@link Grid}: what is taken, what waits and what stood in
 * the broken table are all the rows there are.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WaitingRowsTest extends ReadingTest {
    private static final Path SAMPLE = Path.of(System.getProperty("project.basedir"), "sample-season");

    /** Ways in which nothing of a table can be read. */
    private enum Break {
        MISSING(SeasonText::without),
        UNKNOWN_COLUMN(
                (season, table) -> season.grid(table, grid -> grid.rows().get(0).set(1, "colour"))),
        STRAY_QUOTE((season, table) -> season.text(table, season.text(table) + "\"never closed\n")),
        WRONG_ENCODING(
                (season, table) -> season.bytes(table, (season.text(table) + "é").getBytes(StandardCharsets.UTF_16LE)));

        private final BiFunction<SeasonText, String, SeasonText> how;

        Break(BiFunction<SeasonText, String, SeasonText> how) {
            this.how = how;
        }
    }

    /** One for all: between two seasons only one table differs, and writing the others again takes far longer. */
    private ReusedFolder folder;

    @BeforeAll
    void share(@TempDir Path once) {
        folder = new ReusedFolder(once);
    }

    @Override
    Outcome<List<Entry<?>>> read(SeasonText season) {
        return folders.read(folder.show(season), Facts.none());
    }

    static Stream<Arguments> every_table_broken_in_every_way() {
        return tables(SeasonText.of(SAMPLE)).stream()
                .flatMap(table -> Stream.of(Break.values()).map(way -> Arguments.of(way, table)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("every_table_broken_in_every_way")
    void the_cause_comes_first_and_every_row_is_taken_or_counted_as_waiting_for_it(Break way, String table) {
        SeasonText season = SeasonText.of(SAMPLE);
        long all = tables(season).stream().mapToLong(each -> rows(season, each)).sum();
        long broken = rows(season, table);
        Outcome<List<Entry<?>>> read = read(way.how.apply(season, table));
        List<Problem> causes = read.problems().stream()
                .takeWhile(problem -> problem.kind() != ProblemKind.ROWS_WAIT)
                .toList();
        assertThat(causes).isNotEmpty().allMatch(problem -> table.equals(file(problem)));
        List<Problem> waiting =
                read.problems().subList(causes.size(), read.problems().size());
        assertThat(waiting)
                .allMatch(problem -> problem.kind() == ProblemKind.ROWS_WAIT)
                .allMatch(problem -> problem.facts().get(1).equals(table))
                .extracting(WaitingRowsTest::file)
                .doesNotHaveDuplicates();
        long waits = waiting.stream()
                .mapToLong(problem -> (Integer) problem.facts().get(0))
                .sum();
        assertThat(read.orThrow().size() + waits + broken).isEqualTo(all);
    }

    @Test
    void every_fitment_waits_for_the_parts() {
        SeasonText season = SeasonText.of(SAMPLE);
        int fitments = (int) rows(season, "fitments.csv");
        assertThat(read(season.without("parts.csv")).problems())
                .startsWith(problem("parts.csv", 0, null, ProblemKind.FILE_MISSING, "parts.csv"))
                .contains(problem("fitments.csv", 0, null, ProblemKind.ROWS_WAIT, fitments, "parts.csv"));
    }

    @Test
    void a_table_nobody_listed_is_missing_only_when_a_row_names_what_would_be_in_it() {
        SeasonText season = SeasonText.of(SAMPLE).handMade();
        int fitments = (int) rows(season, "fitments.csv");
        assertThat(read(season.without("parts.csv")).problems())
                .startsWith(problem("parts.csv", 0, null, ProblemKind.FILE_MISSING, "parts.csv"))
                .contains(problem("fitments.csv", 0, null, ProblemKind.ROWS_WAIT, fitments, "parts.csv"));
        SeasonText untold = SeasonText.small().handMade().without("told-running.csv");
        assertThat(folders.read(untold.in(place.resolve("untold")), Facts.none())
                        .problems())
                .isEmpty();
    }

    @Test
    void a_part_nobody_has_is_still_named_when_the_logbook_has_parts_and_the_folder_brings_none() {
        Facts known = Facts.none().with(read(SeasonText.small()).orThrow());
        SeasonText fitment = SeasonText.small().handMade().cell("fitments.csv", 1, "part", "RS-77");
        assertThat(folders.read(fitment.without("parts.csv").in(place.resolve("later")), known)
                        .problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.REFERENCE_UNKNOWN);
    }

    private static List<String> tables(SeasonText season) {
        return season.files().keySet().stream()
                .filter(file -> file.endsWith(".csv"))
                .toList();
    }

    private static long rows(SeasonText season, String table) {
        return Grid.parse(season.text(table)).filledRows();
    }

    private static String file(Problem problem) {
        return problem.place() == null ? "" : problem.place().file();
    }
}
