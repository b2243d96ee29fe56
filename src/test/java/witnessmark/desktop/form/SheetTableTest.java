package witnessmark.desktop.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTKeyStroke;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;

@UiTest
class SheetTableTest {
    /** One part; hours {@code null} when they are not known. */
    private record Part(String serial, Double hours, SeamState state) {}

    private static final List<Part> PARTS = List.of(
            new Part("VS-03", 12.87, SeamState.OVER),
            new Part("R-04", null, SeamState.NOT_KNOWN),
            new Part("BE-22", 6.1, SeamState.DUE),
            new Part("P-09", 16.2, SeamState.WITHIN));

    private final SheetTable<Part> table = new SheetTable<>(
            "Parts",
            List.of(
                    Column.mark("Mark", Part::state, state -> "word of " + state),
                    Column.<Part>text("Serial", Part::serial),
                    Column.<Part, Double>figure(
                            "Run, h", part -> part.hours() == null ? "" : "%.1f".formatted(part.hours()), Part::hours)),
            Part::serial);

    private List<String> serials() {
        return table.shown().stream().map(Part::serial).toList();
    }

    private void clickHeading(int column) {
        table.table().getRowSorter().toggleSortOrder(column);
    }

    @Test
    void blanks_come_last_both_ways_and_a_third_click_brings_the_natural_order_back() {
        table.show(PARTS);
        clickHeading(2);
        assertThat(serials()).containsExactly("BE-22", "VS-03", "P-09", "R-04");
        clickHeading(2);
        assertThat(serials()).containsExactly("P-09", "VS-03", "BE-22", "R-04");
        clickHeading(2);
        assertThat(serials()).containsExactly("VS-03", "R-04", "BE-22", "P-09");
    }

    @Test
    void marks_sort_worst_first() {
        List<Part> all = new ArrayList<>();
        for (SeamState state : SeamState.values()) {
            all.add(new Part(state.name(), 1.0, state));
        }
        Collections.reverse(all);
        table.show(all);
        clickHeading(0);
        assertThat(serials()).containsExactly("HELD", "OVER", "RUN_ON", "DUE", "NOT_KNOWN", "WITHIN", "APART", "SCRAP");
    }

    /** Sorted by the plainest means: the known ones by the library's own sort, then the blanks as they stood. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13})
    void sorting_many_rows_agrees_with_a_plain_sort(long seed) {
        Random random = new Random(seed);
        List<Part> parts = IntStream.range(0, 300)
                .mapToObj(i -> new Part(
                        "S-" + i, random.nextInt(4) == 0 ? null : (double) random.nextInt(50), SeamState.WITHIN))
                .toList();
        table.show(parts);
        for (boolean down : new boolean[] {false, true}) {
            clickHeading(2);
            Comparator<Part> order = Comparator.comparing(Part::hours);
            List<Part> wanted = new ArrayList<>(parts.stream()
                    .filter(part -> part.hours() != null)
                    .sorted(down ? order.reversed() : order)
                    .toList());
            parts.stream().filter(part -> part.hours() == null).forEach(wanted::add);
            assertThat(table.shown()).isEqualTo(wanted);
        }
    }

    @Test
    void the_selection_stays_with_the_record_when_other_rows_are_shown() {
        table.show(PARTS);
        table.select("BE-22");
        List<String> told = new ArrayList<>();
        table.onSelect(part -> told.add(part == null ? "none" : part.serial() + " " + part.hours()));
        table.show(List.of(new Part("X-1", 1.0, SeamState.WITHIN), new Part("BE-22", 7.0, SeamState.DUE)));
        assertThat(table.selected()).isEqualTo(new Part("BE-22", 7.0, SeamState.DUE));
        assertThat(told).containsExactly("BE-22 7.0");
        table.show(List.of());
        assertThat(table.selected()).isNull();
        assertThat(told).containsExactly("BE-22 7.0", "none");
    }

    @Test
    void copying_takes_what_is_shown_in_the_order_on_the_screen() {
        table.show(List.of(new Part("A\tB", 1.25, SeamState.DUE), new Part("C", null, SeamState.OVER)));
        table.table().getColumnModel().moveColumn(2, 0);
        table.table().selectAll();
        SheetCopy<Part> copy = new SheetCopy<>(table);
        assertThat(copy.text(false)).isEqualTo("1.3\tword of DUE\tA B\n\tword of OVER\tC\n");
        assertThat(copy.text(true)).startsWith("Run, h\tMark\tSerial\n1.3\t");
    }

    @Test
    void enter_opens_the_row_in_hand_and_tab_leaves_the_table() {
        table.show(PARTS);
        List<String> opened = new ArrayList<>();
        table.onOpen(part -> opened.add(part.serial()));
        Ui.press(table.table(), Keys.plain(KeyEvent.VK_ENTER));
        assertThat(opened).as("no row in hand").isEmpty();
        table.select("P-09");
        Ui.press(table.table(), Keys.plain(KeyEvent.VK_ENTER));
        assertThat(opened).containsExactly("P-09");
        assertThat(table.table().getFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS))
                .contains(AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_TAB, 0));
    }

    @Test
    void an_empty_list_shows_what_it_is_for() {
        JLabel empty = new JLabel("Nothing fitted yet");
        table.whenEmpty(empty);
        assertThat(empty.isVisible()).isTrue();
        table.show(PARTS);
        assertThat(empty.isVisible()).isFalse();
        table.show(List.of());
        assertThat(empty.isVisible()).isTrue();
    }

    @Test
    void rows_are_at_least_24_high_and_figures_stand_right() {
        table.show(PARTS);
        Stage.lay(table, 600, 300);
        assertThat(table.table().getRowHeight()).isEqualTo(24);
        JLabel figure = (JLabel) table.table().prepareRenderer(table.table().getCellRenderer(0, 2), 0, 2);
        assertThat(figure.getHorizontalAlignment()).isEqualTo(JLabel.TRAILING);
        assertThat(figure.getText()).isEqualTo("12.9");
        JLabel mark = (JLabel) table.table().prepareRenderer(table.table().getCellRenderer(0, 0), 0, 0);
        assertThat(mark.getAccessibleContext().getAccessibleName()).isEqualTo("word of OVER");
    }
}
