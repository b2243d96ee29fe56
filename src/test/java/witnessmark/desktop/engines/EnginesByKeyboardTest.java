package witnessmark.desktop.engines;

import static java.awt.event.InputEvent.CTRL_DOWN_MASK;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.swing.AbstractButton;
import javax.swing.JFrame;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.chart.Dot;
import witnessmark.chart.DrawnChart;
import witnessmark.desktop.form.ChartView;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.TabWalk;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.Desk;
import witnessmark.logbook.engines.Behind;

/** The place Engines in a real window with nothing but keys. */
@UiTest(display = true)
class EnginesByKeyboardTest {
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

    private EngineSheetView sheet() {
        return window.place.sheet();
    }

    /** Tab until the focus is where it should be. */
    private void tabTo(Component wanted) {
        for (int i = 0; i < 40 && Keyboard.owner() != wanted; i++) {
            keys.press(KeyEvent.VK_TAB);
        }
        assertThat(Keyboard.owner()).isSameAs(wanted);
    }

    private String sinceRebuild() {
        return sheet().head().sinceRebuildButton().getText();
    }

    @Test
    void tab_goes_over_everything_once_in_reading_order_and_comes_round() {
        List<String> names = TabWalk.namesFrom(window.place.firstFocus());
        assertThat(names).doesNotHaveDuplicates().noneMatch(String::isBlank);
        assertThat(names)
                .containsSubsequence(
                        "Engines",
                        "Heads, and parts off the engines",
                        sinceRebuild(),
                        "Line of life of K03",
                        "What is in it and what it has done",
                        "Build as fitted");
    }

