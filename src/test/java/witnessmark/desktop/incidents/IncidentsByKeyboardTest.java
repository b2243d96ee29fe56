package witnessmark.desktop.incidents;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import javax.swing.JFrame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;

/** The place Incidents in a real window with nothing but keys. */
@UiTest(display = true)
class IncidentsByKeyboardTest {
    private final JFrame frame = new JFrame();

    private IncidentsWindow window;

    @BeforeEach
    void show() {
        window = new IncidentsWindow(Looks.light(), IncidentsWindow.english(), IncidentsWindow.sample());
        frame.setContentPane(window.pane);
        frame.setJMenuBar(window.pane.menuBar());
        frame.setSize(1366, 768);
        frame.setVisible(true);
        window.place.firstFocus().requestFocusInWindow();
        Focus.await(window.place.panel().table().sheet().table());
    }

    @AfterEach
    void close() {
        frame.dispose();
        window.close();
    }

    @Test
    void when_the_last_incident_goes_the_focus_goes_to_what_reports_one() {
        window.reads(IncidentsWindow::bare);
        Focus.await(window.place.panel().table().report());
        new Keyboard(window.tasks::awaitIdle).press(KeyEvent.VK_SPACE);
        assertThat(window.asked).containsExactly("report");
    }
}
