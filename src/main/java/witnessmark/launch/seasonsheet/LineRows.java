package witnessmark.launch.seasonsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.SeasonPieces;
import witnessmark.domain.CostLine;
import witnessmark.domain.Id;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Weight;
import witnessmark.wording.PieceWords;

/** Words costs line by line, in columns that are the same in every table. Each cost has one number. */
final class LineRows {
    /** Where in a row it says what it was for. */
    static final int WHAT = 2;

    private final SeasonInk ink;
    private final PieceWords words;
    private final Map<Id<CostLine>, Integer> numbers = new HashMap<>();

    LineRows(SeasonInk ink, SeasonPieces pieces) {
        this.ink = ink;
        this.words = new PieceWords(ink.texts(), ink.measures(), ink.facts());
        Stream.concat(pieces.counted().stream(), pieces.kept().stream())
                .map(Piece::line)
                .distinct()
                .sorted(Comparator.comparing(id -> line(id).day()))
                .forEach(id -> numbers.put(id, numbers.size() + 1));
    }

    /** How many costs there are. */
    int count() {
        return numbers.size();
    }

    /** @param where whether it says where each line is counted */
    List<Column> columns(boolean where) {
        List<Column> columns = new ArrayList<>(List.of(
                Column.mark(ink.say("lines.no")),
                Column.mark(ink.texts().get("season.column.day")),
                Column.runningOn(ink.say("lines.what"), 1)));
        if (where) {
            columns.add(Column.mark(ink.say("lines.where")));
        }
        columns.add(Column.figure(ink.texts().get("season.column.paid")));
        columns.add(Column.figure(ink.texts().get("season.column.back")));
        columns.add(Column.figure(ink.texts().get("season.column.kept")));
        columns.add(Column.figure(ink.texts().get("season.column.counts")));
        return columns;
    }

    /** The pieces in the order of their days and numbers. */
    List<Piece> sorted(List<Piece> pieces) {
        return pieces.stream()
                .sorted(Comparator.comparing(Piece::day).thenComparing(piece -> numbers.getOrDefault(piece.line(), 0)))
                .toList();
    }

    /**
     * One line.
     *
     * @param where whether it says where it is counted
     * @param whose whether it says for which event and car
     */
    Row row(Piece piece, boolean where, boolean whose) {
        CostLine line = line(piece.line());
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(ink.measures().number(numbers.getOrDefault(piece.line(), 0))),
                Cell.of(ink.day(piece.day())),
                Cell.of(line.what(), under(piece, line, whose))));
        if (where) {
            cells.add(Cell.of(ink.money().column(piece.place())));
        }
        cells.add(Cell.of(ink.amount(words.paid(piece))));
        cells.add(Cell.of(ink.some(words.back(piece))));
        cells.add(Cell.of(ink.some(words.kept(piece))));
        cells.add(Cell.of(ink.amount(piece.amount())));
        return new Row(Weight.LINE, cells);
    }

    private String under(Piece piece, CostLine line, boolean whose) {
        List<String> said = new ArrayList<>();
        said.add(ink.records().word(line.category()));
        said.add(ink.season().whom(line));
        if (whose) {
            ink.event(piece.event()).ifPresent(said::add);
            ink.car(piece.car()).ifPresent(said::add);
        }
        said.addAll(words.said(piece));
        said.removeIf(String::isEmpty);
        return ink.measures().row(said);
    }

    private CostLine line(Id<CostLine> id) {
        return ink.facts().of(CostLine.class).get(id);
    }
}
