package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.report.PdfText;

/** What was found when engines of the invented season were opened (design 06, tables 14.11 and 14.12), from the command line. */
class StripOfTest {
    @TempDir
    private static Path folder;

    private static Shell shell = new Shell(Path.of(""));
    private static String book = "";

    @BeforeAll
    static void read() {
        shell = new Shell(folder);
        book = shell.sampleBook();
    }

    @Test
    void shell_3_stands_alone_in_april_and_its_back_was_without_a_mark_in_winter() {
        assertThat(shell.run("strip", book, "K05", "--build", "2").out())
                .contains("K05, build 2", "Opened Wed 15 Apr 2026 at 6.08 h")
                .contains("Clear or worse: Big-end shell, upper 3")
                .contains(
                        "3: fretted, light, in the middle, middle of its width: its back polished brown; noted, not followed up")
                .contains("Before, build 1: no mark, as it should be.");
    }

    @Test
    void the_last_opened_is_told_where_none_is_named_and_one_that_is_not_there_is_refused() {
        assertThat(shell.run("strip", book, "K05").out()).contains("K05, build 3", "3: spun, failed");
        Shell.Ran none = shell.run("strip", book, "K05", "--build", "9");

        assertThat(none.code()).isEqualTo(1);
        assertThat(none.err()).contains("K05/9");
    }

    @Test
    void it_is_printed_with_every_position_and_its_pages_are_counted() throws IOException {
        Path file = folder.resolve("strip.pdf");
        assertThat(shell.run("strip", book, "K05", "--build", "2", "--print", file.toString())
                        .out())
                .contains("2 pages", file.toString());
        assertThat(PdfText.of(Files.readAllBytes(file)).solid())
                .contains(PdfText.solid("Strip report of K05, build 2"));
        JsonNode root = new ObjectMapper()
                .readTree(shell.run("strip", book, "K05", "--print", file.toString(), "--json")
                        .out());
        assertThat(root.get("pages").asInt()).isEqualTo(6);
        assertThat(PdfText.of(Files.readAllBytes(file)).solid())
                .contains(PdfText.solid("Strip report of K05, build 3"));
    }

    @Test
    void every_position_is_in_the_json_with_what_its_part_had_run() throws IOException {
        JsonNode root = new ObjectMapper()
                .readTree(shell.run("strip", book, "K05", "--build", "2", "--json")
                        .out());
        JsonNode row = StreamSupport.stream(root.get("rows").spliterator(), false)
                .filter(each -> each.get("place").asText().equals("big-end shell")
                        && each.get("side").asText().equals("upper"))
                .findFirst()
                .orElseThrow();
        assertThat(root.get("hoursSinceRebuild").asDouble()).isCloseTo(6.08, within(0.005));
        assertThat(row.get("part").asText()).isEqualTo("BE-05a");
        assertThat(row.get("positions")).hasSize(5);
        assertThat(row.get("positions").get(3).get("found").get(0).get("mark").asText())
                .isEqualTo("wiped");
        assertThat(row.get("positions").get(3).get("worse").asBoolean()).isTrue();
    }
}
