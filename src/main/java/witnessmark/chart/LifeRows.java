package witnessmark.chart;

import java.util.List;

/**
 * Lives lying side by side, a strip for each, along one scale of hours: seams where something was done, marks where
 * something happened. Every text is ready to be read by people.
 *
 * @param scale where the scale ends, above 0
 * @param ticks where the scale is labelled
 * @param rows one for each life, in the order they are shown
 */
public record LifeRows(double scale, List<Tick> ticks, List<Row> rows) {
    public LifeRows {
        ticks = List.copyOf(ticks);
        rows = List.copyOf(rows);
        if (!(scale > 0)) {
            throw new IllegalArgumentException("a scale ends above 0");
        }
    }

    /** A labelled place of the scale. */
    public record Tick(double at, String label) {}

    /**
     * One life.
     *
     * @param name before the strip
     * @param until how long it is
     * @param since from where on it counts anew: from there on it is filled; 0 where it never began anew
     * @param seams what was done, in its order
     * @param marks what happened, in its order
     * @param beside behind the strip: the figure it is there for
     * @param words the whole of it: the readout
     * @param record what it leads to
     */
    public record Row(
            String name,
            double until,
            double since,
            List<Seam> seams,
            List<Seam> marks,
            String beside,
            String words,
            String record) {
        public Row {
            seams = List.copyOf(seams);
            marks = List.copyOf(marks);
        }
    }

    /**
     * A place of a life.
     *
     * @param at how long the life was then
     * @param label its words
     */
    public record Seam(double at, String label) {}
}
