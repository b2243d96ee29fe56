package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** What is wrong with a folder or a whole file is said with its place, and nothing of it is taken. */
class BadFolderTest extends ReadingTest {
    private static final int ROWS = SMALL_SEASON_ROWS;

    @Test
    void a_folder_that_is_not_there_is_named() {
        Path nowhere = place.resolve("nowhere");
        assertThat(folders.read(nowhere, Facts.none()))
                .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.NO_SUCH_FILE, nowhere.toString())));
    }

    @Test
    void a_file_or_a_folder_without_tables_is_no_season_folder() throws IOException {
        Path file = Files.writeString(place.resolve("file.csv"), "id\n");
        Path empty = Files.createDirectory(place.resolve("empty"));
        Path other = SeasonText.empty().text("stranger.csv", "a,b\n").in(place.resolve("other"));
        for (Path folder : List.of(file, empty, other)) {
            assertThat(folders.read(folder, Facts.none()))
                    .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.NOT_A_SEASON_FOLDER, folder.toString())));
        }
    }

    @Test
    void the_folder_inside_that_was_meant_is_named() {
        SeasonText.small().in(place.resolve("from the stick/season"));
        Path outer = place.resolve("from the stick");
        assertThat(folders.read(outer, Facts.none()))
                .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.SEASON_FOLDER_WITHIN, outer.toString(), "season")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "{|1|",
                "[]|0|format",
                "|0|format",
                "{\"format\": \"other\", \"version\": 1, \"rows\": {}}|0|format",
                "{\"format\": \"witness-mark season folder\", \"rows\": {}}|0|version",
                "{\"format\": \"witness-mark season folder\", \"version\": \"1\", \"rows\": {}}|0|version",
                "{\"format\": \"witness-mark season folder\", \"version\": 0, \"rows\": {}}|0|version",
                "{\"format\": \"witness-mark season folder\", \"version\": 1.5, \"rows\": {}}|0|version",
                "{\"format\": \"witness-mark season folder\", \"version\": 1}|0|rows",
                "{\"format\": \"witness-mark season folder\", \"version\": 1, \"rows\": []}|0|rows",
                "{\"version\": 1, \"version\": 1}|1|",
                "{} {}|1|",
            })
    void an_index_that_is_none_is_named_with_its_key(@Nullable String json, long line, @Nullable String key) {
        Path folder =
                SeasonText.small().text("season.json", json == null ? "" : json).in(place);
        assertThat(folders.read(folder, Facts.none()))
                .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.SEASON_INDEX_UNREADABLE, folder.toString())
                        .at(new Place("season.json", line, key))));
    }

    @Test
    void a_broken_index_is_named_with_its_line() {
        Path folder = SeasonText.small()
                .replace("season.json", "\"version\": 1,", "\"version\" 1,")
                .in(place);
        assertThat(folders.read(folder, Facts.none()))
                .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.SEASON_INDEX_UNREADABLE, folder.toString())
                        .at(new Place("season.json", 3, null))));
    }

    @Test
    void a_deeply_nested_index_is_refused() {
        Path folder = SeasonText.small()
                .text("season.json", "{\"rows\":".repeat(100_000))
                .in(place);
        assertThat(folders.read(folder, Facts.none()).problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.SEASON_INDEX_UNREADABLE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "99999999999999999999"})
    void a_newer_folder_is_left_to_a_newer_program(String version) {
        Path folder = SeasonText.small()
                .replace("season.json", "\"version\": 1", "\"version\": " + version)
                .in(place);
        assertThat(folders.read(folder, Facts.none()))
                .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.SEASON_FOLDER_NEWER, version, "1")
                        .at(new Place("season.json", 0, "version"))));
    }

    @Test
    void an_index_that_says_more_than_is_known_is_reported() {
        SeasonText season = SeasonText.small()
                .replace("season.json", "\"version\": 1,", "\"version\": 1, \"units\": \"old\",")
                .replace("season.json", "\"cars.csv\": 2", "\"cars.csv\": -2, \"../cars.csv\": 2");
        assertRead(
                season,
                ROWS,
                problem("season.json", 0, "units", ProblemKind.COLUMN_UNKNOWN, "units"),
                problem("season.json", 0, "cars.csv", ProblemKind.VALUE_UNREADABLE, "cars.csv", "-2", "90"),
                problem("season.json", 0, "../cars.csv", ProblemKind.FILE_UNKNOWN, "../cars.csv"));
    }

    @Test
    void a_file_that_is_listed_and_not_there_is_missing() {
        assertRead(
                SeasonText.small().without("told-running.csv"),
                ROWS - 1,
                problem("told-running.csv", 0, null, ProblemKind.FILE_MISSING, "told-running.csv"));
    }

    @Test
    void files_nobody_listed_are_reported_and_not_read() {
        SeasonText season = SeasonText.small()
                .replace("season.json", "\"told-running.csv\": 1,", "")
                .text("stranger.csv", "a,b\n1,2\n")
                .text("readme.txt", "by hand")
                .text("._cars.csv", "left by a system");
        assertRead(
                season,
                ROWS - 1,
                problem("stranger.csv", 0, null, ProblemKind.FILE_UNKNOWN, "stranger.csv"),
                problem("told-running.csv", 0, null, ProblemKind.FILE_UNKNOWN, "told-running.csv"));
    }

    @Test
    void a_folder_named_as_a_table_cannot_be_read() throws IOException {
        Path folder = SeasonText.small().without("told-running.csv").in(place);
        Files.createDirectory(folder.resolve("told-running.csv"));
        assertRead(
                folder,
                ROWS - 1,
                problem(
                        "told-running.csv",
                        0,
                        null,
                        ProblemKind.CANNOT_READ_FILE,
                        "told-running.csv",
                        "not a plain file"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "x-UTF-16LE-BOM"})
    void a_file_in_sixteen_bit_letters_is_in_the_wrong_encoding(String encoding) {
        String text = SeasonText.small().text("told-running.csv");
        assertRead(
                SeasonText.small().bytes("told-running.csv", text.getBytes(Charset.forName(encoding))),
                ROWS - 1,
                problem("told-running.csv", 0, null, ProblemKind.WRONG_ENCODING, "told-running.csv", "UTF-8"));
    }

    @Test
    void a_file_with_letters_of_another_encoding_is_named_with_their_line() {
        String text = SeasonText.small()
                .replace("limits.csv", "sheet of January", "Blatt für\n\nJänner")
                .text("limits.csv");
        assertRead(
                SeasonText.small().bytes("limits.csv", text.getBytes(StandardCharsets.ISO_8859_1)),
                ROWS - 1,
                problem("limits.csv", 2, null, ProblemKind.WRONG_ENCODING, "limits.csv", "UTF-8"));
        assertRead(
                SeasonText.small()
                        .bytes("limits.csv", text.replace("für", "fuer").getBytes(StandardCharsets.ISO_8859_1)),
                ROWS - 1,
                problem("limits.csv", 4, null, ProblemKind.WRONG_ENCODING, "limits.csv", "UTF-8"));
    }

    @Test
    void an_index_in_another_encoding_is_named_with_its_line() {
        byte[] latin = SeasonText.small()
                .text("season.json")
                .replace("team.csv", "jänner.csv")
                .getBytes(StandardCharsets.ISO_8859_1);
        Path folder = SeasonText.small().bytes("season.json", latin).in(place);
        assertThat(folders.read(folder, Facts.none()))
                .isEqualTo(Outcome.didNot(Problem.of(ProblemKind.WRONG_ENCODING, "season.json", "UTF-8")
                        .at(new Place("season.json", 5, null))));
    }

    private void assertRead(SeasonText season, int rows, Problem... problems) {
        assertRead(season.in(place.resolve("season")), rows, problems);
    }

    private void assertRead(Path folder, int rows, Problem... problems) {
        Outcome<List<Entry<?>>> read = folders.read(folder, Facts.none());
        assertThat(read.problems()).containsExactly(problems);
        assertThat(read.orThrow()).hasSize(rows);
    }
}
