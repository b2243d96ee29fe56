package witnessmark.desktop.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.table.TableColumn;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** A list is filtered, totalled, its columns are chosen, and it is found again as it was left. */
@UiTest
class SheetFilterTest {
    private record Run(String name, String event, long minutes) {}

    private static final List<Run> RUNS = List.of(
            new Run("Practice 1", "Round 1, Brindlewick", 28),
            new Run("Race 1", "Round 1, Brindlewick", 31),
            new Run("Practice 1", "Round 2, Quarrendale", 30),
            new Run("Race 1", "Round 2, Quarrendale", 25));

    private final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    private final MemorySettings settings = new MemorySettings();
    private SheetTable<Run> list;

    @BeforeEach
    void make() {
        list = made();
    }

    private SheetTable<Run> made() {
        SheetTable<Run> made = new SheetTable<>(
                        "Runs",
                        List.of(
                                Column.<Run>text("Run", Run::name)
                                        .totalled(shown -> "Shown: " + shown.size())
                                        .wide(120),
                                Column.<Run>text("Event", Run::event).wide(150).grow(),
                                Column.<Run, Long>figure("Time, min", run -> run.minutes() + " min", Run::minutes)
                                        .totalled(shown -> shown.stream()
                                                        .mapToLong(Run::minutes)
                                                        .sum()
                                                + " min")
                                        .wide(80)),
                        run -> run.name() + run.event())
                .with(new SheetTools(Texts.in(Locale.UK), tasks, settings), "test.runs");
        made.show(RUNS);
        return made;
    }

    /** The program is started again over the same settings. */
    private void again() {
        tasks.awaitIdle();
        list = made();
        tasks.awaitIdle();
    }

    @AfterEach
    void close() {
        tasks.close();
    }

    private void type(String words) {
        list.filterField().field().setText(words);
        tasks.awaitIdle();
    }

    private List<Long> shown() {
        return list.shown().stream().map(Run::minutes).toList();
    }

    private Ui ui() {
        return new Ui(Stage.lay(list, 600, 300));
    }

    private JTable totalsRow() {
        return (JTable) Arrays.stream(list.getComponents())
                .filter(SheetTotals.class::isInstance)
                .map(row -> ((SheetTotals<?>) row).getViewport().getView())
                .findFirst()
                .orElseThrow();
    }

    private String totals() {
        JTable table = totalsRow();
        List<String> cells = new ArrayList<>();
        for (int at = 0; at < table.getColumnCount(); at++) {
            cells.add(String.valueOf(table.getValueAt(0, at)));
        }
        return String.join(" | ", cells);
    }

    @Test
    void a_row_is_shown_when_it_holds_every_word_in_any_column_and_any_case() {
        type("RACE quarren");
        assertThat(shown()).containsExactly(25L);
        assertThat(list.filterField().counted()).isEqualTo("1 of 4");
        type("round");
        assertThat(shown()).containsExactly(28L, 31L, 30L, 25L);
        type("");
        assertThat(shown()).hasSize(4);
        assertThat(list.filterField().counted()).isEmpty();
    }

