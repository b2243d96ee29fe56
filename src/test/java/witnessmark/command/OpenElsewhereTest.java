package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.logbook.port.Logbook;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;

/** Commands on a logbook that somebody has open: what writes refuses once, what reads works. */
class OpenElsewhereTest {
    @TempDir
    private Path folder;

    private Shell shell;
    private String book;
    private Logbook held;

    @BeforeEach
    void somebody_has_it_open() throws IOException {
        shell = new Shell(folder);
        book = shell.path("team.witness").toString();
        assertThat(shell.run("new", book, "--team", "Ours", "--zone", "Europe/London")
                        .code())
                .isZero();
        Path season = Files.createDirectory(shell.path("season"));
        Files.writeString(season.resolve("cars.csv"), "name,note\n41,\n");
        assertThat(shell.run("import", book, season.toString()).code()).isZero();
        held = new SqliteLogbookFiles(
                        folder.resolve("other"),
                        InstantSource.system()::millis,
                        () -> "other-device",
                        new Holder("pit laptop", "Jo"))
                .open(Path.of(book))
                .orThrow();
    }

    @AfterEach
    void it_is_closed() {
        held.close();
    }

    @Test
    void a_run_is_refused_in_one_answer() {
        Shell.Ran ran = shell.run("log", book, "--car", "41", "--running", "10");
        assertThat(ran.code()).isEqualTo(Exit.DID_NOT);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines())
                .hasSize(1)
                .allSatisfy(line -> assertThat(line).contains("is open on", "nothing is saved", "open it again here"));
    }

    @Test
    void the_first_refusal_is_the_lock_even_where_what_was_typed_is_wrong_too() {
        assertThat(shell.run("log", book, "--car", "no such car", "--running", "x")
                        .err()
                        .lines())
                .hasSize(1)
                .allSatisfy(line -> assertThat(line).contains("is open on"));
    }

    @Test
    void programs_are_told_one_problem() throws IOException {
        Shell.Ran ran = shell.run("log", book, "--car", "41", "--running", "10", "--json");
        assertThat(ran.code()).isEqualTo(Exit.DID_NOT);
        assertThat(ran.err()).isEmpty();
        JsonNode answer = new ObjectMapper().readTree(ran.out());
        assertThat(answer.get("worked").asBoolean()).isFalse();
        assertThat(answer.get("found")).hasSize(1);
        assertThat(answer.get("found").get(0).get("kind").asText()).isEqualTo("LOGBOOK_IN_USE");
    }

    @Test
    void an_import_is_refused_in_one_answer() {
        Shell.Ran ran = shell.run("import", book, shell.path("season").toString());
        assertThat(ran.code()).isEqualTo(Exit.DID_NOT);
        assertThat(ran.err().lines()).hasSize(1);
    }

    @Test
    void what_reads_works_all_the_same() {
        assertThat(shell.run("meters", book).code()).isZero();
    }
}
