package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.JFrame;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.wording.Texts;

/**
 * F1 on a sheet: the help of the sheet, beside it, and back to it with nothing lost. That Esc closes the help first is the
 * frame's, and tested there.
 */
@UiTest(display = true)
class HelpOfASheetTest {
    private static final String OF_THE_PAGE_UNDER_IT = "What must be done before the truck leaves";

    private final Texts texts = Texts.in(Locale.UK);

    @TempDir
    Path folder;

    @Test
    void f1_shows_the_help_of_the_sheet_and_f1_again_goes_back_to_the_field_with_what_was_typed() {
        JFrame frame = new JFrame();
        try (SheetsWindow window = new SheetsWindow(folder, Looks.light(), texts)) {
            frame.setContentPane(window.pane());
            frame.setJMenuBar(window.pane().menuBar());
            frame.setSize(1366, 768);
            frame.setVisible(true);
            Keyboard keys = new Keyboard(window::awaitIdle);
            window.awaitIdle();
            Focus.await(window.ui().button("Add a car"));
            window.ask("write_hold");
            JTextComponent why = window.ui().field("What was seen");
            why.requestFocusInWindow();
            Focus.await(why);
            keys.type("noise");
            for (int again = 0; again < 2; again++) {
                keys.press(KeyEvent.VK_F1);
                assertThat(said(window))
                        .contains("What holds an engine or a part and who signs it clear")
                        .doesNotContain(OF_THE_PAGE_UNDER_IT);
                keys.press(KeyEvent.VK_F1);
                assertThat(said(window)).doesNotContain("What holds an engine or a part and who signs it clear");
                Focus.await(why);
                keys.type(".");
            }
            assertThat(why.getText()).isEqualTo("noise..");

            keys.press(KeyEvent.VK_F1);
            window.sheets.addPerson();
            window.awaitIdle();
            assertThat(said(window)).as("it follows").contains("Who writes, drives and signs.");
        } finally {
            frame.dispose();
        }
    }

    @ParameterizedTest(name = "{0} at {1}, pseudo-language {2}")
    @CsvSource({"LIGHT, 1.0, false", "DARK, 1.5, false", "LIGHT, 1.0, true"})
    void every_sheet_has_help_of_its_own_subject_beside_it(Theme theme, float zoom, boolean pseudo) {
        Texts words = pseudo ? Texts.pseudo() : texts;
        try (SheetsWindow window = new SheetsWindow(folder, Looks.look(theme, zoom), words)) {
            help(window);
            for (LogSheet sheet : window.sheets.all()) {
                window.open(sheet.key());
                List<String> stems = window.shown().help();
                assertThat(stems.subList(0, stems.size() - 1))
                        .as(sheet.key() + ": its own or of its subject")
                        .anyMatch(stem -> words.has(stem + ".answers.1"));
                String said = words.get(stems.stream()
                                .filter(stem -> words.has(stem + ".answers.1"))
                                .findFirst()
                                .orElseThrow()
                        + ".answers.1");
                assertThat(said(window)).as(sheet.key()).contains(said);
                if (sheet.key().equals("calibrate") || sheet.key().equals("swap_engine")) {
                    assertThat(LayoutRules.broken(window.lay(1366, 768))).isEmpty();
                    assertThat(Contrast.tooLow(window.lay(1366, 768))).isEmpty();
                    Pictures.write(
                            ("sheet-help-" + sheet.key() + "-" + theme + "-" + zoom + (pseudo ? "-pseudo" : ""))
                                    .toLowerCase(Locale.ROOT),
                            window.lay(1366, 768));
                }
            }
        }
    }

    @Test
    void help_left_open_is_that_of_the_page_under_the_sheet_once_the_sheet_is_gone() {
        try (SheetsWindow window = new SheetsWindow(folder, Looks.light(), texts)) {
            window.open("write_hold");
            help(window);
            assertThat(said(window)).doesNotContain(OF_THE_PAGE_UNDER_IT);
            window.ui().button("Back").doClick();
            window.awaitIdle();
            assertThat(said(window)).contains(OF_THE_PAGE_UNDER_IT);
        }
    }

    private static void help(SheetsWindow window) {
        window.pane().commands().all().stream()
                .filter(command -> command.key().equals("shell.command.help"))
                .findFirst()
                .orElseThrow()
                .perform();
    }

    private static String said(SheetsWindow window) {
        if (!window.pane().isShowing()) {
            window.lay(1366, 768);
        }
        return GoldenText.of(window.pane());
    }
}
