package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What incidents have in common, from the command line. */
class CommonToTest {
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
    void two_big_ends_share_their_bolts_and_the_wrench_and_differ_in_their_shells() {
        String said = shell.run("common", book, "INC-03", "INC-05").out();

        String shared = said.substring(said.indexOf("All of them"), said.indexOf("Only INC-03"));
        assertThat(shared)
                .contains("engine K05", "the very part RB-05", "tool W2", "cylinder or bearing 3")
                .contains("mark back of a shell, fretted")
                .doesNotContain("BE-05a");
        assertThat(said.substring(said.indexOf("Only INC-03"), said.indexOf("Only INC-05")))
                .contains("the very part BE-05a");
    }

    @Test
    void of_one_alone_the_other_engines_with_what_failed_are_named() {
        assertThat(shell.run("common", book, "INC-05").out())
                .contains("Other engines with what failed in INC-05")
                .contains("K06: part design rod bolts M9: RB-06, ");
    }

    @Test
    void an_incident_that_is_not_there_is_said_and_one_named_twice_counts_once() {
        assertThat(shell.run("common", book, "INC-99").code()).isEqualTo(1);
        assertThat(shell.run("common", book, "INC-05", "INC-05").out()).startsWith("Other engines");
        assertThat(shell.run("common", book).code()).isEqualTo(2);
    }

    @Test
    void the_same_as_json() throws IOException {
        JsonNode common = new ObjectMapper()
                .readTree(
                        shell.run("common", book, "INC-03", "INC-05", "--json").out());

        assertThat(common.get("alike")).anySatisfy(each -> {
            assertThat(each.get("aspect").asText()).isEqualTo("tool");
            assertThat(each.get("what").asText()).isEqualTo("W2");
            assertThat(each.get("all").asBoolean()).isTrue();
        });
        assertThat(common.get("otherEngines")).isNotEmpty();
    }
}
