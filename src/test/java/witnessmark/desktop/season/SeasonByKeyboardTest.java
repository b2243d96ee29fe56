package witnessmark.desktop.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.TabWalk;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.logbook.View;

/** The place Season ledger in a real window with nothing but keys. */
@UiTest(display = true)
class SeasonByKeyboardTest {
    private final JFrame frame = new JFrame();

    private SeasonWindow window;
    private Keyboard keys;

    @BeforeEach
    void show() {
        window = new SeasonWindow(Looks.light(), SeasonWindow.english(), SeasonWindow.end());
        keys = new Keyboard(window.tasks::awaitIdle);
        frame.setContentPane(window.pane);
        frame.setJMenuBar(window.pane.menuBar());
        frame.setSize(1366, 768);
        frame.setVisible(true);
        window.place.firstFocus().requestFocusInWindow();
        Focus.await(window.place.firstFocus());
    }

    @AfterEach
    void close() {
        frame.dispose();
        window.close();
    }

    @Test
    void enter_opens_a_failure_to_its_lines_enter_a_line_to_its_sheet_and_esc_goes_back() {
        keys.press(KeyEvent.VK_DOWN).press(KeyEvent.VK_ENTER);
        Focus.await(window.place.panel().lines().table().table());
        assertThat(window.said()).contains("INC-06 Exhaust valve 3B dropped: ", "These lines are together");
        keys.press(KeyEvent.VK_ENTER);
        assertThat(window.asked).hasSize(1).first().asString().startsWith("correct ");
        keys.press(KeyEvent.VK_ESCAPE);
        Focus.await(window.page().failures().table());
        assertThat(window.page().failures().selected().name()).startsWith("INC-06");
    }

    /** Elsewhere the same key prints the job sheet; here it prints what is in sight, wherever in the window the focus is. */
    @Test
    void the_key_everybody_prints_with_prints_the_season_while_it_is_in_sight() {
        keys.press(KeyEvent.VK_P, InputEvent.CTRL_DOWN_MASK);
        assertThat(window.asked).containsExactly("print");
        Component places =
                within(window.pane).filter(JList.class::isInstance).findFirst().orElseThrow();
        places.requestFocusInWindow();
        Focus.await(places);
        keys.press(KeyEvent.VK_P, InputEvent.CTRL_DOWN_MASK);
        assertThat(window.asked).containsExactly("print", "print");
    }

    @Test
    void enter_opens_a_row_of_the_budget_to_its_lines_which_follow_the_logbook_and_esc_goes_back() {
        window.page().budget().table().requestFocusInWindow();
        Focus.await(window.page().budget().table());
        BudgetLine row = window.page().budget().selected();
        keys.press(KeyEvent.VK_ENTER);
        Focus.await(window.place.panel().lines().table().table());
        int before = window.place.panel().lines().table().shown().size();
        assertThat(window.said()).contains(row.behind().name() + ": ");
        View end = SeasonWindow.end();
        String gone = row.behind().lines().get(0).record();
        Entry<CostLine> line =
                end.facts().of(CostLine.class).find(Id.parse(gone)).orElseThrow();
        window.reads(() -> SeasonWindow.on(
                end.facts()
                        .with(List.of(
                                new Entry<>(line.id(), line.fact(), Standing.STRUCK_OUT, "not ours", line.rev() + 1))),
                SeasonWindow.WINTER));
        assertThat(window.place.panel().lines().table().shown()).hasSizeLessThan(before);
        keys.press(KeyEvent.VK_ESCAPE);
        Focus.await(window.page().budget().table());
    }

    @Test
    void on_the_line_of_the_season_the_arrows_go_from_failure_to_failure_and_enter_opens_one() {
        window.page().line().requestFocusInWindow();
        Focus.await(window.page().line());
        keys.press(KeyEvent.VK_RIGHT).press(KeyEvent.VK_RIGHT).press(KeyEvent.VK_LEFT);
        assertThat(window.page().line().getAccessibleContext().getAccessibleDescription())
                .startsWith("Sun 3 May 2026: INC-02 Over-rev on a missed down-change");
        keys.press(KeyEvent.VK_ENTER);
        Focus.await(window.place.panel().lines().table().table());
        keys.press(KeyEvent.VK_ESCAPE);
        Focus.await(window.page().line());
    }

    @Test
    void what_is_not_settled_and_kinds_of_part_are_gone_to_even_from_behind_a_figure_and_come_into_view() {
        keys.press(KeyEvent.VK_ENTER);
        Focus.await(window.place.panel().lines().table().table());
        perform("season.command.settle");
        Focus.await(window.page().settle().table());
        keys.press(KeyEvent.VK_SHIFT);
        assertThat(window.page().settle().table().getVisibleRect().height).isPositive();
        perform("season.command.kinds");
        Focus.await(window.page().kinds().table());
        keys.press(KeyEvent.VK_SHIFT);
        assertThat(window.page().kinds().table().getVisibleRect().height).isPositive();
    }

    @Test
    void tab_goes_over_the_page_from_top_to_bottom_and_comes_round() {
        assertThat(TabWalk.namesFrom(window.place.firstFocus()))
                .doesNotHaveDuplicates()
                .containsSubsequence(
                        "Failures, dearest first",
                        "Put together by",
                        "What failures went on",
                        "What went on each kind of part",
                        "The season, car by car",
                        "Planned and used",
                        "Decisions, and what came of them",
                        "Money still to be settled",
                        "What came in",
                        "Seasons beside each other");
    }

    /** From a sheet one comes back to the line it was opened from; who asks for the ledger itself gets its top. */
    @Test
    void back_from_a_sheet_the_lines_are_there_still_and_asked_for_by_its_key_the_ledger_begins_at_its_top() {
        keys.press(KeyEvent.VK_ENTER);
        Focus.await(window.place.panel().lines().table().table());
        sheetAndBack();
        window.tasks.awaitIdle();
        Focus.await(window.place.panel().lines().table().table());
        keys.press(KeyEvent.VK_8, InputEvent.CTRL_DOWN_MASK);
        Focus.await(window.page().failures().table());
        assertThat(window.said()).doesNotContain("These lines are together");
        window.page().settle().table().requestFocusInWindow();
        Focus.await(window.page().settle().table());
        sheetAndBack();
        Focus.await(window.page().settle().table());
        window.window.go(PlaceId.SEASON_LEDGER);
        Focus.await(window.page().failures().table());
    }

    private void sheetAndBack() {
        window.window.goAside(PlaceId.BEFORE_WE_GO);
        window.window.comeBack(PlaceId.BEFORE_WE_GO);
    }

    /** On arrival the focus is there before the season is read. */
    @Test
    void rows_that_come_under_the_focus_have_one_in_hand_so_that_enter_opens_it() {
        List<FailureLine> rows = window.page().failures().shown();
        window.page().failures().show(List.of());
        Focus.await(window.page().failures().table());
        window.page().failures().show(rows);
        assertThat(window.page().failures().selected()).isEqualTo(rows.get(0));
    }

    private void perform(String key) {
        window.place.commands().stream()
                .filter(command -> command.key().equals(key))
                .forEach(Command::perform);
    }

    private static Stream<Component> within(Container root) {
        return Stream.of(root.getComponents())
                .flatMap(each -> each instanceof Container inner
                        ? Stream.concat(Stream.of(each), within(inner))
                        : Stream.of(each));
    }
}
