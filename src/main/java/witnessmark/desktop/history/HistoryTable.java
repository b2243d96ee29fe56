package witnessmark.desktop.history;

import java.time.Instant;
import java.util.List;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.SheetTable;
import witnessmark.wording.Texts;

/** The changes of one entry as a table, the latest first. */
public final class HistoryTable {
    private HistoryTable() {}

    public static SheetTable<HistoryLine> of(Texts texts) {
        return new SheetTable<>(
                texts.get("history.title"),
                List.of(
                        Column.<HistoryLine, Instant>text(
                                        texts.get("history.column.when"), HistoryLine::when, HistoryLine::at)
                                .wide(150),
                        Column.<HistoryLine>text(texts.get("history.column.who"), HistoryLine::who)
                                .wide(100),
                        Column.<HistoryLine>text(texts.get("history.column.what"), HistoryLine::what)
                                .wide(170)
                                .grow(),
                        Column.<HistoryLine>text(texts.get("history.column.why"), HistoryLine::why)
                                .wide(130)
                                .grow()),
                HistoryLine::at);
    }
}
