package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.sample.SampleBooks;

/** The hour meters of the sample season against its runs. */
class MetersTest {
    @TempDir
    private Path folder;

    private Shell shell;
    private String book;

    @BeforeEach
    void make() {
        shell = new Shell(folder);
        book = folder.resolve("team.witness").toString();
        assertThat(shell.run("new", book).code()).isZero();
    }

    @Test
    void in_the_sample_one_stood_still_and_one_ran_without_being_logged() throws Exception {
        assertThat(shell.run("import", book, SampleBooks.FOLDER.toString()).code())
                .isZero();
        assertThat(shell.run("meters", book, "--as-of", "2026-07-08").out())
                .containsPattern("HM-57 .*2\\.16 h logged.*0\\.46 h less than logged.*; unplugged in practice 2")
                .containsPattern("HM-41 .*0\\.29 h more than logged: something ran that nobody logged");
        JsonNode stretches = new ObjectMapper()
                .readTree(shell.run("meters", book, "--as-of", "2026-05-24", "--json")
                        .out())
                .get("stretches");
        assertThat(stretches).hasSize(8);
        assertThat(stretches.get(3).get("finding").asText()).isEqualTo("not logged");
        assertThat(shell.run("due", book, "--as-of", "2026-07-08").out())
                .contains("1 hour meter and the logbook do not agree");
    }

    @Test
    void without_two_readings_it_says_so() {
        assertThat(shell.run("meters", book).out()).contains("No hour meter was read twice");
    }
}
