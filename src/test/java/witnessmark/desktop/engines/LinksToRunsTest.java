package witnessmark.desktop.engines;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Incident;
import witnessmark.domain.Run;

/** From an engine to the sheet of a run: by the entries behind a figure and by the line of life. */
@UiTest
class LinksToRunsTest {
    private EnginesWindow window;

    @BeforeEach
    void open() {
        window = new EnginesWindow(
                EnginesWindow.inMemory(),
                Looks.look(Theme.LIGHT, 1.0f),
                EnginesWindow.english(),
                new Elsewhere(PlaceId.RUN_SHEET),
                new Elsewhere(PlaceId.INCIDENTS));
        window.engine("K03");
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void an_entry_behind_a_figure_leads_to_its_run() {
        window.behindSinceRebuild();
        BehindLine race = window.entry("Race 2, Round 5");
        window.select(race);
        window.root(1366, 768);

        new Ui(window.place.sheet().beside().behind()).button("Open").doClick();

        assertThat(window.pane.current()).contains(Visit.to(PlaceId.RUN_SHEET, race.id()));
    }

    /** With a run that may be another all five buttons show. */
    @Test
    void the_buttons_of_an_entry_stand_side_by_side() {
        window.behindSinceRebuild();
        window.select(window.entry("Race 2, Round 5"));
        window.root(1366, 768);

        assertThat(LayoutRules.broken(window.place.sheet().beside().behind().actions()))
                .isEmpty();
    }

    @Test
    void on_the_line_of_life_a_run_opens_and_of_anything_else_the_history_is_shown() {
        LineOfLifeModel line = window.place.sheet().line();
        int at = at(line, true);
        String run = line.marks().get(at).source().id().text();

        line.choose(at(line, false));
        press();
        assertThat(window.pane.current()).contains(Visit.to(PlaceId.ENGINES, engine()));
        assertThat(window.place.sheet().beside().behind().history().shown()).isNotEmpty();

        line.choose(at);
        press();
        assertThat(window.pane.current()).contains(Visit.to(PlaceId.RUN_SHEET, run));
    }

    @Test
    void on_the_line_of_life_an_incident_says_how_bad_it_was_and_opens_its_page() {
        LineOfLifeModel line = window.place.sheet().line();
        int at = IntStream.range(0, line.marks().size())
                .filter(i -> line.marks().get(i).source().fact() instanceof Incident)
                .findFirst()
                .orElseThrow();
        LifeMark mark = line.marks().get(at);
        assertThat(mark.kind()).isEqualTo(LifeMark.Kind.LOST);
        assertThat(mark.label()).isEqualTo("INC-02 lost run");
        assertThat(mark.words()).contains("Sun 3 May 2026", "INC-02 ", "lost run", "Round 2, Quarrendale", "car 41");

        line.choose(at);
        press();

        assertThat(window.pane.current())
                .contains(Visit.to(PlaceId.INCIDENTS, mark.source().id().text()));
    }

    private static int at(LineOfLifeModel line, boolean run) {
        for (int i = 0; i < line.marks().size(); i++) {
            if (line.marks().get(i).source().fact() instanceof Run == run) {
                return i;
            }
        }
        throw new AssertionError("nothing of the kind on the line");
    }

    private String engine() {
        return window.desk
                .view()
                .facts()
                .of(witnessmark.domain.Engine.class)
                .named("K03")
                .orElseThrow()
                .id()
                .text();
    }

    private void press() {
        AtomicReference<LineOfLifeView> view = new AtomicReference<>();
        Stage.walk(window.pane, component -> {
            if (component instanceof LineOfLifeView found) {
                view.set(found);
            }
        });
        view.get().getActionMap().get("open").actionPerformed(new ActionEvent(this, 0, "open"));
        window.tasks.awaitIdle();
    }

    /** Another place. */
    private static final class Elsewhere implements Place {
        private final PlaceId id;
        private final JButton page = new JButton("elsewhere");

        Elsewhere(PlaceId id) {
            this.id = id;
        }

        @Override
        public PlaceId id() {
            return id;
        }

        @Override
        public JComponent component() {
            return page;
        }

        @Override
        public JComponent firstFocus() {
            return page;
        }

        @Override
        public void refresh() {
            page.repaint();
        }
    }
}
