package witnessmark.desktop.cases;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.FaceMap;

/**
 * Two incidents beside each other in words.
 *
 * @param joined what joins them; empty for nothing
 * @param groups what both had, then what only one had
 * @param map marks of both on one face; null where not both left some on the same
 * @param exhaustBelow whether its exhaust edge is the lower one
 * @param legend whose marks are drawn how, and how the face lies
 * @param marks each mark of both, for those who do not see the map
 */
record BesideLines(
        String joined,
        List<Group> groups,
        @Nullable FaceMap map,
        boolean exhaustBelow,
        String legend,
        List<String> marks) {
    BesideLines {
        groups = List.copyOf(groups);
        marks = List.copyOf(marks);
    }

    /**
     * What both had, or one of them.
     *
     * @param title whose it is
     * @param rows one for each kind of thing
     */
    record Group(String title, List<Row> rows) {
        Group {
            rows = List.copyOf(rows);
        }
    }

    /**
     * Things of one kind.
     *
     * @param aspect what kind
     * @param things all of them
     */
    record Row(String aspect, String things) {}

    /**
     * Another incident that can be picked.
     *
     * @param id the text form of its identity
     * @param words as it reads among the choices
     * @param linked whether something joins it to the one in view
     */
    record Other(String id, String words, boolean linked) {
        @Override
        public String toString() {
            return words;
        }
    }
}
