package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.sample.PlacedBook;

/**
 * Folders made by hand in which one figure cannot be, beside an engine that was built from 2 to 9 March 2026 and is open
 * again since 1 June.
 */
class ImpossibleFiguresTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String BUILDS = "engine,number,zones,opened,closed,signed_by,note\n";

    private static final String RUNS =
            "engine,kind,name,start,start_known,running_s,known_by,highest_rpm,laps,driver_asked,remarks,as_typed,queried\n";

    @TempDir
    private Path folder;

    private Shell shell;
    private String book;
    private Path season;

    /** Taken in once; each test works on a copy. */
    private static PlacedBook taken;

    @BeforeAll
    static void an_engine_with_two_builds(@TempDir Path once) throws IOException {
        Shell shell = new Shell(once);
        String book = shell.path("team.witness").toString();
        assertThat(shell.run("new", book, "--team", "Ours", "--zone", "Europe/London")
                        .code())
                .isZero();
        begin(Files.createDirectory(shell.path("season")));
        assertThat(shell.run("import", book, shell.path("season").toString())).satisfies(ran -> {
            assertThat(ran.err()).isEmpty();
            assertThat(ran.code()).isZero();
        });
        Path alone = Files.createDirectory(once.resolve("taken"));
        Files.move(once.resolve("data"), alone.resolve("data"));
        taken = PlacedBook.takenFrom(alone, Files.move(once.resolve("team.witness"), alone.resolve("team.witness")));
    }

    @BeforeEach
    void a_copy() throws IOException {
        shell = new Shell(folder);
        book = shell.path("team.witness").toString();
        taken.put(folder, shell.path("team.witness"));
        season = Files.createDirectory(shell.path("season"));
        begin(season);
    }

    private static void begin(Path season) throws IOException {
        Files.writeString(
                season.resolve("engine-designs.csv"),
                "name,cylinders,layout,red_line_rpm,over_rev_above_rpm,note\nFour,4,,8200,8500,\n");
        Files.writeString(season.resolve("engines.csv"), "number,design,owner,note\nE1,Four,,\n");
        Files.writeString(
                season.resolve("builds.csv"),
                BUILDS + "E1,1,head,2026-03-02T09:00,2026-03-09T18:00,,\nE1,2,head,2026-06-01T09:00,,,\n");
    }

    @ParameterizedTest(name = "{0} at {1} rpm: {2} {3}")
    @CsvSource({
        "2026-04-05T10:00, 8000, '', ''",
        "2026-02-05T10:00, 8000, RUN_BEFORE_FIRST_BUILD, start",
        "2026-03-05T10:00, 8000, BUILD_OPEN, start",
        "2026-06-05T10:00, 8000, BUILD_OPEN, start",
        "2026-04-05T10:00, 9999999, OUT_OF_RANGE, highest_rpm",
        "2026-04-05T10:00, 82, OUT_OF_RANGE, highest_rpm",
    })
    void a_run(String start, String highest, String kind, String column) throws IOException {
        table(
                "runs.csv",
                RUNS + "E1,dyno,pulls," + start + ",typed,1800,running=timed," + highest + ",,not asked,,,\n");
        found(kind, "runs.csv", 2, column, kind.equals("OUT_OF_RANGE"));
    }

    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource({
        "2026-03-10T09:00, 2026-03-12T09:00, ''",
        "2026-03-09T18:00, 2026-03-12T09:00, ''",
        "2026-03-05T09:00, 2026-03-12T09:00, BUILDS_OVERLAP",
        "2026-02-05T09:00, 2026-03-03T09:00, BUILDS_OVERLAP",
        "2026-03-10T09:00, '', BUILDS_OVERLAP",
        "2026-07-01T09:00, 2026-07-02T09:00, BUILDS_OVERLAP"
    })
    void a_build(String opened, String closed, String kind) throws IOException {
        builds("E1,3,head," + opened + "," + closed + ",,\n");
        found(kind, "builds.csv", 2, "opened", true);
    }

    @ParameterizedTest(name = "{0} off, {1} left: {2}")
    @CsvSource({
        "0.06, 118, ''",
        "500, 118, removed_mm",
        "-0.05, 118, removed_mm",
        "0, 118, removed_mm",
        "0.06, 0, left_mm",
        "0.06, 11800, left_mm"
    })
    void a_skim(String removed, String left, String column) throws IOException {
        table(
                "works.csv",
                "kind,at,engine,result,removed_mm,left_mm,by,note\nskim,2026-03-05,E1,done," + removed + "," + left
                        + ",,\n");
        found(column.isEmpty() ? "" : "OUT_OF_RANGE", "works.csv", 2, column, true);
    }

    @ParameterizedTest(name = "{0} h likely, {1} h at most in one week: {2}")
    @CsvSource({"3, 168, ''", "3, 169, TOLD_LONGER_THAN_TIME", "900, 900, TOLD_LONGER_THAN_TIME"})
    void hours_told_in_a_week(long likely, long most, String kind) throws IOException {
        table(
                "told-running.csv",
                "engine,from,to,likely_s,lowest_s,highest_s,told_by,how_he_knows\nE1,2026-01-10T12:00,2026-01-17T12:00,"
                        + likely * 3600 + ",3600," + most * 3600 + ",a mechanic,his book\n");
        found(kind, "told-running.csv", 2, "highest_s", true);
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "8200, 8500, ''",
        "9999999, 8500, red_line_rpm",
        "8200, 85000, over_rev_above_rpm",
        "82, 8500, red_line_rpm"
    })
    void a_limiter(String limiter, String overRev, String column) throws IOException {
        Files.delete(season.resolve("engines.csv"));
        Files.delete(season.resolve("builds.csv"));
        table(
                "engine-designs.csv",
                "name,cylinders,layout,red_line_rpm,over_rev_above_rpm,note\nOther,4,," + limiter + "," + overRev
                        + ",\n");
        found(column.isEmpty() ? "" : "OUT_OF_RANGE", "engine-designs.csv", 2, column, true);
    }

    /** A sentence says what is possible, so that a slip is put right at once. */
    @Test
    void the_sentence_names_the_figure_and_its_bounds() throws IOException {
        table("works.csv", "kind,at,engine,result,removed_mm,by,note\nskim,2026-03-05,E1,done,500,,\n");
        assertThat(shell.run("import", book, season.toString()).err())
                .contains(
                        "works.csv, line 2, column removed_mm: 500.00 mm lies outside what Taken off can be",
                        "0.001 mm to 10.00 mm");
    }

    private void found(String kind, String file, int row, String column, boolean stops) throws IOException {
        Shell.Ran ran = shell.run("import", book, season.toString(), "--json");
        JsonNode answer = JSON.readTree(ran.out());
        if (kind.isEmpty()) {
            assertThat(answer.get("found")).as(ran.out()).isEmpty();
            assertThat(answer.get("rows").asInt()).isEqualTo(1);
            return;
        }
        assertThat(answer.get("found")).as(ran.out()).hasSize(1);
        JsonNode problem = answer.get("found").get(0);
        assertThat(problem.get("kind").asText()).isEqualTo(kind);
        assertThat(problem.get("file").asText()).isEqualTo(file);
        assertThat(problem.get("row").asInt()).isEqualTo(row);
        assertThat(problem.get("column").asText()).isEqualTo(column);
        assertThat(problem.get("stops").asBoolean()).isEqualTo(stops);
        assertThat(answer.get("worked").asBoolean()).isNotEqualTo(stops);
    }

    private void builds(String rows) throws IOException {
        table("builds.csv", BUILDS + rows);
    }

    private void table(String name, String text) throws IOException {
        Files.writeString(season.resolve(name), text);
    }
}
