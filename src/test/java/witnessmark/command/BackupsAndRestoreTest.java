package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A lost logbook comes back with the program alone. */
class BackupsAndRestoreTest {
    @TempDir
    private Path folder;

    private static JsonNode json(Shell.Ran ran) throws Exception {
        assertThat(ran.code()).as(ran.out() + ran.err()).isZero();
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void a_backup_is_listed_and_restored_and_what_stood_there_is_kept() throws Exception {
        Shell shell = new Shell(folder);
        String book = shell.sampleBook();
        String line = "log";
        assertThat(shell.run(line, book, "--car", "41", "--date", "2026-07-08", "--out", "14:00", "--running", "27:30")
                        .code())
                .isIn(0, 3);

        JsonNode listed = json(shell.run("backups", book, "--json")).get("backups");
        assertThat(listed).isNotEmpty();
        assertThat(listed.get(0).get("good").booleanValue()).isTrue();
        assertThat(listed.get(0).get("name").textValue()).isEqualTo("Marrowgate Racing");
        assertThat(listed.get(0).get("entries").longValue()).isPositive();
        assertThat(shell.run("backups", book).out()).contains("Marrowgate Racing", "last run", "good, checked now");

        String backup = listed.get(0).get("file").textValue();
        String restored = shell.path("restored.witness").toString();
        String digest = json(shell.run("restore", backup, restored, "--json"))
                .get("digest")
                .textValue();
        assertThat(shell.run("verify", restored).code()).isZero();
        assertThat(shell.run("restore", backup, restored).code())
                .as("never over a file")
                .isEqualTo(1);

        JsonNode replaced = json(shell.run("restore", backup, book, "--replace", "--json"));
        assertThat(replaced.get("digest").textValue()).isEqualTo(digest);
        assertThat(Path.of(replaced.get("before").textValue())).exists();
        assertThat(shell.run("verify", book).code()).isZero();
    }

    @Test
    void with_the_logbook_gone_its_backups_are_listed_all_the_same() throws Exception {
        Shell shell = new Shell(folder);
        String book = shell.sampleBook();
        shell.run("log", book, "--car", "41", "--date", "2026-07-08", "--out", "14:00", "--running", "27:30");
        Files.delete(Path.of(book));
        assertThat(json(shell.run("backups", "--json")).get("backups")).isNotEmpty();
        assertThat(shell.run("backups", book))
                .as("by its name")
                .returns(0, Shell.Ran::code)
                .satisfies(ran -> assertThat(ran.out()).contains("had that name", "Marrowgate Racing"));
        assertThat(shell.run("backups", shell.path("a folder").toString()))
                .as("of all, and not what was asked for")
                .returns(3, Shell.Ran::code)
                .satisfies(ran -> assertThat(ran.out()).contains("the backups of all", "Marrowgate Racing"));
        assertThat(shell.run("backups", "--in", shell.path("no stick").toString())
                        .code())
                .isEqualTo(1);
    }

    @Test
    void a_backup_that_is_looked_at_is_not_backed_up_itself() throws Exception {
        Shell shell = new Shell(folder);
        String book = shell.sampleBook();
        shell.run("log", book, "--car", "41", "--date", "2026-07-08", "--out", "14:00", "--running", "27:30");
        JsonNode before = json(shell.run("backups", "--json")).get("backups");
        Shell.Ran looked = shell.run("verify", before.get(0).get("file").textValue());
        assertThat(looked.code()).isZero();
        assertThat(looked.err()).contains("is a copy that the program made of a logbook");
        assertThat(json(shell.run("backups", "--json")).get("backups")).isEqualTo(before);
    }

    /** What Java says it was told to run: the jar as typed, or the class. */
    @ParameterizedTest
    @CsvSource({
        "target/witness-mark.jar backups our.witness, java -jar target/witness-mark.jar",
        "witness-mark.jar, java -jar witness-mark.jar",
        "my programs/witness-mark.jar new, java -jar \"my programs/witness-mark.jar\"",
        "witnessmark.launch.Main new team.jar.witness, witness-mark",
        "'', witness-mark"
    })
    void a_further_command_is_said_as_it_is_to_be_typed(String javaCommand, String called) {
        assertThat(Console.called(javaCommand)).isEqualTo(called);
    }

    /** One letter of an engine's id in the row of a run: the row names no engine any more, and its history is whole. */
    @Test
    void of_a_logbook_that_does_not_open_any_more_it_is_said_which_run_is_hit() throws Exception {
        Shell shell = new Shell(folder);
        Path book = Path.of(shell.sampleBook());
        byte[] bytes = Files.readAllBytes(book);
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        String id = "";
        try (Connection look = DriverManager.getConnection("jdbc:sqlite:" + book);
                ResultSet last = look.createStatement()
                        .executeQuery("SELECT id || engine_id FROM run WHERE name = 'Race 2'"
                                + " ORDER BY start_utc_ms DESC, id DESC LIMIT 1")) {
            id = last.getString(1);
        }
        int at = text.indexOf(id);
        assertThat(at).as("where the row begins").isPositive();
        bytes[at + id.length() - 1] = 'x';
        Files.write(book, bytes);

        Shell.Ran ran = shell.run("verify", book.toString());
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("is damaged").contains("a row of run");
        assertThat(ran.out()).contains("1 is hit:", "The run 'Race 2, K0", "Round 5, Pellow Ridge");
        JsonNode json = new ObjectMapper()
                .readTree(shell.run("verify", book.toString(), "--json").out());
        assertThat(json.get("hit").get(0).get("left").textValue()).isEqualTo("IN_HISTORY");
        assertThat(json.get("worked").booleanValue()).isFalse();
    }

    @Test
    void what_can_be_read_of_a_damaged_logbook_is_salvaged_and_the_rest_named() throws Exception {
        Shell shell = new Shell(folder);
        String book = shell.sampleBook();
        try (RandomAccessFile file = new RandomAccessFile(book, "rw")) {
            file.seek(4_096L * 60);
            file.write(new byte[4_096 * 3]);
        }
        assertThat(shell.run("verify", book).code()).isEqualTo(1);
        String made = shell.path("salvaged.witness").toString();
        Shell.Ran ran = shell.run("salvage", book, made, "--who", "Ada");
        assertThat(ran.code()).isIn(0, 3);
        assertThat(ran.out()).contains("records are in", "salvaged");
        assertThat(shell.run("verify", made).code()).isZero();
        assertThat(shell.run("salvage", book, made).code())
                .as("never over a file")
                .isEqualTo(1);
    }

    /** A script must see that a file is whole and not all there: an older copy was put in its place. */
    @Test
    void a_logbook_that_is_whole_and_lacks_changes_ends_with_a_code_of_its_own() throws Exception {
        Shell shell = new Shell(folder);
        String book = shell.sampleBook();
        byte[] older = Files.readAllBytes(Path.of(book));
        shell.run("log", book, "--car", "41", "--date", "2026-07-08", "--out", "14:00", "--running", "27:30");
        assertThat(shell.run("verify", book).code()).isZero();
        Files.write(Path.of(book), older);

        for (int again = 0; again < 2; again++) {
            Shell.Ran ran = shell.run("verify", book);
            assertThat(ran.code()).isEqualTo(3);
            assertThat(ran.err()).contains("missing");
            assertThat(ran.out()).contains("What is missing is not").doesNotStartWith("As it was written");
        }
        JsonNode said =
                new ObjectMapper().readTree(shell.run("verify", book, "--json").out());
        assertThat(said.get("asWritten").asBoolean()).isTrue();
        assertThat(said.get("complete").asBoolean()).isFalse();

        assertThat(shell.run("verify", book, "--accept-missing").code()).isZero();
        Shell.Ran after = shell.run("verify", book);
        assertThat(after.code()).isZero();
        assertThat(after.err()).isEmpty();
    }

    @Test
    void before_a_folder_is_taken_in_the_logbook_is_backed_up_as_it_was() throws Exception {
        Shell shell = new Shell(folder);
        String book = shell.sampleBook();
        Path season = shell.path("season");
        assertThat(shell.run("export", book, season.toString()).code()).isZero();
        Path people = season.resolve("people.csv");
        Files.writeString(people, Files.readString(people) + ",Somebody new,mechanic,,\n");
        assertThat(shell.run("import", book, season.toString()).code()).isIn(0, 3);
        JsonNode listed = json(shell.run("backups", book, "--json")).get("backups");
        long newest = listed.get(0).get("entries").longValue();
        assertThat(listed)
                .as("one of the first opening, one from before the person, one of closing")
                .hasSize(3)
                .anySatisfy(
                        backup -> assertThat(backup.get("entries").longValue()).isEqualTo(newest - 1));
    }
}