    /** Held against a plain search of each row's cells, word by word. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23})
    void filtering_many_rows_agrees_with_a_plain_search(long seed) {
        Random random = new Random(seed);
        List<Run> many = IntStream.range(0, 400)
                .mapToObj(i -> new Run("Run " + random.nextInt(40), "Round " + random.nextInt(9), i))
                .toList();
        list.show(many);
        for (String words : List.of("1", "run 3", "round 4 run 1", "min 7", "no such thing")) {
            type(words);
            List<Run> wanted = new ArrayList<>(many);
            for (String word : words.split(" ")) {
                wanted.removeIf(run -> !run.name().toLowerCase(Locale.ROOT).contains(word)
                        && !run.event().toLowerCase(Locale.ROOT).contains(word)
                        && !(run.minutes() + " min").contains(word));
            }
            assertThat(list.shown()).as(words).isEqualTo(wanted);
        }
    }

    @Test
    void the_field_comes_when_asked_for_and_esc_clears_it_away() {
        assertThat(list.filterField().isVisible()).isFalse();
        list.getActionMap().get(SheetTable.FILTER).actionPerformed(null);
        assertThat(list.filterField().isVisible()).isTrue();
        type("race");
        Ui.press(list.filterField().field(), Keys.plain(KeyEvent.VK_ESCAPE));
        assertThat(shown()).hasSize(4);
        assertThat(list.filterField().isVisible()).isFalse();
    }

    @Test
    void esc_among_the_rows_takes_the_filter_away_and_without_one_is_left_to_others() {
        javax.swing.Action esc = list.getActionMap().get("wm-unfilter");
        assertThat(esc.isEnabled()).isFalse();
        type("race");
        assertThat(esc.isEnabled()).isTrue();
        esc.actionPerformed(null);
        assertThat(shown()).hasSize(4);
    }

    @Test
    void a_filter_that_no_row_passes_says_so_and_offers_to_show_all() {
        type("nowhere");
        assertThat(shown()).isEmpty();
        ui().button("Show all rows").doClick();
        assertThat(shown()).hasSize(4);
    }

    @Test
    void the_row_in_hand_comes_back_when_the_filter_goes() {
        list.select("Race 1Round 1, Brindlewick");
        type("practice");
        assertThat(list.selected()).isNull();
        type("");
        assertThat(list.selected()).isEqualTo(RUNS.get(1));
    }

    @Test
    void a_row_that_is_led_to_comes_out_of_the_filter() {
        type("practice");
        assertThat(list.select("Race 1Round 1, Brindlewick")).isTrue();
        assertThat(list.selected()).isEqualTo(RUNS.get(1));
    }

    @Test
    void the_filter_holds_for_rows_that_come_later_and_the_sort_stays() {
        list.table().getRowSorter().toggleSortOrder(2);
        type("race");
        assertThat(shown()).containsExactly(25L, 31L);
        list.show(List.of(RUNS.get(0), RUNS.get(1), new Run("Race 9", "Round 3", 29)));
        assertThat(shown()).containsExactly(29L, 31L);
        assertThat(list.filterField().counted()).isEqualTo("2 of 3");
    }

    @Test
    void the_wheel_over_the_totals_goes_on_to_the_page() {
        Container totals = SwingUtilities.getAncestorOfClass(SheetTotals.class, totalsRow());
        int[] turned = {0};
        totals.getParent().addMouseWheelListener(turn -> turned[0] += turn.getUnitsToScroll());
        totals.dispatchEvent(new MouseWheelEvent(
                totals, MouseEvent.MOUSE_WHEEL, 0, 0, 1, 1, 0, false, MouseWheelEvent.WHEEL_UNIT_SCROLL, 3, 1));
        assertThat(turned[0]).isEqualTo(3);
    }

    @Test
    void the_totals_are_of_the_rows_shown() {
        assertThat(totals()).isEqualTo("Shown: 4 |  | 114 min");
        type("race");
        assertThat(totals()).isEqualTo("Shown: 2 |  | 56 min");
        Stage.lay(list, 600, 300);
        assertThat(totalsRow().getWidth())
                .as("as wide as the list above")
                .isEqualTo(list.table().getWidth());
    }

    @Test
    void columns_are_hidden_and_shown_by_the_menu_and_one_always_stays() {
        choose("Event");
        assertThat(headings()).containsExactly("Run", "Time, min");
        choose("Run");
        choose("Time, min");
        assertThat(headings()).containsExactly("Time, min");
        choose("Event");
        choose("Run");
        assertThat(headings()).as("each in its own place again").containsExactly("Run", "Event", "Time, min");
    }

    @Test
    void a_column_without_anything_to_say_is_neither_shown_nor_offered() {
        list.offer(1, false);
        assertThat(headings()).containsExactly("Run", "Time, min");
        assertThat(items()).doesNotContain("Event");
        list.offer(1, true);
        assertThat(headings()).containsExactly("Run", "Event", "Time, min");
    }

    @Test
    void sorting_by_the_column_in_hand_goes_up_down_and_back() {
        list.table().setRowSelectionInterval(0, 0);
        list.table().setColumnSelectionInterval(2, 2);
        javax.swing.Action sort = list.getActionMap().get(SheetTable.SORT);
        sort.actionPerformed(null);
        assertThat(shown()).containsExactly(25L, 28L, 30L, 31L);
        sort.actionPerformed(null);
        assertThat(shown()).containsExactly(31L, 30L, 28L, 25L);
        sort.actionPerformed(null);
        assertThat(shown()).containsExactly(28L, 31L, 30L, 25L);
    }

    @Test
    void columns_widths_and_sort_are_found_again_and_nothing_is_left_out() {
        choose("Event");
        list.table().getColumnModel().moveColumn(1, 0);
        Stage.lay(list, 600, 300);
        TableColumn time = list.column(2);
        list.table().getTableHeader().setResizingColumn(time);
        time.setWidth(133);
        list.table().getTableHeader().setResizingColumn(null);
        list.table().getRowSorter().toggleSortOrder(2);
        type("race");

        again();

        assertThat(headings()).containsExactly("Time, min", "Run");
        assertThat(list.column(2).getPreferredWidth()).isEqualTo(133);
        assertThat(shown()).as("sorted, and every row there").containsExactly(25L, 28L, 30L, 31L);
        assertThat(list.filterField().text()).isEmpty();

        choose("Columns as at first");
        assertThat(headings()).containsExactly("Run", "Event", "Time, min");
        assertThat(list.column(2).getPreferredWidth()).isLessThan(133);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "nonsense", "3", "3,0,1", "3,0,1,1", "3,0,1,7", "4,0,1,2,3", "3,0,1,2=99999", "3,-0,x,2"})
    void what_does_not_fit_these_columns_is_not_taken_up(String remembered) {
        settings.put("list.test.runs.columns", remembered);
        settings.put("list.test.runs.sort", "9+");
        again();
        assertThat(headings()).containsExactly("Run", "Event", "Time, min");
        assertThat(shown()).containsExactly(28L, 31L, 30L, 25L);
    }

    @Test
    void a_figure_is_never_cut_and_with_too_little_room_the_list_scrolls_sideways() {
        list.show(List.of(new Run("Race 1", "Round 1", 123_456_789_012L)));
        Stage.lay(list, 600, 300);
        int needed = list.table()
                .prepareRenderer(list.table().getCellRenderer(0, 2), 0, 2)
                .getPreferredSize()
                .width;
        assertThat(list.column(2).getWidth()).isGreaterThanOrEqualTo(needed);
        assertThat(list.table().getWidth()).isEqualTo(600);
        Stage.lay(list, 150, 300);
        assertThat(list.column(2).getWidth()).isGreaterThanOrEqualTo(needed);
        assertThat(list.table().getWidth()).isGreaterThan(150);
    }

    private List<String> headings() {
        return IntStream.range(0, list.table().getColumnCount())
                .mapToObj(list.table()::getColumnName)
                .toList();
    }

    private List<String> items() {
        JPopupMenu menu = list.columns().menu(Texts.in(Locale.UK));
        return Arrays.stream(menu.getSubElements())
                .map(item -> ((JMenuItem) item).getText())
                .toList();
    }

    private void choose(String name) {
        JPopupMenu menu = list.columns().menu(Texts.in(Locale.UK));
        Arrays.stream(menu.getSubElements())
                .map(JMenuItem.class::cast)
                .filter(item -> item.getText().equals(name))
                .findFirst()
                .orElseThrow()
                .doClick();
    }
}
