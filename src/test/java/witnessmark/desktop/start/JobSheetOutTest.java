package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.report.PdfText.solid;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.report.PdfText;

/** The job sheet from the window: asked where to, written, opened. */
@UiTest
class JobSheetOutTest {
    @TempDir
    Path folder;

    private StartedWindow window;

    @BeforeEach
    void open() {
        window = new StartedWindow(folder, Looks.light());
    }

    @AfterEach
    void close() {
        window.close();
    }

    private Command command() {
        return window.commands.stream()
                .filter(command -> command.key().equals("jobsheet.command.print"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_key_everybody_prints_with_is_its_own_and_it_is_found_by_either_name() {
        assertThat(command().accelerator()).isEqualTo(Keys.menu(KeyEvent.VK_P));
        assertThat(command().name().toLowerCase(Locale.ROOT)).contains("print", "job sheet");
        assertThat(command().tip().toLowerCase(Locale.ROOT)).contains("pdf");
    }

    @Test
    void it_is_written_where_it_was_asked_for_says_so_and_opens_when_wanted() throws IOException {
        window.answer = folder.resolve("jobs.pdf");
        window.perform("print");
        assertThat(window.said()).contains("Job sheet written: 2 pages, " + window.answer);
        assertThat(window.opened).isEmpty();
        assertThat(PdfText.of(Files.readAllBytes(window.answer)).solid()).contains(solid("Rods RS-03"));

        window.press("Open it");

        assertThat(window.opened).containsExactly("show jobs.pdf");
        assertThat(window.said()).contains("Opened " + window.answer);
    }

    @Test
    void the_button_under_the_jobs_does_the_same() {
        window.answer = folder.resolve("jobs.pdf");
        window.press("Print a job sheet");
        assertThat(folder.resolve("jobs.pdf")).isNotEmptyFile();
    }

    @Test
    void a_name_without_an_ending_gets_the_one_that_programs_open_it_by() {
        window.answer = folder.resolve("jobs");
        window.perform("print");
        assertThat(folder.resolve("jobs.pdf")).isNotEmptyFile();
    }

    @Test
    void a_computer_that_names_no_program_for_it_says_what_to_do() {
        window.hasViewer = false;
        window.answer = folder.resolve("jobs.pdf");
        window.perform("print");
        window.press("Open it");
        assertThat(window.said()).contains("names no program that opens it", "print it there");
    }

    @Test
    void nothing_is_written_when_nobody_says_where() {
        window.answer = null;
        window.perform("print");
        assertThat(window.said()).doesNotContain("Job sheet written");
    }

    @Test
    void a_place_that_is_not_there_is_told_with_what_to_do() {
        window.answer = folder.resolve("gone").resolve("jobs.pdf");
        window.perform("print");
        assertThat(window.said()).contains("Couldn't write to " + window.answer, "Nothing is saved.");
    }

    @Test
    void what_somebody_else_keeps_there_stays() throws IOException {
        window.answer = Files.writeString(folder.resolve("rules.pdf"), "%PDF-1.7 the rule book");
        window.perform("print");
        assertThat(window.said()).contains("is already there");
        assertThat(window.answer).hasContent("%PDF-1.7 the rule book");
    }
}
