package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.beforewego.OutLine;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.StatusStrip;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Event;
import witnessmark.logbook.sheets.AddEvent;
import witnessmark.wording.Texts;

/** What is said once a sheet is saved. */
@UiTest
class SavedSheetTest {
    @TempDir
    Path folder;

    @Test
    void a_sheet_that_is_saved_is_begun_no_more_from_the_first_look_on() {
        try (SheetsWindow window = new SheetsWindow(folder, Looks.light(), Texts.in(Locale.UK))) {
            List<List<OutLine>> seen = Collections.synchronizedList(new ArrayList<>());
            window.onBegun(() -> {
                List<OutLine> begun = window.sheets.begun();
                seen.add(begun);
                return begun;
            });
            window.open("add_event");
            Ui.type(window.ui().field("Name"), "Round 1");
            save(window); // refused: it has no day
            window.awaitIdle();
            assertThat(window.sheets.begun()).hasSize(1);
            Ui.type(window.ui().field("First day"), "28 Mar 2026");
            window.awaitIdle();
            seen.clear();
            save(window);
            window.awaitIdle();
            assertThat(window.own.desk.view().facts().of(Event.class).named("Round 1"))
                    .isPresent();
            assertThat(seen).isNotEmpty().allSatisfy(begun -> assertThat(begun).isEmpty());
        }
    }

    @Test
    void what_is_corrected_is_called_as_it_is_called_now() {
        try (SheetsWindow window = new SheetsWindow(folder, Looks.light(), Texts.in(Locale.UK))) {
            window.own
                    .save(new AddEvent(), "name", "Round 1", "circuit", "Ashdown", "first_day", "28 Nov 2026")
                    .orThrow();
            window.sheets.correct(window.own.the(Event.class, "Round 1"));
            window.awaitIdle();
            window.lay(1366, 768);
            window.ui().field("First day").setText("5 Dec 2026");
            window.ui().field("Last day").setText("5 Dec 2026");
            save(window);
            window.awaitIdle();
            assertThat(said(window)).containsExactly("Corrected: event, Round 1, Sat 5 Dec 2026.");
        }
    }

    private static void save(SheetsWindow window) {
        Ui.press(window.shown().component(), Keys.menu(KeyEvent.VK_ENTER));
    }

    private static List<String> said(SheetsWindow window) {
        List<String> said = new ArrayList<>();
        Stage.walk(window.lay(1366, 768), component -> {
            if (component instanceof StatusStrip strip) {
                said.add(strip.sentence());
            }
        });
        return said;
    }
}
