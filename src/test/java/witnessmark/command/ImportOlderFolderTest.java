package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders of another day than the logbook, from the command line. */
class ImportOlderFolderTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private Shell shell;
    private String book;
    private Path older;

    /** The folder has a note about an engine that the logbook has otherwise since. */
    @BeforeEach
    void an_older_folder() throws IOException {
        shell = new Shell(folder);
        book = shell.sampleBook();
        older = shell.path("older");
        assertThat(shell.run("export", book, older.toString()).code()).isZero();
        note(older);
    }

    @Test
    void the_logbook_keeps_its_own_and_both_values_are_told() throws IOException {
        String before = exported("before");
        Shell.Ran ran = shell.run("import", book, older.toString());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("engines.csv, line 3 (K05, ", "), column note", "older block", "in the logbook");
        assertThat(ran.out()).contains("Nothing new", "1 row stays as in the logbook", "--take-folder-values");
        assertThat(exported("after")).isEqualTo(before);

        JsonNode answer = JSON.readTree(
                shell.run("import", book, older.toString(), "--json").out());
        assertThat(answer.get("rows").asInt()).isZero();
        assertThat(answer.get("differing").asInt()).isEqualTo(1);
        assertThat(answer.get("leftOut").asInt()).isZero();
        assertThat(answer.get("found")).hasSize(1);
    }

    @Test
    void the_folders_values_are_taken_when_asked_for() throws IOException {
        Shell.Ran ran = shell.run("import", book, older.toString(), "--take-folder-values");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("1 row from", "1 row had other values in the logbook");
        assertThat(exported("after")).isEqualTo(Files.readString(older.resolve("engines.csv")));
        assertThat(shell.run("verify", book).code()).isZero();
    }

    /** One row that cannot be read and two that name it are three rows left out and two problems. */
    @Test
    void what_is_left_out_is_counted_by_rows() throws IOException {
        Path bad = Files.createDirectory(shell.path("bad"));
        Files.writeString(bad.resolve("cars.csv"), "name,note\n77,\n78,\n");
        Files.writeString(
                bad.resolve("events.csv"),
                "name,circuit,zone,first_day,last_day\nTest day,,Nowhere,2026-08-01,2026-08-01\n");
        Files.writeString(bad.resolve("entries.csv"), "event,car\nTest day,77\nTest day,78\n");
        Shell.Ran ran = shell.run("import", book, bad.toString(), "--keep-good-rows", "--json");
        JsonNode answer = JSON.readTree(ran.out());
        assertThat(answer.get("rows").asInt()).as(ran.out()).isEqualTo(2);
        assertThat(answer.get("leftOut").asInt()).as(ran.out()).isEqualTo(3);
        assertThat(answer.get("found")).as(ran.out()).hasSize(2);
    }

    private String exported(String name) throws IOException {
        Path to = shell.path(name);
        assertThat(shell.run("export", book, to.toString()).code()).isZero();
        return Files.readString(to.resolve("engines.csv"));
    }

    /** Another note about K05, in row 3. */
    private static void note(Path season) throws IOException {
        Path engines = season.resolve("engines.csv");
        String text = Files.readString(engines);
        assertThat(text).containsOnlyOnce("oldest block");
        Files.writeString(engines, text.replace("oldest block", "older block"));
    }
}
