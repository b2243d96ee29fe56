package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An engine's way up to a failure, from the command line. */
class WayOfTest {
    @TempDir
    private static Path folder;

    private static Shell shell = new Shell(Path.of(""));
    private static String book = "";

    @BeforeAll
    static void read() {
        shell = new Shell(folder);
        book = shell.sampleBook();
    }

    /** The sample's first copper flakes in K05: rebuilt in January, last read as it should be in February. */
    @Test
    void the_days_stand_one_below_the_other_the_failure_last() {
        List<String> said = shell.run("way", book, "inc-03").out().lines().toList();

        assertThat(said.get(0)).isEqualTo("K05 on its way there, INC-03 Copper flakes in the filter");
        assertThat(said.get(1))
                .isEqualTo("Hours since its rebuild. Last found as it should be on 18 Feb, 4.58 h before.");
        assertThat(said.get(2)).startsWith("  30 Jan, 0.00 h").contains("Rebuilt, build 1");
        assertThat(said.get(said.size() - 1))
                .startsWith("  14 Apr, 6.08 h")
                .contains("INC-03 Copper flakes in the filter.");
    }

    @Test
    void the_same_as_json_with_exact_hours_that_add_up_to_those_at_the_failure() throws IOException {
        JsonNode way = json("way", book, "INC-03", "--json");
        assertThat(way.get("version").asInt()).isEqualTo(Answer.JSON_VERSION);
        assertThat(way.get("command").asText()).isEqualTo("way");
        assertThat(way.get("engine").asText()).isEqualTo("K05");
        assertThat(way.get("hoursSince").asText()).isEqualTo("rebuilt");
        assertThat(way.get("lastGood").asText()).isEqualTo("2026-02-18");
        List<JsonNode> days = new ArrayList<>();
        way.get("days").forEach(days::add);
        JsonNode last = days.get(days.size() - 1);
        assertThat(last.get("kinds").toString()).contains("failure");
        double whole = last.get("hours").asDouble();
        assertThat(days)
                .isNotEmpty()
                .allSatisfy(day -> assertThat(day.get("hours").asDouble()
                                + day.get("hoursBefore").asDouble())
                        .isCloseTo(whole, org.assertj.core.data.Offset.offset(1e-9)));
    }

    @Test
    void an_incident_that_is_not_there_or_had_not_happened_by_the_day_is_said() {
        assertThat(shell.run("way", book, "INC-99").code()).isEqualTo(1);
        assertThat(shell.run("way", book, "INC-05", "--as-of", "2026-05-01").err())
                .contains("INC-05");
        assertThat(shell.run("way", book).code()).isEqualTo(2);
    }

    private static JsonNode json(String... words) throws IOException {
        return new ObjectMapper().readTree(shell.run(words).out());
    }
}
