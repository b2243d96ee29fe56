package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.report.PdfText;

/** Skims and low zones from the command line, and how flat a grid in a text file is. */
class SkimsTest {
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
    void the_skims_of_a_head_are_a_table_and_its_straightedge_readings_stay_intervals() {
        Shell.Ran ran = shell.run("skims", book, "HD-06");
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith("HD-06, head, K06: ")
                .contains("0.42 mm left to the least thickness of 117.40 mm")
                .containsPattern("2026-06-05 +0.05 \\+ 0.03 \\+ 0.02 +0.10 +117.82 +0.18 +0.42 ")
                .contains("the low place was between 0.08 mm and 0.10 mm deep")
                .contains("Along the exhaust side: goes 0.05 mm, not 0.06 mm");
    }

    @Test
    void every_head_and_block_is_listed_when_none_is_named_and_what_is_not_there_is_said() {
        assertThat(shell.run("skims", book).out()).contains("HD-03, head").contains("BL-06, block");
        Shell.Ran none = shell.run("skims", book, "HD-99");
        assertThat(none.code()).isEqualTo(1);
        assertThat(none.err()).contains("HD-99");
        assertThat(shell.run("skims", book, "VS-03").code())
                .as("springs have no face")
                .isEqualTo(1);
    }

    @Test
    void one_face_is_printed_and_without_a_part_it_is_asked_which() throws IOException {
        Path file = folder.resolve("hd-06.pdf");
        assertThat(shell.run("skims", book, "HD-06", "--print", file.toString()).code())
                .isZero();
        assertThat(PdfText.of(Files.readAllBytes(file)).solid()).contains("FaceofheadHD-06");
        Shell.Ran all =
                shell.run("skims", book, "--print", folder.resolve("all.pdf").toString());
        assertThat(all.code()).as(all.err()).isEqualTo(2);
        assertThat(all.err()).contains("nothing was written");
        assertThat(folder.resolve("all.pdf")).doesNotExist();
    }

    @Test
    void the_same_as_json_in_the_units_people_write() throws IOException {
        JsonNode part = new ObjectMapper()
                .readTree(shell.run("skims", book, "HD-06", "--as-of", "2026-07-08", "--json")
                        .out())
                .get("parts")
                .get(0);
        assertThat(part.get("leftMm").asDouble()).isEqualTo(0.42);
        JsonNode skim = part.get("skims").get(0);
        assertThat(skim.get("passes")).hasSize(3);
        assertThat(skim.get("lowPlaceOverMm").asDouble()).isEqualTo(0.08);
        assertThat(skim.get("effect").get("crankDegrees").asDouble()).isCloseTo(0.30, within(0.005));
        assertThat(part.get("looks").get(1).get("zones").get(0).get("state").asText())
                .isEqualTo("first_look");
    }

    /** A 3 by 3 grid with one corner 9 µm high, and a twisted one: by hand 7.5 and 2; 6.75 and 2 by linear programming. */
    @ParameterizedTest
    @CsvSource({"0 0 0 0 0 0 0 0 9, 0.0075, 0.00675", "1 0 -1 0 0 0 -1 0 1, 0.002, 0.002"})
    void how_flat_a_grid_is(String heights, double leastSquares, double minimumZone) throws IOException {
        StringBuilder text = new StringBuilder("x_mm,y_mm,z_um\n");
        String[] z = heights.split(" ");
        for (int i = 0; i < z.length; i++) {
            text.append(i / 3 - 1)
                    .append(',')
                    .append(i % 3 - 1)
                    .append(',')
                    .append(z[i])
                    .append('\n');
        }
        Path file = Files.writeString(folder.resolve("grid.csv"), text);
        JsonNode answer = new ObjectMapper()
                .readTree(shell.run("flatness", file.toString(), "--json").out());
        assertThat(answer.get("leastSquares").get("peakToValley").asDouble()).isCloseTo(leastSquares, within(1e-11));
        assertThat(answer.get("minimumZone").asDouble()).isCloseTo(minimumZone, within(1e-10));
    }

    @Test
    void lines_that_are_no_readings_are_named_and_too_few_say_nothing() throws IOException {
        Path file = Files.writeString(
                folder.resolve("odd.txt"), "# plate\n0 0 0\n10 0 -0.02\n0 10 0,01 ?\n10 10 0\n0 10 0\n");
        Shell.Ran ran = shell.run("flatness", file.toString());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("Line 4 was not understood");
        assertThat(ran.out()).contains("4 readings");
        Path line = Files.writeString(folder.resolve("line.txt"), "0 0 0\n1 1 0\n2 2 1\n3 3 0\n");
        assertThat(shell.run("flatness", line.toString()).code()).isEqualTo(1);
        assertThat(shell.run("flatness", line.toString()).err()).contains("not on one line");
    }
}
