package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.quantity.RunningTime;

/** Where parts are in the sample season, by its printed tables of lives. */
class PartsTest {
    @TempDir
    private Path folder;

    private Shell shell;
    private String book;

    @BeforeEach
    void bringInTheSeason() {
        shell = new Shell(folder);
        book = shell.sampleBook();
    }

    @Test
    void on_8_july_it_says_where_the_springs_are_and_that_they_are_over() {
        String said = shell.run("parts", book, "--as-of", "2026-07-08").out();

        assertThat(said)
                .contains("parts as of Wed 8 Jul 2026")
                .containsPattern(
                        "VS-03 +Valve springs +K03, car 41 .+12\\.87 h +.*Over, renew valve springs: 0\\.9 h over");
    }

    @Test
    void in_json_a_part_has_its_place_its_life_and_its_state() throws Exception {
        JsonNode answer = new ObjectMapper()
                .readTree(shell.run("parts", book, "--as-of", "2026-06-14", "--json")
                        .out());

        assertThat(answer.get("version").asInt()).isEqualTo(1);
        assertThat(answer.get("asOf").asText()).isEqualTo("2026-06-14");
        for (JsonNode part : answer.get("parts")) {
            if ("VS-03".equals(part.get("part").asText())) {
                assertThat(part.get("where").asText()).isEqualTo("fitted");
                assertThat(part.get("engine").asText()).isEqualTo("K03");
                assertThat(part.get("kind").asText()).isEqualTo("valve springs");
                assertThat(new RunningTime(part.get("runningHighest").asLong()).hours(2))
                        .isEqualByComparingTo("10.65");
                return;
            }
        }
        throw new AssertionError("VS-03 is not told");
    }
}
