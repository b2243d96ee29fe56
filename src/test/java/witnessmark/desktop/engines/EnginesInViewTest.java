package witnessmark.desktop.engines;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.Desk;

/** What must be seen of the place Engines on a small laptop: a window of 1366 by 768, as it is and at 150 %. */
@UiTest(display = true)
class EnginesInViewTest {
    private final JFrame frame = new JFrame();

    private Desk desk;
    private EnginesWindow window;
    private Keyboard keys;

    private void show(float zoom) {
        desk = EnginesWindow.inMemory();
        window = new EnginesWindow(desk, Looks.look(Theme.LIGHT, zoom), EnginesWindow.english()).engine("K03");
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

    @ParameterizedTest(name = "at {0}")
    @ValueSource(floats = {1.0f, 1.5f})
    void no_cell_of_the_lists_is_cut(float zoom) {
        show(zoom);
        for (JTable list : List.of(
                window.place.lists().engines().table(),
                window.place.lists().parts().table())) {
            for (int row = 0; row < list.getRowCount(); row++) {
                for (int column = 0; column < list.getColumnCount(); column++) {
                    Component cell = list.prepareRenderer(list.getCellRenderer(row, column), row, column);
                    assertThat(list.getColumnModel().getColumn(column).getWidth())
                            .as("row %d of %s, %s", row, list.getColumnName(column), cell)
                            .isGreaterThanOrEqualTo(cell.getPreferredSize().width);
                }
            }
        }
    }

    /** A limit to look counts since the last look; one to renew counts the whole life. */
    @Test
    void a_figure_of_the_build_says_since_when_it_counts() {
        show(1.0f);
        Map<String, String> ran = window.place.sheet().build().table().sheet().shown().stream()
                .collect(Collectors.toMap(
                        BuildLine::mark,
                        line -> line.ran() == null ? "" : line.ran().text(),
                        (one, other) -> one));
        assertThat(ran.get("OP-03")).matches("[0-9.]+ h since 26 Jan");
        assertThat(ran.get("VS-03")).matches("[0-9.]+ h");
        JTable table = window.place.sheet().build().table().table();
        for (int row = 0; row < table.getRowCount(); row++) {
            Component cell = table.prepareRenderer(table.getCellRenderer(row, 5), row, 5);
            assertThat(table.getColumnModel().getColumn(5).getWidth())
                    .as("row %d, %s", row, cell)
                    .isGreaterThanOrEqualTo(cell.getPreferredSize().width);
        }
    }

    @ParameterizedTest(name = "at {0}")
    @ValueSource(floats = {1.0f, 1.5f})
    void how_a_part_stands_is_read_whole_above_its_page(float zoom) {
        show(zoom);
        for (String mark : List.of("HD-05", "RB-03a", "RS-05", "RG-S1", "VS-05")) {
            window.part(mark);
            JLabel stands = window.place.part().stands();
            frame.validate();
            assertThat(stands.getWidth())
                    .as("%s: %s", mark, stands.getText())
                    .isGreaterThanOrEqualTo(stands.getPreferredSize().width);
        }
    }

    @ParameterizedTest(name = "at {0}")
    @ValueSource(floats = {1.0f, 1.5f})
    void the_entries_behind_a_figure_and_what_can_be_done_to_one_are_in_view(float zoom) {
        show(zoom);
        window.behindSinceRebuild();
        BehindPane behind = window.place.sheet().beside().behind();
        Focus.await(behind.entries().table());
        keys.press(KeyEvent.VK_UP);
        inView(behind.actions());
        JTable entries = behind.entries().table();
        assertThat(entries.getVisibleRect().height).isGreaterThanOrEqualTo(2 * entries.getRowHeight());
    }

    @ParameterizedTest(name = "at {0}")
    @ValueSource(floats = {1.0f, 1.5f})
    void the_tabs_stand_in_one_row_beside_the_entries_or_give_way_to_them(float zoom) {
        show(zoom);
        window.behindSinceRebuild();
        Focus.await(window.place.sheet().beside().behind().entries().table());
        var tabs = window.place.sheet().tabs();
        assertThat(tabs.isVisible()).isEqualTo(zoom == 1.0f);
        assertThat(tabs.getTabRunCount()).isEqualTo(1);
        keys.press(KeyEvent.VK_ESCAPE);
        assertThat(tabs.isShowing()).isTrue();
        Focus.await(window.place.firstFocus());
    }

    /** At 150 % the entries stand in the place of the tabs; what is asked for under a tab takes it back. */
    @Test
    void a_part_found_while_entries_stand_in_the_place_of_the_build_is_shown_in_it() {
        show(1.5f);
        window.behindSinceRebuild();
        window.part("BE-06");
        assertThat(window.place.sheet().build().table().table().isShowing()).isTrue();
        assertThat(window.place.sheet().build().table().sheet().selected().mark())
                .isEqualTo("BE-06");
    }

    @ParameterizedTest(name = "at {0}")
    @ValueSource(floats = {1.0f, 1.5f})
    void a_list_that_has_the_focus_shows_where_its_cursor_is(float zoom) {
        show(zoom);
        window.part("VS-03");
        JTable build = window.place.sheet().build().table().table();
        JTable heads = window.place.lists().parts().table();
        for (JTable list : List.of(heads, build)) {
            for (int i = 0; i < 40 && Keyboard.owner() != list; i++) {
                keys.press(KeyEvent.VK_TAB);
            }
            Focus.await(list);
            int row = list.getSelectionModel().getLeadSelectionIndex();
            int column = list.getColumnModel().getSelectionModel().getLeadSelectionIndex();
            assertThat(list.isRowSelected(row)).isTrue();
            assertThat(column).isNotNegative();
            assertThat(list.getVisibleRect().contains(list.getCellRect(row, column, false)))
                    .isTrue();
        }
        assertThat(window.place.sheet().build().table().sheet().selected().mark())
                .isEqualTo("VS-03");
    }

    @ParameterizedTest(name = "at {0}")
    @ValueSource(floats = {1.0f, 1.5f})
    void a_part_that_is_found_comes_into_view(float zoom) {
        show(zoom);
        window.part("RB-03a");
        JTable times = window.place.part().times().table();
        Focus.await(times);
        window.tasks.awaitIdle();
        assertThat(times.getVisibleRect().contains(times.getCellRect(0, 0, false)))
                .isTrue();
    }

    private static void inView(JComponent component) {
        assertThat(component.isShowing()).isTrue();
        assertThat(component.getVisibleRect().getSize())
                .as("%s", component.getAccessibleContext().getAccessibleName())
                .isEqualTo(component.getSize());
    }
}
