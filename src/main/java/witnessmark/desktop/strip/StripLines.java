package witnessmark.desktop.strip;

import java.util.List;
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
     * A line.
     *
     * @param area the area it begins, or empty
     * @param name which place
     * @param note what stands out among its positions, or its part; empty for nothing
     * @param cells all of it, then each position it has
     */
    record Row(StripLine line, String area, String name, String note, List<Cell> cells) {
        Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A position.
     *
     * @param number null for all of them
     * @param finding what is there that has gone furthest, or null where nobody looked
     * @param many how many there are
     * @param how how far that has gone, or null where nobody judged
     * @param word its mark
     * @param worse whether it got worse since somebody looked last
     * @param said all of it, in sentences
     */
    record Cell(
            @Nullable Integer number,
            @Nullable Id<Finding> finding,
            int many,
            @Nullable HowMarked how,
            @Nullable FindingMark mark,
            String word,
            String spot,
            String words,
            String incident,
            boolean worse,
            List<String> said) {
        Cell {
            said = List.copyOf(said);
        }
    }
}
