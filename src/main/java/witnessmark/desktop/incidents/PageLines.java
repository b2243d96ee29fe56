package witnessmark.desktop.incidents;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.cases.CaseLines;
import witnessmark.desktop.form.SeamState;
import witnessmark.logbook.sheets.Prefilled;

/**
 * The page of one incident in words.
 *
 * @param id the text form of its identity
 * @param mark the short name it goes by
 * @param title what it was
 * @param stands open and for how long, or closed
 * @param state open asks for something, closed does not
 * @param facts when, how found, on what, how bad, by whom
 * @param closed when, by whom and with what words; empty while it is open
 * @param seen what was seen
 * @param currency of its amounts
 * @param columns what it cost, the total last
 * @param addCost what writes another down
 * @param span what the total can be, on what it rests, and what is in no total
 * @param investigation what led up to it, findings against causes, what to ask, and what it can be laid beside
 * @param holds whether what was done holds
 * @param causes what is said of its causes and decides on them
 * @param sections what else hangs on it
 */
record PageLines(
        String id,
        String mark,
        String title,
        String stands,
        SeamState state,
        String facts,
        String closed,
        String seen,
        String currency,
        List<Amounts> columns,
        Prefilled addCost,
        List<String> span,
        CaseLines investigation,
        List<Section> holds,
        List<Section> causes,
        List<Section> sections) {
    PageLines {
        columns = List.copyOf(columns);
        span = List.copyOf(span);
        holds = List.copyOf(holds);
        causes = List.copyOf(causes);
        sections = List.copyOf(sections);
    }

    /**
     * One column of its costs.
     *
     * @param name of the column
     * @param amount all of it, in the currency of the heading
     * @param pieces the lines of it, by day
     */
    record Amounts(String name, String amount, List<PieceLine> pieces) {
        Amounts {
            pieces = List.copyOf(pieces);
        }
    }

    /**
     * A piece of a cost.
     *
     * @param id what makes it the same piece
     * @param cost the text form of the identity of the cost it is of
     * @param date its day in words
     * @param day its day
     * @param column where it is counted
     * @param category what kind of cost
     * @param what what it was for, and how it counts where that is not as usual
     * @param amount in words
     * @param minor in minor units
     */
    record PieceLine(
            String id,
            String cost,
            String date,
            LocalDate day,
            String column,
            String category,
            String what,
            String amount,
            long minor) {}

    /**
     * Rows under one heading.
     *
     * @param heading of it
     * @param rows one for each thing
     * @param sum said under them; empty for nothing
     * @param none said where there are no rows; empty where the section is then left out
     * @param add the sheet that adds one, or null
     * @param addWords what leads to that sheet
     */
    record Section(
            String heading,
            List<Row> rows,
            String sum,
            String none,
            @Nullable Prefilled add,
            String addWords) {
        Section {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One row.
     *
     * @param lead what it is called
     * @param words what it says
     * @param figure at the right edge; empty for none
     * @param under said below it, small; empty for nothing
     * @param incident the incident it leads to, as the text form of its identity; empty for none
     */
    record Row(String lead, String words, String figure, String under, String incident) {}
}
