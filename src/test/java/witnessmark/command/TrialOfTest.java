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

/** The coated gasket on trial, from the command line, on the evening the invented season opens (design 06, tables 14.5 and 14.8). */
class TrialOfTest {
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
    void lives_stand_side_by_side_and_no_score_is_made_of_them() {
        assertThat(shell.run("trial", book, "coated head gasket").out())
                .contains("coated head gasket: steel gasket 0.85 coated against steel gasket 0.85")
                .contains("On trial since Fri 5 Jun 2026, set up by Crew chief")
                .contains("Hoped for: no weep between 2 and 3")
                .contains("Tried: fitted once, none failed, 1 still in, 2.92 h in all")
                .contains("HG-06a, K06, head gasket, Thu 26 Feb 2026: from new to 3.20 h, came off, head off; scrap;"
                        + " INC-04: damaged, blown by between 2 and 3")
                .contains("Sat 30 May 2026: carbon track, clear")
                .contains("Nothing failed on either side, so no figure says which lasts longer.")
                .contains("2 lives stand beside the others")
                .doesNotContain("P 0");
    }

    @Test
    void before_it_began_there_is_none_and_an_unknown_one_is_said() {
        assertThat(shell.run("trial", book, "--as-of", "2026-06-04").out()).contains("No part design is on trial.");
        Shell.Ran none = shell.run("trial", book, "copper gasket");

        assertThat(none.code()).isEqualTo(1);
        assertThat(none.err()).contains("copper gasket");
    }

    @Test
    void scripts_read_every_life_in_hours() throws IOException {
        JsonNode trial = new ObjectMapper()
                .readTree(shell.run("trial", book, "--json").out())
                .get("trials")
                .get(0);

        assertThat(trial.get("verdict").isNull()).isTrue();
        assertThat(trial.get("counter").asText()).isEqualTo("running");
        assertThat(trial.at("/ofUsual/lives")).hasSize(6);
        assertThat(trial.at("/ofTried/lives/0/toHours").asDouble()).isCloseTo(2.915, within(1e-9));
        assertThat(trial.at("/test/enough").asBoolean()).isFalse();
        assertThat(trial.at("/test/p").isNull()).isTrue();
    }
}
