package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
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
import witnessmark.domain.Cause;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.logbook.sharing.Unnamed;
import witnessmark.wording.NameLetters;
import witnessmark.wording.Texts;

/** An incident is made ready to be shared: read beside the window, shown before it is written. */
@UiTest
class CaseSheetOutTest {
    @TempDir
    Path folder;

    private StartedWindow window;

    @BeforeEach
    void begin() {
        window = new StartedWindow(folder, Looks.light());
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void what_goes_along_is_read_beside_the_window() {
        share().perform();
        assertThat(window.said()).doesNotContain("Words that were typed");
        window.settle();

        String mark = open();
        assertThat(window.said())
                .contains("Words that were typed", "mark=" + mark)
                .doesNotContain("rod maker R1", "Crew chief told");

        JComboBox<?> which = which();
        assertThat(which.getHeight())
                .as("which case it is can be seen above many words")
                .isGreaterThanOrEqualTo(which.getPreferredSize().height);
        which.setSelectedIndex(which.getItemCount() - 1);
        window.settle();
        JComboBox<?> then = which();
        assertThat(then).isNotSameAs(which);
        assertThat(then.getSelectedIndex()).isEqualTo(then.getItemCount() - 1);
    }

    /** What causes are called goes without a tick, so it stands in a block of its own and not in what needs one. */
    @Test
    void causes_go_without_a_tick_and_are_read_before_as_well() {
        share().perform();
        window.settle();
        View view = window.logbook.view();
        Unnamed unnamed = new Unnamed(view.facts(), new NameLetters(Texts.in(Locale.UK))::of);
        Entry<Incident> incident = view.facts().of(Incident.class).named(open()).orElseThrow();
        List<String> causes =
                view.facts().of(Cause.class).where(cause -> cause.incident().equals(incident.id())).stream()
                        .map(cause -> unnamed.of(cause.fact().statement()))
                        .toList();
        String said = window.said();
        int with = said.indexOf("On it with words ticked");
        assertThat(causes).isNotEmpty();
        assertThat(said.substring(said.indexOf("On it in any case"), with)).contains(causes);
        assertThat(said.substring(with)).doesNotContain(causes);
        assertThat(said).contains("that the logbook knows are letters").doesNotContain("are never on it");
    }

    private Command share() {
        return window.commands.stream()
                .filter(command -> command.key().equals("casesheet.command.print"))
                .findFirst()
                .orElseThrow();
    }

    private String open() {
        return window.logbook
                .view()
                .facts()
                .of(Incident.class)
                .inForce()
                .filter(incident -> incident.fact().closed() == null)
                .map(incident -> incident.fact().mark())
                .reduce((before, last) -> last)
                .orElseThrow();
    }

    private JComboBox<?> which() {
        JRootPane root = Stage.window(window.pane, window.pane.menuBar(), 1366, 768);
        window.settle();
        return new Ui(Stage.lay(root, 1366, 768)).choice("Which case");
    }
}
