package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.report.PdfText.solid;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.report.PdfText;

/** The strip report from the window: of the strip on the bench, else of the engine that is apart. */
@UiTest
class StripSheetOutTest {
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

    @Test
    void it_is_written_where_it_was_asked_for_and_says_so() throws IOException {
        Command command = window.commands.stream()
                .filter(each -> each.key().equals("stripsheet.command.print"))
                .findFirst()
                .orElseThrow();
        window.answer = folder.resolve("strip.pdf");
        command.perform();
        window.tasks.awaitIdle();

        assertThat(command.name().toLowerCase(Locale.ROOT)).contains("print", "strip");
        assertThat(window.suggestedName).hasFileName("strip-report-K05-3.pdf");
        assertThat(window.said()).contains("Strip report written: 6 pages");
        assertThat(PdfText.of(Files.readAllBytes(window.answer)).solid())
                .contains(solid("Strip report of K05, build 3"), solid("4 failed"));
    }
}
