package witnessmark.desktop.engines;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Trial;
import witnessmark.logbook.Desk;

/** A part that is in no engine, opened as finding it does, with nothing but keys. */
@UiTest(display = true)
class PartPageTest {
    private final JFrame frame = new JFrame();

    private Desk desk;
    private EnginesWindow window;
    private Keyboard keys;

    @BeforeEach
    void show() {
        desk = EnginesWindow.inMemory();
        window = new EnginesWindow(desk, Looks.light(), EnginesWindow.english()).engine("K03");
        keys = new Keyboard(window.tasks::awaitIdle);
        frame.setContentPane(window.pane);
        frame.setJMenuBar(window.pane.menuBar());
        frame.setSize(1366, 768);
        frame.setVisible(true);
        window.window.go(PlaceId.ENGINES);
        window.tasks.awaitIdle();
        Focus.await(window.place.firstFocus());
    }

    @AfterEach
    void close() {
        frame.dispose();
        window.tasks.awaitIdle();
        window.close();
        desk.logbook().close();
    }

    private PartView part() {
        return window.place.part();
    }

    @Test
    void a_part_that_came_off_opens_with_where_it_is_and_where_it_has_been() {
        window.part("RB-03a");
        Focus.await(part().times().table());
        assertThat(part().where()).isEqualTo("out of use since Fri 8 May 2026");
        assertThat(part().times().sheet().shown()).singleElement().satisfies(time -> {
            assertThat(time.place()).isEqualTo("K03");
            assertThat(time.position()).isEqualTo("rod bolts");
            assertThat(time.since()).isEqualTo("Wed 28 Jan 2026");
            assertThat(time.until()).isEqualTo("Fri 8 May 2026");
            assertThat(time.why()).startsWith("replaced after the over-rev");
        });
        assertThat(window.place.sheet().component().isVisible()).isFalse();
        assertThat(window.place.lists().parts().sheet().selected().mark()).isEqualTo("RB-03a");
    }

    /** The sample tries coated head gaskets since 5 June: each leads to that trial, a set of bolts to none. */
    @Test
    void a_part_of_a_design_on_trial_leads_to_the_trial() {
        List<String> opened = new ArrayList<>();
        window.place.leadsTo(engine -> {}, build -> {}, engine -> {}, opened::add, () -> {});
        window.part("RB-03a");
        Focus.await(part().times().table());
        assertThat(ways()).isEmpty();
        Entry<Trial> trial = desk.view().facts().of(Trial.class).all().get(0);
        Id<Part> coated = desk.view()
                .facts()
                .of(Part.class)
                .where(part -> part.design().equals(trial.fact().tried()))
                .get(0)
                .id();
        window.window.go(PlaceId.ENGINES, EnginePage.ofPart(coated.text()));
        window.tasks.awaitIdle();
        frame.validate();
        assertThat(ways()).containsExactly("Trial coated head gasket, since Fri 5 Jun 2026");
        JComponent way = new Ui(part().component()).button("Trial coated head gasket, since Fri 5 Jun 2026");
        way.requestFocusInWindow();
        Focus.await(way);
        keys.press(KeyEvent.VK_SPACE);
        assertThat(opened).containsExactly(trial.id().text());
        Pictures.write("part-on-trial", frame.getRootPane());
    }

    private List<String> ways() {
        return Stage.visible(part().component()).stream()
                .filter(JButton.class::isInstance)
                .map(each -> ((JButton) each).getText())
                .filter(words -> words.startsWith("Trial "))
                .toList();
    }

    @Test
    void its_lives_open_the_entries_behind_them_and_esc_goes_back_step_by_step() {
        window.part("RB-03a");
        Focus.await(part().times().table());
        part().tabs().setSelectedComponent(part().lives());
        part().lives().table().table().requestFocusInWindow();
        Focus.await(part().lives().table().table());
        keys.press(KeyEvent.VK_ENTER);
        BehindPane behind = part().beside().behind();
        Focus.await(behind.entries().table());
        CounterLine running = part().lives().table().sheet().shown().get(0);
        assertThat(behind.getAccessibleContext().getAccessibleName())
                .contains(running.whole().text(), "RB-03a");
        assertThat(behind.entries().shown()).isNotEmpty();
        assertThat(running.sinceRebuild()).isNull();
        keys.press(KeyEvent.VK_ESCAPE);
        Focus.await(part().lives().table().table());
        keys.press(KeyEvent.VK_ESCAPE);
        assertThat(part().component().isVisible()).isFalse();
        assertThat(window.place.sheet().component().isVisible()).isTrue();
        Focus.await(window.place.lists().engines().table());
    }

    @Test
    void a_part_that_was_never_fitted_says_so_and_shows_its_lives() {
        window.part("BE-S1");
        Focus.await(part().lives().table().table());
        assertThat(part().where()).isEqualTo("never fitted, on the shelf");
        assertThat(part().times().sheet().shown()).isEmpty();
        assertThat(part().lives().table().sheet().shown()).isNotEmpty();
    }

    @Test
    void a_part_in_a_car_says_in_which() {
        window.part("GB-41");
        Focus.await(part().times().table());
        assertThat(part().where()).startsWith("in car 41 since ").endsWith(", as gearbox");
    }

    @Test
    void enter_on_a_mark_in_the_list_opens_it_and_enter_on_the_engine_it_was_in_opens_that() {
        FigureTable<PartLine> list = window.place.lists().parts();
        list.table().requestFocusInWindow();
        Focus.await(list.table());
        list.sheet()
                .select(list.sheet().shown().stream()
                        .filter(line -> line.mark().equals("HD-05"))
                        .findFirst()
                        .orElseThrow()
                        .id());
        keys.press(KeyEvent.VK_ENTER);
        Focus.await(part().times().table());
        assertThat(part().where()).isEqualTo("with machinist G1 since Fri 26 Jun 2026");
        keys.press(KeyEvent.VK_ENTER);
        String k05 = desk.view()
                .facts()
                .of(Engine.class)
                .named("K05")
                .orElseThrow()
                .id()
                .text();
        assertThat(window.pane.current()).contains(Visit.to(PlaceId.ENGINES, k05));
        window.tasks.awaitIdle();
        assertThat(window.place.sheet().component().isVisible()).isTrue();
        assertThat(window.place.lists().engines().sheet().selected().number()).isEqualTo("K05");
    }

    @Test
    void a_part_in_an_engine_is_shown_in_the_build_and_from_there_where_it_has_been() {
        window.part("VS-03");
        FigureTable<BuildLine> build = window.place.sheet().build().table();
        assertThat(build.sheet().selected().mark()).isEqualTo("VS-03");
        build.table().requestFocusInWindow();
        Focus.await(build.table());
        build.table().setColumnSelectionInterval(2, 2);
        keys.press(KeyEvent.VK_ENTER);
        Focus.await(part().times().table());
        assertThat(part().where()).startsWith("in K03 since ").endsWith(", as valve springs");
        assertThat(part().times().sheet().shown()).hasSize(2);
    }

    /** The page is read again when the logbook changes, and another engine in hand takes its place back. */
    @Test
    void it_stays_when_the_logbook_changes_and_goes_when_another_engine_is_chosen() {
        window.part("RB-03a");
        window.window.changed();
        window.tasks.awaitIdle();
        assertThat(part().component().isVisible()).isTrue();
        window.engine("K06");
        assertThat(part().component().isVisible()).isFalse();
        window.engine("K06");
        assertThat(window.place.sheet().component().isVisible()).isTrue();
    }
}
