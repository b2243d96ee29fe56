package witnessmark.desktop.engines;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Column;

/**
 * A column of a list in which figures open what is behind them and names may lead elsewhere.
 *
 * @param column how it is shown
 * @param figure the figure of a row in this column, or null for a column of words
 * @param way where a row leads from this column, or null for one that leads nowhere
 */
record FigureColumn<R>(
        Column<R> column,
        @Nullable Function<? super R, @Nullable Shown> figure,
        @Nullable Function<? super R, @Nullable Runnable> way) {
    /** A column that opens nothing. */
    static <R> FigureColumn<R> words(Column<R> column) {
        return new FigureColumn<>(column, null, null);
    }

    /** A column of words that lead somewhere, of some rows perhaps nowhere. */
    static <R> FigureColumn<R> leading(Column<R> column, Function<? super R, @Nullable Runnable> way) {
        return new FigureColumn<>(column, null, way);
    }

    /**
     * A column of figures.
     *
     * @param none shown where a row has no such figure
     */
    static <R> FigureColumn<R> figure(
            String title, Function<? super R, @Nullable Shown> figure, String none, int wide) {
        Column<R> column = Column.<R, Long>figure(
                title,
                row -> {
                    Shown shown = figure.apply(row);
                    return shown == null ? none : shown.text();
                },
                row -> {
                    Shown shown = figure.apply(row);
                    return shown == null ? null : Long.valueOf(shown.amount());
                });
        return new FigureColumn<>(column.wide(wide), figure, null);
    }
}
