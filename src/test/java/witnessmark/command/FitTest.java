package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.report.PdfText;

/** Build sheets from the command line, and a stack-up from a text file. */
class FitTest {
    @TempDir
    private static Path folder;

    private static Shell shell = new Shell(Path.of(""));
    private static String book = "";

    @BeforeAll
    static void read() {
        shell = new Shell(folder, Instant.parse("2026-07-08T18:00:00Z"));
        book = shell.sampleBook();
    }

    @Test
    void a_build_sheet_says_what_is_outside_first_with_its_column_and_who_accepted_it() {
        Shell.Ran ran = shell.run("buildsheet", book, "K05");
        assertThat(ran.code()).isZero();
        String[] lines = ran.out().split("\\R");
        assertThat(lines[0]).isEqualTo("Engine K05, build 1, opened Wed 14 Jan 2026");
        assertThat(lines[1]).isEqualTo("Nothing left open, 2 accepted as they are, 16 accepted unmeasured");
        assertThat(ran.out())
                .contains("Crown to head, cylinder 1, anti-thrust side: 0.99 mm, 0.01 mm under the least, 1.00 mm"
                        + " (builder, builder sheet of 15 January)")
                .contains("Lacks big-end housing ovality (1, 2, 3, 4)")
                .contains("Accepted as it is: crown to head 0.99 mm at 1 and 3")
                .endsWith("The engine builder decides." + System.lineSeparator());
        assertThat(ran.out().indexOf("Crown to head, ")).isLessThan(ran.out().indexOf("Compression ratio, "));
    }

    @Test
    void the_same_as_json_in_the_units_people_write() throws IOException {
        JsonNode sheet = new ObjectMapper()
                .readTree(shell.run("buildsheet", book, "K03", "--json").out());
        assertThat(sheet.get("build").asInt()).isEqualTo(1);
        assertThat(sheet.get("outside").asInt()).isZero();
        JsonNode ratio = StreamSupport.stream(sheet.get("answers").spliterator(), false)
                .filter(answer -> answer.get("of").asText().equals("compression ratio"))
                .findFirst()
                .orElseThrow();
        assertThat(ratio.get("checks").get(0).get("figure").asDouble())
                .isEqualTo(11.89, org.assertj.core.data.Offset.offset(0.005));
        assertThat(ratio.get("checks").get(0).get("most").asDouble()).isEqualTo(12.5);
        assertThat(ratio.get("checks").get(0).get("column")).hasSize(2);
    }

    @Test
    void an_engine_or_a_build_that_is_not_there_is_said() {
        assertThat(shell.run("buildsheet", book, "K99").err()).contains("No engine is called 'K99'.");
        assertThat(shell.run("buildsheet", book, "K05", "--build", "9").err()).contains("No build is called 'K05/9'.");
        assertThat(shell.run("buildsheet", book, "K05", "--build", "9").code()).isEqualTo(1);
    }

    @Test
    void the_sheet_is_written_as_pages_to_print() throws IOException {
        Path file = folder.resolve("k05.pdf");
        Shell.Ran ran = shell.run("buildsheet", book, "K05", "--print", file.toString());
        assertThat(ran.out()).contains("pages written to " + file);
        assertThat(PdfText.of(Files.readAllBytes(file)).solid())
                .contains(PdfText.solid("Build sheet of K05, build 1"), PdfText.solid("verify it on the engine"));
        assertThat(new ObjectMapper()
                        .readTree(shell.run("buildsheet", book, "K05", "--print", file.toString(), "--json")
                                .out())
                        .get("pages")
                        .asInt())
                .isGreaterThan(1);
        assertThat(shell.run("buildsheet", book, "K99", "--print", file.toString())
                        .err())
                .contains("No engine is called 'K99'.");
    }

    /** Case V2: definition of the ratio (Heywood 1988, equation 2.1), by a spreadsheet: 11.16079169 and 43.44 cc. */
    @Test
    void a_stack_up_needs_no_logbook() throws IOException {
        Path file = Files.writeString(folder.resolve("stack.txt"), """
                # one cylinder
                engine bore = 86
                engine stroke = 86
                chamber volume = 48.2
                gasket bore trial-clamped = 87.5
                gasket thickness ring, clamped = 700 µm
                deck clearance = 0.15 down
                crown volume = -4.6
                top land diameter = 85.4
                top land height = 6
                limit compression ratio <= 11
                """);
        Shell.Ran ran = shell.run("stackup", file.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith(
                        "Compression ratio, cylinder 1: 11.16 : 1, 0.16 : 1 over the most, 11.00 : 1 (own, line 11)")
                .contains("11.1608 : 1");
    }

    @Test
    void a_line_that_is_not_understood_is_named_and_the_others_count() throws IOException {
        Path file = Files.writeString(
                folder.resolve("odd.txt"),
                "cylinders = 2\nfoo = 3\ndeck clearance 3 = 0.2\nbore 1 = twelve\ncylinders = 99\n"
                        + "limit squish >= 1\ndeck clearance 1 = 0.05 proud\n");
        Shell.Ran ran = shell.run("stackup", file.toString());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .contains("Line 2, 'foo = 3'")
                .contains("Line 3, 'deck clearance 3 = 0.2'")
                .contains("Line 4,")
                .contains("Line 5,")
                .contains("Line 6,");
        assertThat(ran.out()).contains("Deck clearance, mean, cylinder 1: −0.050 mm");
        assertThat(shell.run("stackup", folder.resolve("none.txt").toString()).code())
                .isEqualTo(1);
    }

    /** Squish of 0.99 mm at rest under a least of 1.00 leaves about 0.62 mm at 8200: nothing of it is a rule at speed. */
    @Test
    void what_is_left_at_speed_stands_beside_what_is_left_at_rest() {
        Shell.Ran ran = shell.run("atspeed", book, "K05");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .containsPattern("at rest 0.99 mm \\(not under 1.00 mm\\), at 8.200 rpm about 0.62 mm \\(")
                .contains("the rod stretched")
                .contains("No ring hangs over a crown")
                .endsWith("the engine builder decides." + System.lineSeparator());
    }

    /** Common practice, no source: a thicker gasket leaves as much more at speed as at rest; nothing of it is written. */
    @Test
    void what_is_tried_moves_the_figure_and_is_not_written() throws IOException {
        JsonNode before = at("atspeed", book, "K05", "--json");
        JsonNode tried = at("atspeed", book, "K05", "--gasket", "1.05", "--json");
        JsonNode after = at("atspeed", book, "K05", "--json");
        assertThat(after).isEqualTo(before);
        for (int i = 0; i < before.get("sides").size(); i++) {
            double was = before.get("sides").get(i).get("atSpeed").get("likely").asDouble();
            double now = tried.get("sides").get(i).get("atSpeed").get("likely").asDouble();
            assertThat(now - was).isCloseTo(0.20, org.assertj.core.api.Assertions.within(0.0011));
        }
    }

    private static JsonNode at(String... words) throws IOException {
        return new ObjectMapper().readTree(shell.run(words).out());
    }

    @Test
    void what_cannot_be_tried_is_refused_with_an_example() {
        Shell.Ran ran = shell.run("atspeed", book, "K05", "--gasket", "thick");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("thick");
        assertThat(shell.run("atspeed", book, "K05", "--crown-cut", "-0.2").code())
                .isEqualTo(1);
        assertThat(shell.run("atspeed", book, "K99").code()).isEqualTo(1);
    }
}
