package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Person;
import witnessmark.domain.Standing;
import witnessmark.domain.history.Amendment;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.Texts;

/** How the pages of beginning look, and the rules they keep. */
@UiTest
class StartPagesTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0} {1} at {2}, pseudo-language {3}")
    @CsvSource({
        "start, LIGHT, 1.0, false",
        "start, DARK, 1.5, false",
        "start, LIGHT, 1.0, true",
        "report, LIGHT, 1.0, false",
        "report, DARK, 1.0, false",
        "report, LIGHT, 1.5, false",
        "import, LIGHT, 1.0, false",
        "import, DARK, 1.5, false",
        "older, LIGHT, 1.0, false",
        "older, DARK, 1.5, false",
        "who, LIGHT, 1.0, false",
        "who, DARK, 1.5, false",
        "statement, LIGHT, 1.0, false",
        "statement, DARK, 1.5, false",
        "match, LIGHT, 1.0, false",
        "match, DARK, 1.5, false",
        "match, LIGHT, 1.0, true",
        "strip, LIGHT, 1.0, false",
        "strip, DARK, 1.0, false"
    })
    void pages_keep_the_rules_of_the_window(String page, Theme theme, float zoom, boolean pseudo) {
        Texts texts = pseudo ? Texts.pseudo() : Texts.in(Locale.UK);
        try (StartedWindow window = new StartedWindow(folder, Looks.look(theme, zoom), texts)) {
            show(window, page);
            JRootPane root = window.laid(1366, 768);
            String name = "start-" + page + "-" + theme + "-" + Math.round(zoom * 100) + (pseudo ? "-pseudo" : "");
            Pictures.write(name.toLowerCase(Locale.ROOT), root);
            assertThat(LayoutRules.broken(root)).isEmpty();
            assertThat(AccessibleWalk.faults(root)).isEmpty();
            assertThat(Contrast.tooLow(root)).isEmpty();
        }
    }

    @Test
    void the_page_that_begins_a_logbook_reads_as_agreed() {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            window.start.startOwn();
            window.ui().field("Where to keep the file").setText("/home/team/ours.witness");
            GoldenText.check("start_our_logbook", Stage.lay(window.start.place().component(), 1140, 640));
        }
    }

    @Test
    void who_writes_is_chosen_among_the_people_written_down_and_goes_into_the_history() {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            window.perform("who");
            JComboBox<?> people = window.ui().choice("Name");
            assertThat(people.getSelectedItem()).isEqualTo(window.logbook.who());
            people.setSelectedIndex(1);
            String chosen = String.valueOf(people.getSelectedItem());
            window.press("Write as this");

            assertThat(window.logbook.who()).isEqualTo(chosen);
            assertThat(window.said()).contains(chosen + " writing").doesNotContain("Write as this");
            assertThat(new LastWriter(window.settings, window.logbook.logbook().path()).name())
                    .contains(chosen);
            var person = new Entry<>(
                    SampleBooks.ids().<Person>next(), new Person("Somebody new", ""), Standing.IN_FORCE, null, 1);
            window.logbook.write("adding somebody", List.of(person)).orThrow();
            assertThat(window.logbook.logbook().history("person", person.id().value()))
                    .extracting(Amendment::who)
                    .containsOnly(chosen);
        }
    }

    @Test
    void a_page_stepped_aside_while_the_theme_was_changed_comes_back_in_the_new_theme() {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            JRootPane root = window.laid(1366, 768);
            window.start.startOwn();
            Looks.dark();
            SwingUtilities.updateComponentTreeUI(root); // as the look does with all that is in a window
            window.press("Cancel");
            assertThat(Contrast.tooLow(window.laid(1366, 768))).isEmpty();
        }
    }

    /** The season read back with one table missing and one part more. */
    private void importWithoutTable(StartedWindow window) {
        Path season = folder.resolve("season");
        new CsvSeasonFolders().write(window.logbook.logbook().facts(), season).orThrow();
        try {
            Files.delete(season.resolve("told-running.csv"));
            Files.writeString(
                    season.resolve("people.csv"),
                    Files.readString(season.resolve("people.csv")) + ",Somebody new,mechanic,,\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        window.answer = season;
        window.perform("import");
    }

    /** A folder of the logbook as it was before the first three engines were noted about. */
    private void importOlder(StartedWindow window) {
        Path season = folder.resolve("older-" + System.nanoTime());
        new CsvSeasonFolders().write(window.logbook.logbook().facts(), season).orThrow();
        window.noteEngines("crack-tested");
        window.answer = season;
        window.perform("import");
    }

    private void show(StartedWindow window, String page) {
        switch (page) {
            case "start" -> window.start.startOwn();
            case "who" -> window.start.askWho();
            case "strip" -> window.strip.show();
            case "import" -> importWithoutTable(window);
            case "older" -> importOlder(window);
            case "statement" -> BankPagesTest.read(window, folder);
            case "match" -> {
                BankPagesTest.read(window, folder);
                window.press(window.texts.get("bank.take.good").replace("&", ""));
            }
            default -> {
                List<ProblemLine> lines = IntStream.rangeClosed(1, 12)
                        .mapToObj(i -> new ProblemLine(
                                i,
                                "runs.csv, row " + (i + 3) + ", column engine",
                                "No engine is called 'X0" + i + "'.",
                                "Check the spelling, or add the engine first.",
                                "No engine is called 'X0" + i + "'. The row is not read. Check the spelling."))
                        .toList();
                window.start.report(
                        new ReportPage.Content("Bring in a season folder", List.of("12 rows are kept out."), lines));
            }
        }
        window.settle();
    }
}
