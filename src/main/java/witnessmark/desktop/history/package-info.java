/**
 * How an entry came to stand as it does, the same wherever it is asked for. It differs from {@code engines} and
 * {@code runsheet} in that it knows neither place: it is handed the changes and words them. Open
 * {@link witnessmark.desktop.history.HistoryModel} first.
 */
@NullMarked
package witnessmark.desktop.history;

import org.jspecify.annotations.NullMarked;
