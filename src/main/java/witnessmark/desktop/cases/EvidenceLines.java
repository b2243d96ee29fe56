package witnessmark.desktop.cases;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseState;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Speaks;

/**
 * Findings against causes in words.
 *
 * @param heads a column for each cause, what is blamed first
 * @param rows one for each finding, in the order they were seen
 * @param said all of it in a few sentences
 */
record EvidenceLines(List<Head> heads, List<Row> rows, String said) {
    static final EvidenceLines NONE = new EvidenceLines(List.of(), List.of(), "");

    EvidenceLines {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
    }

    boolean isEmpty() {
        return heads.isEmpty() && rows.isEmpty();
    }

    /**
     * A cause at the head of its column.
     *
     * @param state how it stands, or null while nobody has called it
     * @param stateWord that in a word
     * @param stateShort that in a narrow column
     * @param share of the blame
     * @param sure how sure that is; empty while nobody has called it
     * @param since when it was called so
     * @param tests how far what decides on it is
     * @param testsDue by when, and whether that is past; empty for nothing
     * @param testsDueShort the same where there is no room for it
     * @param called all that was made of it, for those who do not see it
     * @param tested all its tests
     */
    record Head(
            Id<Cause> cause,
            String number,
            String statement,
            @Nullable CauseState state,
            String stateWord,
            String stateShort,
            String share,
            String sure,
            String since,
            String tests,
            String testsDue,
            String testsDueShort,
            String called,
            String tested) {}

    /**
     * A finding.
     *
     * @param lead where it was
     * @param words the mark and what was seen
     * @param day when
     * @param whole all of it
     * @param cells how it speaks to each cause, in their order
     */
    record Row(Id<Finding> finding, String lead, String words, String day, String whole, List<Cell> cells) {
        Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * How a finding speaks to a cause.
     *
     * @param speaks or null while nobody has said
     * @param word that in a word
     * @param why in a few words; empty for none
     * @param said the whole, for those who do not see it
     */
    record Cell(@Nullable Speaks speaks, String word, String why, String said) {}
}
