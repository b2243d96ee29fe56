package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** A sheet on the small laptop at twice the size. */
@UiTest
class SheetInALowWindowTest {
    @TempDir
    Path folder;

    @Test
    void more_than_two_rows_are_in_sight() {
        try (SheetsWindow window = new SheetsWindow(folder, Looks.look(Theme.LIGHT, 2.0f), Texts.in(Locale.UK))) {
            window.open("add_engine");
            window.lay(1366, 768);
            JComponent number = window.ui().field("Number");
            var seen = SwingUtilities.getAncestorOfClass(JViewport.class, number);
            assertThat(seen.getHeight())
                    .as("a row is as high as a box")
                    .isGreaterThan(5 * number.getParent().getHeight() / 2);
        }
    }
}
