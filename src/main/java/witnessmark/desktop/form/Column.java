package witnessmark.desktop.form;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javax.swing.SwingConstants;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.StackedBar;

/**
 * One column of a {@link SheetTable}, declared once. What is shown, copied and sorted by all come from the row.
 *
 * @param <R> the row, an immutable view record
 */
public final class Column<R> {
    /** How a column is drawn. */
    enum Kind {
        TEXT,
        FIGURE,
        MARK,
        BAR
    }

    private final Kind kind;
    private final String title;
    private final Function<? super R, String> text;
    private final Comparator<R> order;
    private final Function<? super R, Boolean> blank;
    private @Nullable Function<? super R, SeamState> state;
    private @Nullable Function<? super List<R>, String> total;
    private @Nullable Function<? super R, StackedBar> bar;
    private int width;
    private boolean grows;
    private boolean strong;
    private boolean onAsking;
    private boolean worded;

    private Column(
            Kind kind,
            String title,
            Function<? super R, String> text,
            Comparator<R> order,
            Function<? super R, Boolean> blank) {
        this.kind = kind;
        this.title = title;
        this.text = text;
        this.order = order;
        this.blank = blank;
        this.width = kind == Kind.MARK ? 34 : 110;
    }

    /** Words, set left, sorted as words without regard to case. An empty text is a blank and sorts last. */
    public static <R> Column<R> text(String title, Function<? super R, String> text) {
        Comparator<R> order = Comparator.comparing((R row) -> text.apply(row).toLowerCase(Locale.ROOT));
        return new Column<>(
                Kind.TEXT, title, text, order, row -> text.apply(row).isEmpty());
    }

    /** Words sorted by something else, for example a date. A {@code null} key is a blank and sorts last. */
    public static <R, K extends Comparable<? super K>> Column<R> text(
            String title, Function<? super R, String> text, Function<? super R, @Nullable K> key) {
        return new Column<>(Kind.TEXT, title, text, byKey(key), row -> key.apply(row) == null);
    }

    /**
     * A figure, set right, already formatted with the decimals of the column. The heading carries the unit.
     *
     * @param key what it is sorted by; {@code null} is a blank and sorts last
     */
    public static <R, K extends Comparable<? super K>> Column<R> figure(
            String title, Function<? super R, String> text, Function<? super R, @Nullable K> key) {
        return new Column<>(Kind.FIGURE, title, text, byKey(key), row -> key.apply(row) == null);
    }

    /** A witness mark, centred, worst first. The word is its tooltip and what is copied. */
    public static <R> Column<R> mark(
            String title, Function<? super R, SeamState> state, Function<? super SeamState, String> word) {
        Column<R> column = new Column<>(
                Kind.MARK,
                title,
                row -> word.apply(state.apply(row)),
                Comparator.comparing(state::apply),
                row -> false);
        column.state = state;
        return column;
    }

    /**
     * A bar, beside those of the other rows on one scale.
     *
     * @param words what it says, for what is copied and for screen readers
     * @param key what it is sorted by
     */
    public static <R, K extends Comparable<? super K>> Column<R> bar(
            String title,
            Function<? super R, StackedBar> bar,
            Function<? super R, String> words,
            Function<? super R, @Nullable K> key) {
        Column<R> column = new Column<>(Kind.BAR, title, words, byKey(key), row -> key.apply(row) == null);
        column.bar = bar;
        return column;
    }

    /** The width in unscaled pixels. */
    public Column<R> wide(int pixels) {
        width = pixels;
        return this;
    }

    /** Takes what width is left over. */
    public Column<R> grow() {
        grows = true;
        return this;
    }

    /** Bolder: the column that names the row. */
    public Column<R> strong() {
        strong = true;
        return this;
    }

    /** Not shown until somebody chooses it in the menu of the headings; what it says is found by the filter all the same. */
    public Column<R> onAsking() {
        onAsking = true;
        return this;
    }

    /** Words in the colour of a state, bolder unless the state is quiet. */
    public Column<R> inked(Function<? super R, SeamState> by) {
        state = by;
        return this;
    }

    /** A mark with its word beside it, for a list that says it nowhere else. */
    public Column<R> worded() {
        worded = true;
        return this;
    }

    /**
     * What stands under the column.
     *
     * @param words of the rows shown, filtered and sorted
     */
    public Column<R> totalled(Function<? super List<R>, String> words) {
        total = words;
        return this;
    }

    boolean isTotalled() {
        return total != null;
    }

    /** What stands under the column for these rows; empty when nothing does. */
    String totalOf(List<R> shown) {
        return total == null ? "" : total.apply(shown);
    }

    Kind kind() {
        return kind;
    }

    String title() {
        return title;
    }

    String textOf(R row) {
        return text.apply(row);
    }

    @Nullable
    SeamState stateOf(R row) {
        return state == null ? null : state.apply(row);
    }

    @Nullable
    StackedBar barOf(R row) {
        return bar == null ? null : bar.apply(row);
    }

    boolean isBlank(R row) {
        return blank.apply(row);
    }

    Comparator<R> order() {
        return order;
    }

    int width() {
        return width;
    }

    boolean grows() {
        return grows;
    }

    boolean isOnAsking() {
        return onAsking;
    }

    /** Where its cells and its heading stand, as {@link SwingConstants} name it. */
    int side() {
        return switch (kind) {
            case TEXT, BAR -> SwingConstants.LEADING;
            case FIGURE -> SwingConstants.TRAILING;
            case MARK -> worded ? SwingConstants.LEADING : SwingConstants.CENTER;
        };
    }

    boolean isWorded() {
        return worded;
    }

    boolean isStrong() {
        return strong;
    }

    private static <R, K extends Comparable<? super K>> Comparator<R> byKey(Function<? super R, @Nullable K> key) {
        return (a, b) -> {
            K left = key.apply(a);
            K right = key.apply(b);
            return left == null || right == null ? 0 : left.compareTo(right);
        };
    }
}
