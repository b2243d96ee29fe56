package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run logged without its time, at 19:00 of British summer time on 8 July 2026. */
class EstimatedTimeTest {
    @TempDir
    Path folder;

    private Shell shell;
    private String book;

    @BeforeEach
    void begin() {
        shell = new Shell(folder);
        book = shell.sampleBook();
    }

    @Test
    void its_time_is_just_before_now_and_said_with_its_word() throws IOException {
        assertThat(shell.run("log", book, "--car", "41", "--running", "20 min").out())
                .contains("Wed 8 Jul, about 18:40");
        assertThat(shell.run("life", book, "K03", "--entries").out()).contains("Wed 8 Jul, about 18:40");
        JsonNode answer = new ObjectMapper()
                .readTree(shell.run("life", book, "K03", "--entries", "--json").out());
        JsonNode rows = answer.get("entries");
        assertThat(rows.get(rows.size() - 1).get("startKnown").asText()).isEqualTo("estimate");
        for (JsonNode life : answer.get("lives")) {
            assertThat(life.get("total").asLong())
                    .isEqualTo(life.get("known").asLong()
                            + life.get("told").asLong()
                            + life.get("estimated").asLong());
        }
    }

    @Test
    void a_run_that_is_known_is_asked_about_it_and_never_refused() {
        assertThat(shell.run("log", book, "--car", "41", "--running", "20 min").code())
                .isZero();
        String[] known = {"log", book, "--car", "41", "--running", "15 min", "--out", "18:45", "--yes"};
        String[] asked = Arrays.copyOf(known, known.length - 1);
        assertThat(shell.run(asked)).satisfies(ran -> {
            assertThat(ran.code()).isNotZero();
            assertThat(ran.err()).contains("from Wed 8 Jul 2026, about 18:40");
        });
        assertThat(shell.run(known).code()).isZero();
    }
}
