package witnessmark.trace.result;

import java.util.List;

/**
 * A trace at a glance: how far each column went, and engine speed over the time of each part, to be looked at before
 * anything is decided.
 *
 * @param columns of each column its least and most figure, in the unit of its kind
 * @param parts engine speed over each part
 */
public record Outline(List<Range> columns, List<Speed> parts) {
    public Outline {
        columns = List.copyOf(columns);
        parts = List.copyOf(parts);
    }

    public static Outline none() {
        return new Outline(List.of(), List.of());
    }

    /**
     * How far a column went; both NaN when it has no figure.
     *
     * @param least lowest figure
     * @param most highest figure
     */
    public record Range(double least, double most) {
        public boolean isKnown() {
            return !Double.isNaN(least);
        }
    }

    /**
     * Engine speed in equal pieces of time.
     *
     * @param step microseconds in a piece
     * @param least rpm in each piece; NaN where there is no figure
     * @param most rpm in each piece
     */
    public record Speed(long step, List<Double> least, List<Double> most) {
        public Speed {
            least = List.copyOf(least);
            most = List.copyOf(most);
        }
    }
}
