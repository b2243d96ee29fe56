package witnessmark.desktop.strip;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.study.result.StripLine;

/**
 * The table of a strip report in words.
 *
 * @param heads what stands over the columns: all of them, then the numbers
 * @param rows its lines
 * @param said the whole of it in a sentence or two
 */
record StripLines(List<String> heads, List<Row> rows, String said) {
    static final StripLines NONE = new StripLines(List.of(), List.of(), "");

    StripLines {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
    }

    /**
     * What stands before a line.
     *
     * @param name which place
     * @param note what stands out among its positions, or its part; empty for nothing
     */
    record Title(String name, String note) {}

    /**
     * A line.
     *
     * @param area the area it begins, or empty
     * @param title which place
     * @param narrow the same where there is no room for it
     * @param cells all of it, then each position it has
     */
    record Row(StripLine line, String area, Title title, Title narrow, List<Cell> cells) {
        Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A position.
     *
     * @param number null for all of them
     * @param found what was found there, what has gone furthest first
     * @param worse whether it got worse since somebody looked last
     * @param spots where on its part as long as no mark is in hand
     * @param said all of it, in sentences
     */
    record Cell(@Nullable Integer number, List<Seen> found, boolean worse, PartSpots spots, List<String> said) {
        Cell {
            found = List.copyOf(found);
            said = List.copyOf(said);
        }

        /** What has gone furthest; empty where nobody looked. */
        Optional<Seen> worst() {
            return found.stream().findFirst();
        }
    }

    /**
     * Something found at a position.
     *
     * @param reads the whole of it
     * @param how how far it has gone, or null where nobody judged
     * @param word its mark
     * @param spot where there, its side aside
     * @param incident of which it is evidence; empty for none
     * @param spots where on its part, with it in hand
     */
    record Seen(
            Id<Finding> finding,
            String reads,
            @Nullable HowMarked how,
            @Nullable FindingMark mark,
            String word,
            String spot,
            String words,
            String incident,
            PartSpots spots) {}
}
