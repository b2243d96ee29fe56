package witnessmark.report;

import java.time.Instant;
import java.util.List;

/**
 * What stands on a season's pages, in words: what failures cost, and after that every line a figure is made of.
 *
 * @param title what it is: "Season 2026"
 * @param logbook whose it is: "Marrowgate Racing"
 * @param day the day looked at: "As of Fri 18 Dec 2026"
 * @param printed when it was printed, in words
 * @param made the same moment, for the file
 * @param caution what nobody may take it for
 * @param parts each begins on a page of its own
 */
public record SeasonSheet(
        String title, String logbook, String day, String printed, Instant made, String caution, List<Part> parts) {
    public SeasonSheet {
        parts = List.copyOf(parts);
    }

    /**
     * Sections under one board.
     *
     * @param title on the left of the board
     * @param board on its right: what it comes to
     * @param under sentences under the board, the first strongest
     * @param sections tables from top to bottom
     */
    public record Part(String title, String board, List<String> under, List<Section> sections) {
        public Part {
            under = List.copyOf(under);
            sections = List.copyOf(sections);
        }
    }

    /**
     * A table under a heading; heading and columns are repeated on each page it goes on to.
     *
     * @param heading "Failures, dearest first"
     * @param columns from left to right
     * @param rows each with a cell for each column
     * @param notes sentences under the table
     */
    public record Section(String heading, List<Column> columns, List<Row> rows, List<String> notes) {
        public Section {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            notes = List.copyOf(notes);
        }
    }

    /**
     * One column.
     *
     * @param title over it; empty where the cells say themselves what they are
     * @param kind what stands in it
     * @param share of the width that figures and marks leave, against the other columns; nothing for these, which take
     *     what they need
     */
    public record Column(String title, Kind kind, int share) {
        public static Column words(String title, int share) {
            return new Column(title, Kind.WORDS, share);
        }

        /** Few words that are not broken, as a day. */
        public static Column mark(String title) {
            return new Column(title, Kind.MARK, 0);
        }

        /** What a row is about: set stronger. */
        public static Column name(String title, int share) {
            return new Column(title, Kind.NAME, share);
        }

        /** The same, with what else is said of it running on behind, so that most rows are one line. */
        public static Column runningOn(String title, int share) {
            return new Column(title, Kind.RUNNING_ON, share);
        }

        public static Column figure(String title) {
            return new Column(title, Kind.FIGURE, 0);
        }

        public static Column bar(String title, int share) {
            return new Column(title, Kind.BAR, share);
        }
    }

    /** What stands in a column. */
    public enum Kind {
        MARK,
        NAME,
        RUNNING_ON,
        WORDS,
        FIGURE,
        BAR
    }

    /** How a row stands among the others. */
    public enum Weight {
        LINE,
        /** What the lines above it come to. */
        SUM,
        /** What the whole table comes to. */
        TOTAL
    }

    /** One row: a cell for each column. */
    public record Row(Weight weight, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * One cell.
     *
     * @param lines the first of a name is set stronger; empty for nothing
     * @param bar how long its bar is, from 0 to 1 of the longest
     */
    public record Cell(List<String> lines, double bar) {
        public Cell {
            lines = lines.stream().filter(line -> !line.isEmpty()).toList();
        }

        public static Cell of(String... lines) {
            return new Cell(List.of(lines), 0);
        }

        public static Cell bar(double length) {
            return new Cell(List.of(), Math.max(0, Math.min(1, length)));
        }
    }
}
