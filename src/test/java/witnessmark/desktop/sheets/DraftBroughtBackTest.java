package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JFrame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** Where the typing goes on when a draft stands on its sheet again. */
@UiTest(display = true)
class DraftBroughtBackTest {
    @TempDir
    Path folder;

    private final JFrame frame = new JFrame();
    private SheetsWindow window;

    @BeforeEach
    void show() {
        window = new SheetsWindow(folder, Looks.light(), Texts.in(Locale.UK));
        frame.setContentPane(window.pane());
        frame.setSize(1366, 768);
        frame.setVisible(true);
        window.ask("add_event");
    }

    @AfterEach
    void close() {
        frame.dispose();
        window.close();
    }

    private void again() {
        window.awaitIdle();
        window.newSheets();
        window.awaitIdle();
        window.ask("add_event");
        window.awaitIdle();
    }

    @Test
    void the_first_field_at_fault_has_the_caret() {
        Ui.type(window.ui().field("Name"), "Round 1");
        Ui.type(window.ui().field("First day"), "31 Feb");
        again();
        assertThat(window.ui().field("First day").getText()).isEqualTo("31 Feb");
        assertThat(Keyboard.owner()).isSameAs(window.ui().field("First day"));
    }

    @Test
    void with_nothing_at_fault_it_stays_where_the_sheet_begins() {
        Ui.type(window.ui().field("Name"), "Round 1");
        again();
        assertThat(Keyboard.owner()).isSameAs(window.ui().field("Name"));
    }
}