    @Test
    void tab_goes_on_into_the_entries_behind_a_figure_and_what_can_be_done_to_one() {
        tabTo(sheet().head().sinceRebuildButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(sheet().beside().behind().entries().table());
        List<String> names = TabWalk.namesFrom(window.place.firstFocus());
        assertThat(names).doesNotHaveDuplicates().noneMatch(String::isBlank);
        assertThat(names)
                .containsSubsequence("Build as fitted", "Close", "Entries behind the figure", "Strike out…", "History");
    }

    @Test
    void arrows_open_another_engine() {
        keys.press(KeyEvent.VK_DOWN);
        String below = window.place.lists().engines().sheet().selected().number();
        assertThat(below).isNotEqualTo("K03");
        assertThat(sheet().lineView().getAccessibleContext().getAccessibleName())
                .isEqualTo("Line of life of " + below);
        keys.press(KeyEvent.VK_UP);
        assertThat(sheet().lineView().getAccessibleContext().getAccessibleName())
                .isEqualTo("Line of life of K03");
    }

    @Test
    void ctrl_f_filters_the_list_in_hand_and_esc_gives_all_of_it_back() {
        FigureTable<EngineLine> engines = window.place.lists().engines();
        keys.press(KeyEvent.VK_F, CTRL_DOWN_MASK);
        tabbedInto("Filter this list");
        keys.type("k06 shells");
        assertThat(numbers(engines)).containsExactly("K06");
        assertThat(Keyboard.owner().getAccessibleContext().getAccessibleDescription())
                .isEqualTo("1 of 5");
        keys.press(KeyEvent.VK_DOWN);
        Focus.await(engines.table());
        assertThat(sheet().lineView().getAccessibleContext().getAccessibleName())
                .isEqualTo("Line of life of K06");
        keys.press(KeyEvent.VK_ESCAPE);
        assertThat(numbers(engines)).containsExactly("K03", "K05", "K06", "K21", "K22");
        assertThat(engines.sheet().selected().number()).isEqualTo("K06");
    }

    /** The entries filtered add up to the sum of their own amounts; all of them to the figure itself. */
    @Test
    void the_entries_behind_a_figure_add_up_as_far_as_they_are_shown() {
        tabTo(sheet().head().sinceRebuildButton());
        keys.press(KeyEvent.VK_SPACE);
        SheetTable<BehindLine> entries = sheet().beside().behind().entries();
        Focus.await(entries.table());
        assertThat(window.said()).contains("27 entries", "12.87 h").doesNotContain("Shown:");
        keys.press(KeyEvent.VK_F, CTRL_DOWN_MASK);
        tabbedInto("Filter this list");
        keys.type("pellow ridge");
        long sum = entries.shown().stream()
                .filter(BehindLine::counts)
                .mapToLong(BehindLine::amount)
                .sum();
        assertThat(entries.shown()).hasSizeBetween(2, 26);
        assertThat(window.said())
                .contains("Shown: " + entries.shown().size() + " of 27 entries")
                .contains(String.format(Locale.ROOT, "%.2f h", sum / 3_600_000.0));
    }

    /** The longest figure keeps its room when everything is shown larger. */
    @Test
    void ctrl_plus_shows_all_larger_and_no_figure_is_cut() {
        JTable list = window.place.lists().engines().table();
        int before = list.getRowHeight();
        keys.press(KeyEvent.VK_PLUS, CTRL_DOWN_MASK);
        Focus.await(list);
        assertThat(list.getRowHeight()).isGreaterThan(before);
        for (int row = 0; row < list.getRowCount(); row++) {
            for (int column = 3; column <= 5; column++) {
                Component cell = list.prepareRenderer(list.getCellRenderer(row, column), row, column);
                assertThat(list.getColumnModel().getColumn(column).getPreferredWidth())
                        .isGreaterThanOrEqualTo(cell.getPreferredSize().width);
            }
        }
        keys.press(KeyEvent.VK_0, CTRL_DOWN_MASK);
        assertThat(list.getRowHeight()).isEqualTo(before);
    }

    @Test
    void ctrl_shift_s_sorts_by_the_column_in_hand() {
        FigureTable<EngineLine> engines = window.place.lists().engines();
        engines.table().setColumnSelectionInterval(1, 1);
        keys.press(KeyEvent.VK_S, CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK);
        keys.press(KeyEvent.VK_S, CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK);
        assertThat(numbers(engines)).containsExactly("K22", "K21", "K06", "K05", "K03");
    }

    private static List<String> numbers(FigureTable<EngineLine> engines) {
        return engines.sheet().shown().stream().map(EngineLine::number).toList();
    }

    private void tabbedInto(String name) {
        Focus.await(new Ui(window.pane).field(name));
    }

    @Test
    void enter_on_a_figure_shows_its_entries_and_esc_goes_back_to_it() {
        Component build = sheet().build().table().table();
        tabTo(build);
        keys.press(KeyEvent.VK_HOME, CTRL_DOWN_MASK);
        keys.press(KeyEvent.VK_ENTER);
        Focus.await(sheet().beside().behind().entries().table());
        BuildLine part = sheet().build().table().sheet().selected();
        assertThat(sheet().beside().behind().getAccessibleContext().getAccessibleName())
                .contains(part.ran().text());

        tabTo(sheet().beside().behind().actions().historyButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(sheet().beside().behind().history().table());
        assertThat(sheet().beside().behind().history().shown()).isNotEmpty();
        keys.press(KeyEvent.VK_ESCAPE);
        Focus.await(sheet().beside().behind().entries().table());
        keys.press(KeyEvent.VK_ESCAPE);
        Focus.await(build);
        assertThat(sheet().beside().behind().isVisible()).isFalse();
    }

    /** The run is out of every figure when struck out, and Ctrl+Z gives back exactly what there was. */
    @Test
    void an_entry_is_struck_out_with_a_reason_and_ctrl_z_restores_it() {
        String before = sinceRebuild();
        List<String> lives = lives();
        tabTo(sheet().head().sinceRebuildButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(sheet().beside().behind().entries().table());
        String entry = sheet().beside().behind().entries().selected().words();
        tabTo(sheet().beside().behind().actions().strikeButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(sheet().beside().behind().actions().reason().field());
        keys.press(KeyEvent.VK_ENTER, CTRL_DOWN_MASK);
        assertThat(sheet().beside().behind().actions().reason().line().getText())
                .isNotBlank();
        assertThat(sinceRebuild()).isEqualTo(before);

        keys.type("written twice").press(KeyEvent.VK_ENTER, CTRL_DOWN_MASK);

        assertThat(sinceRebuild()).isNotEqualTo(before);
        assertThat(lives()).isNotEqualTo(lives);
        assertThat(sheet().beside().behind().entries().selected().why()).isEqualTo(Behind.Why.STRUCK_OUT);
        assertThat(sheet().beside().behind().entries().selected().how()).isEqualTo("struck out: written twice");
        Focus.await(sheet().beside().behind().actions().restoreButton());

        keys.press(KeyEvent.VK_Z, CTRL_DOWN_MASK);

        assertThat(sinceRebuild()).isEqualTo(before);
        assertThat(lives()).isEqualTo(lives);
        assertThat(sheet().beside().behind().entries().selected().words()).isEqualTo(entry);
        Focus.await(sheet().beside().behind().actions().strikeButton());
    }

    /** The offer to undo stands in the strip while other things are done; it never takes those back. */
    @Test
    void the_undo_offered_takes_back_its_own_change_or_none() {
        tabTo(sheet().head().sinceRebuildButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(sheet().beside().behind().entries().table());
        strikeOutTheEntryInHand("written twice");
        AbstractButton offered = new Ui(window.pane).button("Undo");
        keys.press(KeyEvent.VK_Z, CTRL_DOWN_MASK);
        strikeOutTheEntryInHand("another driver");
        String after = sinceRebuild();

        offered.doClick();
        window.tasks.awaitIdle();

        assertThat(sinceRebuild()).isEqualTo(after);
    }

    private void strikeOutTheEntryInHand(String why) {
        tabTo(sheet().beside().behind().actions().strikeButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(sheet().beside().behind().actions().reason().field());
        keys.type(why).press(KeyEvent.VK_ENTER, CTRL_DOWN_MASK);
        Focus.await(sheet().beside().behind().actions().restoreButton());
    }

    @Test
    void esc_leaves_the_reason_without_striking_anything_out() {
        String before = sinceRebuild();
        tabTo(sheet().head().sinceRebuildButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(sheet().beside().behind().entries().table());
        tabTo(sheet().beside().behind().actions().strikeButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(sheet().beside().behind().actions().reason().field());
        keys.type("never mind").press(KeyEvent.VK_ESCAPE);
        Focus.await(sheet().beside().behind().actions().strikeButton());
        assertThat(sinceRebuild()).isEqualTo(before);
        assertThat(sheet().beside().behind().isVisible()).isTrue();
    }

    @Test
    void the_line_of_life_is_walked_and_looked_into_by_keys() {
        tabTo(sheet().lineView());
        LineOfLifeModel line = sheet().line();
        keys.press(KeyEvent.VK_HOME);
        assertThat(line.chosenIndex()).isZero();
        keys.press(KeyEvent.VK_RIGHT);
        assertThat(line.chosenIndex()).isEqualTo(1);
        assertThat(sheet().readout()).isEqualTo(line.marks().get(1).words());
        assertThat(sheet().lineView().getAccessibleContext().getAccessibleDescription())
                .isEqualTo(line.marks().get(1).words());
        keys.press(KeyEvent.VK_LEFT).press(KeyEvent.VK_LEFT);
        assertThat(line.chosenIndex()).isZero();
        keys.press(KeyEvent.VK_END);
        assertThat(line.chosenIndex()).isEqualTo(line.marks().size() - 1);

        double all = seen(line);
        keys.press(KeyEvent.VK_PLUS);
        assertThat(seen(line)).isLessThan(all);
        assertThat(line.share(line.chosen().from())).isBetween(0.0, 1.0);
        keys.press(KeyEvent.VK_HOME);
        assertThat(line.share(line.chosen().from())).as("brought into view").isBetween(0.0, 1.0);
        keys.press(KeyEvent.VK_MINUS).press(KeyEvent.VK_MINUS);
        assertThat(seen(line)).as("never further than all of it").isEqualTo(all);
        keys.press(KeyEvent.VK_PLUS).press(KeyEvent.VK_PLUS).press(KeyEvent.VK_0);
        assertThat(seen(line)).isEqualTo(all);

        keys.press(KeyEvent.VK_HOME).press(KeyEvent.VK_ENTER);
        Focus.await(sheet().beside().behind().history().table());
        assertThat(sheet().beside().behind().history().shown()).isNotEmpty();
        keys.press(KeyEvent.VK_ESCAPE);
        Focus.await(sheet().lineView());
        assertThat(sheet().beside().behind().isVisible())
                .as("no figure is open, so nothing is left to show")
                .isFalse();
    }

    /** How much of the line is seen at once, in milliseconds. */
    private static double seen(LineOfLifeModel line) {
        long day = 86_400_000L;
        return day / (line.share(day) - line.share(0.0));
    }

    @Test
    void the_chart_is_walked_and_looked_into_by_keys() {
        toChart();
        ChartView view = sheet().curves().view();
        keys.press(KeyEvent.VK_HOME);
        String first = sheet().curves().readout();
        keys.press(KeyEvent.VK_RIGHT);
        String second = sheet().curves().readout();
        assertThat(second).isNotBlank().isNotEqualTo(first);
        assertThat(view.getAccessibleContext().getAccessibleDescription()).isEqualTo(second);
        keys.press(KeyEvent.VK_LEFT);
        assertThat(sheet().curves().readout()).isEqualTo(first);
        keys.press(KeyEvent.VK_END);
        String last = sheet().curves().readout();
        assertThat(last).startsWith("K03");
        keys.press(KeyEvent.VK_DOWN);
        assertThat(sheet().curves().readout()).startsWith("HD-03");
        keys.press(KeyEvent.VK_UP);
        assertThat(sheet().curves().readout()).startsWith("K03");

        double all = seen(view);
        keys.press(KeyEvent.VK_PLUS);
        assertThat(seen(view)).isLessThan(all);
        keys.press(KeyEvent.VK_MINUS).press(KeyEvent.VK_MINUS);
        assertThat(seen(view)).isEqualTo(all);
        keys.press(KeyEvent.VK_PLUS).press(KeyEvent.VK_PLUS).press(KeyEvent.VK_0);
        assertThat(seen(view)).isEqualTo(all);
    }

    @Test
    void enter_on_a_run_behind_a_figure_opens_it_on_its_sheet_and_back_leads_here() {
        tabTo(sheet().head().sinceRebuildButton());
        keys.press(KeyEvent.VK_SPACE);
        Focus.await(sheet().beside().behind().entries().table());
        String run = sheet().beside().behind().entries().selected().id();
        keys.press(KeyEvent.VK_ENTER);
        assertThat(window.pane.current()).contains(new Visit(PlaceId.RUN_SHEET.name(), run));
        window.tasks.awaitIdle();
        keys.press(KeyEvent.VK_LEFT, InputEvent.ALT_DOWN_MASK);
        assertThat(window.pane.current().orElseThrow().page()).isEqualTo(PlaceId.ENGINES.name());
    }

    /** On the charts of all engines and all heads most points belong to another engine than the one in hand. */
    @ParameterizedTest
    @EnumSource(CurvesModel.Which.class)
    void enter_on_a_point_of_the_chart_opens_its_record_whosever_it_is(CurvesModel.Which which) {
        toChart();
        sheet().curves().which().combo().setSelectedItem(which);
        keys.press(KeyEvent.VK_DOWN).press(KeyEvent.VK_END).press(KeyEvent.VK_LEFT);
        DrawnChart drawn = Objects.requireNonNull(sheet().curves().view().drawn());
        List<Dot> dots = drawn.chart().lines().get(1).dots();
        Dot point = dots.get(dots.size() - 2);
        assertThat(sheet().curves().readout()).isEqualTo(point.words());

        keys.press(KeyEvent.VK_ENTER);

        assertThat(window.pane.current()).contains(new Visit(PlaceId.RUN_SHEET.name(), point.record()));
    }

    @Test
    void enter_on_the_rebuild_on_the_chart_shows_its_history_and_esc_goes_back_to_the_chart() {
        toChart();
        keys.press(KeyEvent.VK_HOME).press(KeyEvent.VK_ENTER);
        Focus.await(sheet().beside().behind().history().table());
        assertThat(sheet().beside().behind().historyOf()).contains("K03", "28 Jan 2026");
        assertThat(sheet().beside().behind().history().shown()).isNotEmpty();
        keys.press(KeyEvent.VK_ESCAPE);
        Focus.await(sheet().curves().view());
    }

    private void toChart() {
        tabTo(sheet().tabs());
        keys.press(KeyEvent.VK_RIGHT).press(KeyEvent.VK_RIGHT);
        assertThat(sheet().tabs().getSelectedIndex()).isEqualTo(2);
        tabTo(sheet().curves().view());
    }

    private static double seen(ChartView view) {
        DrawnChart drawn = Objects.requireNonNull(view.drawn());
        return Math.rint(drawn.to() - drawn.from());
    }

    private List<String> lives() {
        return sheet().lives().table().sheet().shown().stream()
                .map(line -> line.counter() + " " + line.whole() + " " + line.sinceRebuild())
                .toList();
    }

    @Test
    void enter_in_the_field_for_a_day_looks_at_the_logbook_as_of_that_day() {
        window.place.commands().get(0).perform();
        Focus.await(window.place.asOf().day().field());
        keys.type("4 May 2026");
        keys.press(KeyEvent.VK_ENTER);
        assertThat(desk.view().day()).isEqualTo(LocalDate.of(2026, 5, 4));
        assertThat(desk.view().readOnly()).isTrue();
    }
}
