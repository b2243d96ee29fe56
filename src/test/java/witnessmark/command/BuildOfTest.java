package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The engine in pieces of the sample, and one that was closed, from the command line. */
class BuildOfTest {
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
    void an_open_build_says_what_is_open_first_then_position_by_position_what_came_out_and_what_is_free() {
        Shell.Ran ran = shell.run("build", book, "K05");
        assertThat(ran.code()).isZero();
        String[] lines = ran.out().split("\\R");
        assertThat(lines[0])
                .isEqualTo("K05, build 3. Covers, head, sump, front, bottom end, out of the car. Open since Tue 16"
                        + " Jun 2026.");
        assertThat(lines[1]).isEqualTo("Not signed");
        assertThat(lines[2]).isEqualTo("Parts and what is open as of Wed 8 Jul 2026");
        assertThat(ran.out())
                .contains("Empty: Crank")
                .contains("CR-05 came out: scrap, pin 3 blue and undersize")
                .contains("on the shelf: MS-05a, main shells 54, 12.46 h, held")
                .contains("Not tightened in this build; last in build 2")
                .endsWith("The engine builder decides." + System.lineSeparator());
        assertThat(ran.out().indexOf("Empty: ")).isLessThan(ran.out().indexOf("Not tightened: "));
    }

    /** The page in the window on that day, by its golden text. */
    @Test
    void what_is_open_is_counted_and_told_as_on_the_page_in_the_window() throws IOException {
        String out = shell.run("build", book, "K05").out();
        List<String> page = Files.readAllLines(Path.of("src/test/golden/build_open.txt"));
        String count = page.get(1).replaceFirst("^label [^,]+, ", "");
        assertThat(out).contains(count);
        assertThat(page.stream().filter(line -> line.startsWith("push button Empty: ")))
                .hasSizeGreaterThan(5)
                .allSatisfy(line -> assertThat(out).contains("  " + line.substring("push button ".length())));
    }

    @Test
    void a_closed_build_stands_as_on_the_day_it_was_closed_with_every_torque_and_its_lubricant() {
        String out = shell.run("build", book, "K05", "--build", "1").out();
        // the sample's own rows: joints.csv and fitments.csv of the season folder
        assertThat(out)
                .contains("Torque 60 N·m, on maker's paste, with W2, by Crew chief")
                .contains("3 of 3: Torque 95 N·m, on moly paste, with W1, by Crew chief, Team engineer looked on")
                .contains("RB-05")
                .contains("Parts and what is open as of ")
                .doesNotContain("as of Wed 8 Jul 2026", "on the shelf");
    }

    @Test
    void the_same_as_json() throws IOException {
        JsonNode build = new ObjectMapper()
                .readTree(shell.run("build", book, "K05", "--json").out());
        assertThat(build.get("build").asInt()).isEqualTo(3);
        assertThat(build.get("closed").isNull()).isTrue();
        JsonNode main = StreamSupport.stream(build.get("positions").spliterator(), false)
                .filter(position -> position.get("position").asText().equals("main shells"))
                .findFirst()
                .orElseThrow();
        assertThat(main.get("empty").asBoolean()).isTrue();
        assertThat(main.get("cameOut").get(0).get("part").asText()).isEqualTo("MS-05a");
        assertThat(main.get("free").get(0).get("held").asBoolean()).isTrue();
        assertThat(build.get("joints")).hasSize(3);
        assertThat(build.get("open").get(0).get("what").asText()).isEqualTo("empty");
    }

    @Test
    void an_engine_or_a_build_there_is_not_is_said() {
        assertThat(shell.run("build", book, "K99").err()).contains("No engine is called 'K99'.");
        assertThat(shell.run("build", book, "K05", "--build", "9").err()).contains("No build is called 'K05/9'.");
        assertThat(shell.run("build", book, "K05", "--build", "9").code()).isEqualTo(1);
    }
}
