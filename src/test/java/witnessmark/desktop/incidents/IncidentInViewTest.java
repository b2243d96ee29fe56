package witnessmark.desktop.incidents;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.JFrame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;

/** What is done next from the incident in view is done to its engine. */
@UiTest(display = true)
class IncidentInViewTest {
    private final JFrame frame = new JFrame();
    private IncidentsWindow window;

    @AfterEach
    void close() {
        frame.dispose();
        window.close();
    }

    @Test
    void its_engine_is_in_view_with_it_and_only_then() {
        View view = IncidentsWindow.sample();
        window = new IncidentsWindow(Looks.light(), IncidentsWindow.english(), view);
        frame.setContentPane(window.pane);
        frame.setSize(1366, 768);
        frame.setVisible(true);
        window.choose("INC-03");
        Incident incident =
                view.facts().of(Incident.class).named("INC-03").orElseThrow().fact();
        assertThat(incident.engine()).isNotNull();
        assertThat(window.place.engineInView()).contains(incident.engine());

        frame.setVisible(false);
        assertThat(window.place.engineInView()).isEmpty();
    }
}
