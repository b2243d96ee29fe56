package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.report.PdfText.solid;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.report.PdfText;

/** The job sheet of the sample season by the command line, read back by a library that reads PDF (Apache PDFBox). */
class JobSheetFileTest {
    @TempDir
    private Path folder;

    private Shell shell;
    private String book;
    private Path file;

    @BeforeEach
    void bringInTheSeason() {
        shell = new Shell(folder);
        book = shell.sampleBook();
        file = folder.resolve("jobs.pdf");
    }

    @Test
    void it_is_written_as_of_the_day_asked_for_and_says_so() throws IOException {
        Shell.Ran ran = shell.run("jobsheet", book, file.toString(), "--as-of", "2026-07-04");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("2 pages written to " + file);
        assertThat(PdfText.of(Files.readAllBytes(file)).solid())
                .contains(solid("Job sheet, Round 5, Pellow Ridge"), solid("1 to be done before the next run"))
                .contains(solid("Before the next run: car 41"), solid("As of Sat 4 Jul 2026"), solid("Rods RS-03"))
                .contains(solid("Printed Wed 8 Jul 2026, 19:00"));
    }

    @Test
    void the_same_logbook_on_the_same_day_gives_the_same_file() throws IOException {
        Path again = folder.resolve("again.pdf");
        assertThat(shell.run("jobsheet", book, file.toString()).code()).isZero();
        assertThat(shell.run("jobsheet", book, again.toString()).code()).isZero();

        assertThat(Files.readAllBytes(file)).isEqualTo(Files.readAllBytes(again));
    }

    @Test
    void as_json_it_says_how_many_pages_and_a_refusal_is_json_too() throws IOException {
        ObjectMapper json = new ObjectMapper();
        JsonNode answer = json.readTree(
                shell.run("jobsheet", book, file.toString(), "--json").out());
        assertThat(answer.get("version").asInt()).isEqualTo(1);
        assertThat(answer.get("command").asText()).isEqualTo("jobsheet");
        assertThat(answer.get("pages").asInt()).isEqualTo(2);
        assertThat(answer.get("file").asText()).isEqualTo(file.toString());

        Path theirs = Files.writeString(folder.resolve("rules.pdf"), "%PDF-1.7 the rule book");
        Shell.Ran refused = shell.run("jobsheet", book, theirs.toString(), "--json");
        assertThat(refused.code()).isEqualTo(1);
        JsonNode why = json.readTree(refused.out());
        assertThat(why.get("worked").asBoolean()).isFalse();
        assertThat(why.get("found").get(0).get("kind").asText()).isEqualTo("FILE_EXISTS");
        assertThat(theirs).hasContent("%PDF-1.7 the rule book");
    }

    @Test
    void pages_it_wrote_before_are_replaced() {
        assertThat(shell.run("jobsheet", book, file.toString()).code()).isZero();
        assertThat(shell.run("jobsheet", book, file.toString(), "--as-of", "2026-07-04")
                        .code())
                .isZero();
    }

    @Test
    void a_folder_that_is_not_there_is_said_in_a_sentence_with_what_to_do() {
        Path gone = folder.resolve("gone").resolve("jobs.pdf");
        Shell.Ran ran = shell.run("jobsheet", book, gone.toString());

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("Couldn't write to " + gone, "Nothing is saved.", "choose another place");
    }

    @Test
    void an_empty_logbook_gives_a_sheet_to_write_on() throws IOException {
        String empty = folder.resolve("empty.witness").toString();
        assertThat(shell.run("new", empty).code()).isZero();

        assertThat(shell.run("jobsheet", empty, file.toString()).code()).isZero();

        assertThat(PdfText.of(Files.readAllBytes(file)).solid())
                .contains(solid("No event is written down after that day"), solid("Also found or done"));
    }
}
