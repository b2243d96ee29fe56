package witnessmark.report;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.ledger.result.MarkState;

/**
 * What stands on a job sheet, in words: everything to be done, to be ticked off with a pen.
 *
 * @param title what it is and for which event: "Job sheet, Round 6, Thornacre"
 * @param board how much there is to be done: "3 to be done before we load"
 * @param under when the truck leaves, who goes: sentences under the board
 * @param logbook whose it is: "Marrowgate Racing"
 * @param day the day looked at: "As of Wed 8 Jul 2026"
 * @param printed when it was printed, in words
 * @param made the same moment, for the file
 * @param sections what is to be done, by what kind it is of
 */
public record JobSheet(
        String title,
        String board,
        List<String> under,
        String logbook,
        String day,
        String printed,
        Instant made,
        List<Section> sections) {
    public JobSheet {
        under = List.copyOf(under);
        sections = List.copyOf(sections);
    }

    /**
     * Rows under a heading; both are repeated on each page they go on to.
     *
     * @param heading "Must be done before we go"
     * @param stands over the column that says how it stands
     * @param hand over the column that says who has it in hand, or what is asked
     * @param rows one for each thing to be done
     */
    public record Section(String heading, String stands, String hand, List<Row> rows) {
        public Section {
            rows = List.copyOf(rows);
        }

        /** Whether any of its rows shows a mark. */
        boolean hasMarks() {
            return rows.stream().anyMatch(row -> row.mark() != null);
        }
    }

    /**
     * One thing to be done. A row of empty words is for writing on.
     *
     * @param done whether it is ticked already
     * @param mark the mark it stands under, or null
     * @param what what it is: "Valve springs VS-03"
     * @param where where that is: "Engine K03, car 41"; empty when it is nowhere
     * @param stands how it stands and why, the first line strongest
     * @param hand who has it in hand, what it takes, what is asked
     */
    public record Row(
            boolean done, @Nullable Mark mark, String what, String where, List<String> stands, List<String> hand) {
        public Row {
            stands = List.copyOf(stands);
            hand = List.copyOf(hand);
        }

        /** A line to write on. */
        public static Row blank() {
            return new Row(false, null, "", "", List.of(), List.of());
        }
    }

    /**
     * A mark and its word, which always stand together.
     *
     * @param state what is drawn
     * @param word "Held"
     */
    public record Mark(MarkState state, String word) {}
}
