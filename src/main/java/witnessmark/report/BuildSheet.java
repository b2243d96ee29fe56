package witnessmark.report;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.ledger.result.MarkState;

/**
 * What stands on a build sheet, in words: every figure in measuring order, room to write where there is none, and how they
 * stand.
 *
 * @param title what it is: "Build sheet of K05, build 1"
 * @param board on the right of the board: which design
 * @param under sentences under the board: what it comes to, strongest; what cannot be; opened and closed; who signed
 * @param logbook whose it is: "Marrowgate Racing"
 * @param day the day looked at: "As of Wed 8 Jul 2026"
 * @param printed when it was printed, in words
 * @param made the same moment, for the file
 * @param caution what nobody may take it for, on every page
 * @param lessons what lessons ask of it, each with its mark; null where none does
 * @param answers where questions are answered by hand; null where none is open
 * @param steps what is measured, in measuring order
 * @param stands how it stands; null where nothing is measured yet
 * @param byHand who signs on the paper, and that this is not a signing in the logbook; null where
 *     somebody signed
 */
public record BuildSheet(
        String title,
        String board,
        List<String> under,
        String logbook,
        String day,
        String printed,
        Instant made,
        String caution,
        @Nullable Group lessons,
        @Nullable ByHand answers,
        List<Step> steps,
        @Nullable Stands stands,
        @Nullable ByHand byHand) {
    public BuildSheet {
        under = List.copyOf(under);
        steps = List.copyOf(steps);
    }

    /**
     * What is measured in one step of the build.
     *
     * @param heading "Block"
     * @param blocks from top to bottom
     * @param byHand what is to be written beside the figures where none is there; null where there is one
     */
    public record Step(
            String heading, List<Block> blocks, @Nullable ByHand byHand) {
        public Step {
            blocks = List.copyOf(blocks);
        }
    }

    /**
     * Kinds of figures that are taken at the same places.
     *
     * @param counted what the columns count: "by cylinder"; empty where they are no numbers
     * @param columns over the boxes, no more than fit beside each other; one that is empty for the engine's one
     * @param kinds from top to bottom, each with a cell for each column
     */
    public record Block(String counted, List<String> columns, List<Kind> kinds) {
        public Block {
            columns = List.copyOf(columns);
            kinds = List.copyOf(kinds);
        }
    }

    /**
     * One kind of figure.
     *
     * @param name "Bore"
     * @param may its unit, and what it may be
     * @param lines one, or one for each spot
     * @param notes how the figures were taken, what was measured more than once
     */
    public record Kind(String name, String may, List<Line> lines, List<String> notes) {
        public Kind {
            lines = List.copyOf(lines);
            notes = List.copyOf(notes);
        }
    }

    /**
     * Figures beside each other.
     *
     * @param where "top, across"; empty where the kind has one line
     * @param cells one for each column
     */
    public record Line(String where, List<Cell> cells) {
        public Line {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A place.
     *
     * @param look what it shows
     * @param words the figure without its unit
     */
    public record Cell(Look look, String words) {
        /** Nothing is measured there. */
        public static final Cell NOT_ASKED = new Cell(Look.NOT_ASKED, "");

        /** To be written in by hand. */
        public static final Cell TO_WRITE = new Cell(Look.TO_WRITE, "");
    }

    /** What a place shows. */
    public enum Look {
        FIGURE,
        /** A figure that is outside what it may be: framed. */
        OUTSIDE,
        TO_WRITE,
        NOT_ASKED
    }

    /**
     * How the figures stand, on a page of its own.
     *
     * @param title over them
     * @param groups in their order
     * @param workedOut what is worked out, at every place
     * @param signed what stood when it was signed and stands otherwise now
     */
    public record Stands(
            String title,
            List<Group> groups,
            @Nullable Step workedOut,
            @Nullable Signed signed) {
        public Stands {
            groups = List.copyOf(groups);
        }
    }

    /** Kinds that stand alike: "To be looked at, 2". */
    public record Group(String heading, List<Answer> answers) {
        public Group {
            answers = List.copyOf(answers);
        }
    }

    /**
     * How one kind of figure stands.
     *
     * @param state its mark, or null where nothing is set to hold it against
     * @param word the word of the mark
     * @param sentence its worst place in one line
     * @param accepted what accepts it as it is
     * @param beside what it lacks and rests on, whose the limit is
     * @param columnOf what the column adds up to; empty without a column
     * @param column the figures that make it, their sum last
     * @param caution what is always to be said with it; empty for nothing
     */
    public record Answer(
            @Nullable MarkState state,
            String word,
            String sentence,
            List<String> accepted,
            List<String> beside,
            String columnOf,
            List<Sum> column,
            String caution) {
        public Answer {
            accepted = List.copyOf(accepted);
            beside = List.copyOf(beside);
            column = List.copyOf(column);
        }
    }

    /** A line of a column: what it is of and rests on, and what it adds. */
    public record Sum(String what, String figure) {}

    /**
     * What stood when it was signed and stands otherwise now.
     *
     * @param heading over it
     * @param titles over what it is of, what stood then, what stands now
     * @param rows as many cells each
     * @param note said where there are no rows
     */
    public record Signed(String heading, List<String> titles, List<List<String>> rows, String note) {
        public Signed {
            titles = List.copyOf(titles);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * Lines to write on.
     *
     * @param labels before each of them
     * @param note under them; empty for nothing
     */
    public record ByHand(List<String> labels, String note) {
        public ByHand {
            labels = List.copyOf(labels);
        }
    }
}
