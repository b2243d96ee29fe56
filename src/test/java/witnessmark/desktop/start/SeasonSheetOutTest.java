package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.report.PdfText.solid;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.Switches;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.money.SeasonAsked;
import witnessmark.report.PdfText;

/** The season's pages from the window: asked where to, written as the ledger shows it, opened. */
@UiTest
class SeasonSheetOutTest {
    private static final String PRINT = "seasonsheet.command.print";

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
    void it_is_found_by_what_it_makes_and_for_whom() {
        Command command = window.commands.stream()
                .filter(each -> each.key().equals(PRINT))
                .findFirst()
                .orElseThrow();
        assertThat(command.name()).isEqualTo("Print the season…");
        assertThat(command.tip()).contains("PDF", "every line behind its figures");
        assertThat(command.accelerator())
                .as("one key, one command in the menus")
                .isNull();
    }

    @Test
    void it_is_written_as_the_ledger_shows_it_says_so_and_opens_when_wanted() throws IOException {
        window.start.seasonShown(
                () -> new SeasonAsked("2026", new Switches(false, true, false, true, true), BarsBy.CAR));
        window.answer = folder.resolve("season.pdf");
        window.perform(PRINT);
        assertThat(window.said()).contains("Season written: ", window.answer.toString());
        assertThat(window.opened).isEmpty();
        assertThat(PdfText.of(Files.readAllBytes(window.answer)).solid())
                .contains(solid("Season 2026"), solid("own labour left out"), solid("As of Wed 8 Jul 2026"));

        window.press("Open it");

        assertThat(window.opened).containsExactly("show season.pdf");
        assertThat(window.said()).contains("Opened " + window.answer);
    }

    @Test
    void the_button_of_the_ledger_does_the_same_and_a_name_without_an_ending_gets_one() {
        window.answer = folder.resolve("season");
        window.start.printSeason();
        window.settle();
        assertThat(folder.resolve("season.pdf")).isNotEmptyFile();
    }

    @Test
    void a_place_that_is_not_there_is_told_with_what_to_do() {
        window.answer = folder.resolve("gone").resolve("season.pdf");
        window.perform(PRINT);
        assertThat(window.said()).contains("Couldn't write to " + window.answer, "Nothing is saved.");
    }

    @Test
    void what_somebody_else_keeps_there_stays() throws IOException {
        window.answer = Files.writeString(folder.resolve("accounts.pdf"), "%PDF-1.7 the accounts");
        window.perform(PRINT);
        assertThat(window.said()).contains("is already there");
        assertThat(window.answer).hasContent("%PDF-1.7 the accounts");
    }
}
