package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The incident of June from the command line, against the sample's own tables and its page in the window. */
class IncidentOfTest {
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
    void it_is_told_from_what_happened_to_what_it_cost() {
        String out = plain(shell.run("incident", book, "inc-05").out());
        assertThat(out)
                .startsWith("INC-05 Big end of 3 gone again")
                .contains("car 57, K05, Round 4", "retired, reported by Team engineer", "Again after INC-03")
                .containsSubsequence(
                        "Open 24 days, as of Wed 8 Jul 2026",
                        "What was seen",
                        "a knock; shell of 3 turned",
                        "What was found",
                        "Back of a shell 3, fretted, heavy",
                        "speaks strongly for 2, housing of rod 3 lost its grip",
                        "Causes, and their share",
                        "2. Wear: housing of rod 3 lost its grip",
                        "open, likely, 18 Jun: back of the shell polished",
                        "Tests that decide",
                        "Done: cooler cut open",
                        "What is done about it",
                        "Containment: not turned",
                        "Does it hold?",
                        "Nothing is done yet that would put it right",
                        "Parts, and what they had run by then",
                        "BE-05b",
                        "What it cost, EUR",
                        "3 975.00",
                        "would have prevented it");
    }

    /** The test was to be made by 1 July: that day itself is not late yet. */
    @Test
    void a_test_whose_day_is_past_is_late_until_it_is_made() {
        assertThat(shell.run("incident", book, "INC-05").out())
                .contains("To do: bore gauge in all four housings, bolts tightened  (late: was due 1 Jul)");
        assertThat(shell.run("incident", book, "INC-05", "--as-of", "2026-07-01")
                        .out())
                .contains("bolts tightened  (due 1 Jul)")
                .doesNotContain("late:");
    }

    @Test
    void the_same_as_json_beside_the_money() throws IOException {
        JsonNode told = new ObjectMapper()
                .readTree(shell.run("incident", book, "INC-05", "--json").out());
        assertThat(told.get("engine").asText()).isEqualTo("K05");
        assertThat(told.get("open").asBoolean()).isTrue();
        assertThat(told.get("before").get(0).asText()).isEqualTo("INC-03");
        assertThat(told.get("causes").get(0).get("state").asText()).isEqualTo("contributing");
        assertThat(told.get("findings").get(1).get("speaks").get(0).get("cause").asInt())
                .isEqualTo(2);
        assertThat(told.get("tests").get(0).get("late").asBoolean()).isTrue();
        assertThat(told.get("tests").get(1).get("late").asBoolean()).isFalse();
        assertThat(told.get("actions").get(0).get("kind").asText()).isEqualTo("containment");
        assertThat(told.get("proof").get("state").asText()).isEqualTo("open");
        assertThat(told.get("parts")).hasSize(4);
        assertThat(told.get("total").asText()).isEqualTo("3975.00");
    }

    private static String plain(String out) {
        return out.replace('\u2009', ' ');
    }
}
