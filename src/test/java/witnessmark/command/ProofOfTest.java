package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Proof of fixes from the command line, on the evening the invented season opens and on days before it. */
class ProofOfTest {
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
    void what_came_back_says_so_and_what_was_never_told_apart() {
        assertThat(shell.run("proof", book).out())
                .contains("INC-05, Big end of 3 gone again")
                .contains("  Nothing is done yet that would put it right")
                .contains("  Came back as INC-05 after 6.39 h")
                .contains("Came in together, so nobody can tell which of them it was: ")
                .contains("  Closed Tue 30 Jun 2026; 5.02 h since it was put right")
                .doesNotContain("none");
    }

    /** Filter of 26 May: specks, four hours after the shells were renewed; the case had been closed on 10 May. */
    @Test
    void a_closed_case_whose_filter_is_not_as_asked_for_is_to_be_looked_at_again() {
        assertThat(shell.run("proof", book, "INC-03", "--as-of", "2026-05-26").out())
                .contains(
                        "Closed Sun 10 May 2026, yet Tue 26 May 2026, filter clean: not as asked for, few bright specks")
                .contains("look at it again")
                .contains("filter 1 of 3");
    }

    @Test
    void while_it_runs_the_ages_at_which_it_failed_come_first_and_the_chance_last() {
        String said =
                shell.run("proof", book, "INC-03", "--as-of", "2026-05-05").out();

        assertThat(said)
                .contains("2.16 h since Fri 17 Apr 2026. It failed at 6.08 h: not there yet")
                .contains("Nobody asked for running; the trade wants twice the interval that failed: 12.15 h, ");
        assertThat(said.strip().lines().reduce((one, last) -> last).orElseThrow())
                .startsWith("  Had nothing changed, it would have stayed away this long about 7 times in 10");
    }

    @Test
    void an_incident_that_is_not_there_is_said() {
        Shell.Ran none = shell.run("proof", book, "INC-99");

        assertThat(none.code()).isEqualTo(1);
        assertThat(none.err()).contains("INC-99");
    }

    @Test
    void the_same_as_json() throws IOException {
        JsonNode proof = new ObjectMapper()
                .readTree(shell.run("proof", book, "INC-02", "--json").out())
                .get("incidents")
                .get(0);

        assertThat(proof.get("state").asText()).isEqualTo("closed");
        assertThat(proof.get("failed").get(0).get("afterHours").asDouble()).isCloseTo(7.85, within(0.005));
        assertThat(proof.get("asked").get(0).get("met").asInt()).isEqualTo(3);
        assertThat(proof.get("asked").get(0).get("state").asText()).isEqualTo("met");
        assertThat(proof.get("usedBefore").get("highestRpm").asInt()).isEqualTo(9340);
        assertThat(proof.get("cameBackAs").isNull()).isTrue();
    }
}
