package witnessmark.desktop.incidents;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
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

    /** Whoever reads on in an incident goes on to the next with the arrow keys, and that is shown from its top. */
    @Test
    void the_list_stays_in_view_while_the_incident_scrolls_and_the_next_one_begins_at_its_top() {
        IncidentsPanel panel = window.place.panel();
        JComponent list = panel.table().sheet();
        JComponent page = panel.view().component();
        JViewport over = (JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, page);
        Keyboard keys = new Keyboard(window.tasks::awaitIdle);
        int top = list.getLocationOnScreen().y;
        int all = list.getHeight();
        over.setViewPosition(new Point(0, 300));
        keys.press(KeyEvent.VK_SHIFT);
        assertThat(over.getViewPosition().y).isEqualTo(300);
        assertThat(list.getLocationOnScreen().y).isEqualTo(top);
        assertThat(list.getHeight()).isEqualTo(all).isLessThanOrEqualTo(over.getHeight());
        keys.press(KeyEvent.VK_DOWN).press(KeyEvent.VK_SHIFT);
        assertThat(over.getViewPosition().y).isZero();
    }
}
