package witnessmark.chart;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lives of parts side by side in groups, a strip for each along one scale of their age. A strip begins at the age from which the part
 * was watched; how it ended is a shape. Every text is ready to be read by people.
 *
 * @param scale where the scale ends, above 0
 * @param ticks where the scale is labelled
 * @param limit a figure of all of them, or null
 * @param groups each with its heading
 * @param legend what each shape says, in the order of {@link Ended}
 * @param headings of the table
 */
public record LivesChart(
        double scale,
        List<LifeRows.Tick> ticks,
        LifeRows.@Nullable Tick limit,
        List<Group> groups,
        List<String> legend,
        List<String> headings) {
    /** How a life ended. */
    public enum Ended {
        FAILED,
        CAME_OFF,
        STILL_IN
    }

    /**
     * Lives under one heading.
     *
     * @param name the heading
     * @param strips one for each life, in the order they are shown
     * @param none said where there is none
     */
    public record Group(String name, List<Strip> strips, String none) {
        public Group {
            strips = List.copyOf(strips);
        }

        /** How many rows it takes: its heading, and one for each life or for the words that there is none. */
        int rows() {
            return 1 + Math.max(1, strips.size());
        }
    }

    /**
     * One life.
     *
     * @param name before the strip
     * @param where beside the name
     * @param from the age at which it began to be watched
     * @param to the age at which it ended, not below
     * @param ended how
     * @param sure whether its ages are known; it is drawn in outline where not
     * @param beside behind the strip
     * @param words the whole of it: the readout
     * @param cells of the table, as many as there are headings
     * @param record what it leads to
     */
    public record Strip(
            String name,
            String where,
            double from,
            double to,
            Ended ended,
            boolean sure,
            String beside,
            String words,
            List<String> cells,
            String record) {
        public Strip {
            cells = List.copyOf(cells);
        }
    }

    public LivesChart {
        ticks = List.copyOf(ticks);
        groups = List.copyOf(groups);
        legend = List.copyOf(legend);
        headings = List.copyOf(headings);
        if (!(scale > 0)) {
            throw new IllegalArgumentException("a scale ends above 0");
        }
    }

    /** All strips, from the top. */
    public List<Strip> strips() {
        return groups.stream().flatMap(group -> group.strips().stream()).toList();
    }

    /** The numbers of the strips. */
    public ChartTable table() {
        return new ChartTable(
                headings, strips().stream().map(LivesChart.Strip::cells).toList());
    }
}
