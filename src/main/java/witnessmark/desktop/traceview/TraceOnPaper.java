package witnessmark.desktop.traceview;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import witnessmark.chart.TraceRows;
import witnessmark.logbook.Desk;
import witnessmark.quantity.Moment;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.report.SeasonSheet.Weight;
import witnessmark.report.TraceSheet;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words what is in sight of a trace for paper. */
final class TraceOnPaper {
    private final Texts texts;
    private final Measures measures;
    private final TraceModel model;

    TraceOnPaper(Texts texts, Measures measures, TraceModel model) {
        this.texts = texts;
        this.measures = measures;
        this.model = model;
    }

    /**
     * The sheet of a stretch.
     *
     * @param from its beginning, seconds
     * @param until its end, seconds
     * @param figures of the stretch
     * @param book whose name and day stand on it
     */
    TraceSheet of(Shown shown, TraceRows rows, double from, double until, List<FigureLine> figures, Desk book) {
        String engine = shown.seen().engine().fact().number();
        Moment now = Moment.of(book.today().now(), book.view().zone());
        return new TraceSheet(
                name(shown),
                texts.get("tracesheet.title", engine),
                texts.get(
                        "traceview.comma",
                        model.words().run(shown.seen().run().fact()),
                        measures.fullStart(shown.seen().run().fact())),
                under(shown, rows, from, until),
                book.name(),
                texts.get("tracesheet.day", measures.date(book.view().day())),
                texts.get("tracesheet.printed", measures.fullMoment(now)),
                now.instant(),
                texts.get("tracesheet.caution"),
                rows.bare(row ->
                        row.unit().isEmpty() ? row.name() : texts.get("traceview.comma", row.name(), row.unit())),
                from,
                until,
                List.of(marks(shown, from, until), figures(figures)));
    }

    private static String name(Shown shown) {
        String file = shown.seen().trace().fact().name();
        int dot = file.indexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }

    private List<String> under(Shown shown, TraceRows rows, double from, double until) {
        boolean whole = from <= 0 && until >= rows.last() - 1e-6;
        List<String> under = new ArrayList<>(List.of(
                rows.finding(),
                rows.note(),
                whole
                        ? texts.get("tracesheet.stretch.whole", at(rows.last()))
                        : texts.get("tracesheet.stretch", at(from), at(until), at(rows.last()))));
        shown.over().ifPresent(over -> under.add(texts.get("tracesheet.over", model.title(over.seen()))));
        return under;
    }

    private Section marks(Shown shown, double from, double until) {
        List<Row> rows = model.marks(shown.seen()).stream()
                .filter(line ->
                        line.seconds() <= until && line.seconds() + line.mark().lasted() >= from)
                .map(line -> row(line.at(), line.what(), line.figure(), line.lasted(), line.known()))
                .toList();
        return new Section(
                texts.get("tracesheet.marks"),
                List.of(
                        Column.mark(texts.get("traceview.column.at")),
                        Column.name(texts.get("traceview.column.what"), 2),
                        Column.figure(texts.get("traceview.column.worst")),
                        Column.figure(texts.get("traceview.column.lasted")),
                        Column.words(texts.get("traceview.column.known"), 3)),
                rows,
                rows.isEmpty() ? List.of(texts.get("tracesheet.marks.none")) : List.of());
    }

    private Section figures(List<FigureLine> figures) {
        return new Section(
                texts.get("tracesheet.figures"),
                List.of(
                        Column.name(texts.get("traceview.column.channel"), 1),
                        Column.figure(texts.get("traceview.column.least")),
                        Column.figure(texts.get("traceview.column.most")),
                        Column.figure(texts.get("traceview.column.mean"))),
                figures.stream()
                        .map(line -> row(line.channel(), line.least(), line.most(), line.mean()))
                        .toList(),
                List.of(texts.get("tracesheet.figures.note")));
    }

    private static Row row(String... cells) {
        return new Row(Weight.LINE, Stream.of(cells).map(cell -> Cell.of(cell)).toList());
    }

    private String at(double seconds) {
        return model.words().at(Math.round(seconds * 1e6));
    }
}
