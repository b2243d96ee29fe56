package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javax.swing.JComboBox;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Incident;

/** An incident is made ready to be shared: read beside the window, shown before it is written. */
@UiTest
class CaseSheetOutTest {
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
    void what_goes_along_is_read_beside_the_window() {
        Command share = window.commands.stream()
                .filter(command -> command.key().equals("casesheet.command.print"))
                .findFirst()
                .orElseThrow();
        share.perform();
        assertThat(window.said()).doesNotContain("Words that were typed");
        window.settle();

        String mark = window.logbook
                .view()
                .facts()
                .of(Incident.class)
                .inForce()
                .filter(incident -> incident.fact().closed() == null)
                .map(incident -> incident.fact().mark())
                .reduce((before, last) -> last)
                .orElseThrow();
        assertThat(window.said())
                .contains("Words that were typed", "mark=" + mark)
                .doesNotContain("rod maker R1", "Crew chief told");

        JComboBox<?> which = which();
        which.setSelectedIndex(which.getItemCount() - 1);
        window.settle();
        JComboBox<?> then = which();
        assertThat(then).isNotSameAs(which);
        assertThat(then.getSelectedIndex()).isEqualTo(then.getItemCount() - 1);
    }

    private JComboBox<?> which() {
        JRootPane root = Stage.window(window.pane, window.pane.menuBar(), 1366, 768);
        window.settle();
        return new Ui(Stage.lay(root, 1366, 768)).choice("Which case");
    }
}
