package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.form.FormFoot;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** What is said of a draft is true of what is on the sheet. */
@UiTest
class DraftOfASheetTest {
    @TempDir
    Path folder;

    @Test
    void a_sheet_emptied_by_hand_has_none_and_says_nothing_of_one() {
        try (SheetsWindow window = new SheetsWindow(folder, Looks.light(), Texts.in(Locale.UK))) {
            window.open("add_car");
            Ui.type(window.ui().field("Note"), "spare shell");
            window.awaitIdle();
            assertThat(said(window)).startsWith("Draft kept");
            window.ui().field("Note").setText("");
            window.awaitIdle();
            assertThat(said(window)).isBlank();
            assertThat(window.own.desk.logbook().drafts().begun()).isEmpty();
        }
    }

    private static String said(SheetsWindow window) {
        JComponent page = (JComponent) SwingUtilities.getAncestorOfClass(
                SheetPage.Page.class, window.ui().field("Note"));
        StringBuilder said = new StringBuilder();
        Stage.walk(page, component -> {
            if (component instanceof JLabel label
                    && SwingUtilities.getAncestorOfClass(FormFoot.class, label) != null
                    && label.getText() != null
                    && label.getText().startsWith("Draft")) {
                said.append(label.getText());
            }
        });
        return said.toString();
    }
}
