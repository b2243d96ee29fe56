package witnessmark.chart;

import java.util.List;
import java.util.stream.Stream;

/**
 * A chart in words and numbers. Every text is ready to be read by people.
 *
 * @param finding the title: what it shows, as a sentence
 * @param note under the title: source, dates, count
 * @param across the axis along the bottom
 * @param up the axis along the left side
 * @param lines at least one; the chosen ones first
 * @param uprights marks across the whole height, for example a rebuild
 * @param levels marks across the whole width, for example a limit
 * @param bands stretches of the bottom axis shaded from top to bottom, for example event days
 * @param description the chart for those who do not see it: two sentences
 * @param table the same numbers as rows
 */
public record Chart(
        String finding,
        String note,
        Axis across,
        Axis up,
        List<Line> lines,
        List<Mark> uprights,
        List<Mark> levels,
        List<Band> bands,
        String description,
        ChartTable table) {
    /** Lines beyond this many in colour cannot be told apart any more. */
    public static final int MOST_IN_COLOUR = 4;

    public Chart {
        lines = List.copyOf(lines);
        uprights = List.copyOf(uprights);
        levels = List.copyOf(levels);
        bands = List.copyOf(bands);
        if (lines.stream().filter(line -> !line.quiet()).count() > MOST_IN_COLOUR) {
            throw new IllegalArgumentException("more than " + MOST_IN_COLOUR + " lines in colour: make the rest quiet");
        }
    }

    /**
     * A mark at one place of an axis.
     *
     * @param at where, in the axis's numbers
     * @param label beside it
     */
    public record Mark(double at, String label) {}

    /**
     * A shaded stretch of the bottom axis.
     *
     * @param from where it begins
     * @param to where it ends, after where it begins
     * @param label in it, where there is room
     */
    public record Band(double from, double to, String label) {
        public Band {
            if (!(from < to)) {
                throw new IllegalArgumentException("a band ends after it begins");
            }
        }
    }

    /** The finding, range, count, worst point and trend, for screen readers. */
    public String describe() {
        return description;
    }

    /** The least place on the bottom axis that has something on it. */
    public double first() {
        return lines.stream()
                .flatMap(line -> line.dots().stream())
                .mapToDouble(Dot::across)
                .min()
                .orElse(0);
    }

    /** The greatest place on the bottom axis that has something on it. */
    public double last() {
        return lines.stream()
                .flatMap(line -> line.dots().stream())
                .mapToDouble(Dot::across)
                .max()
                .orElse(1);
    }

    /** The greatest value up, levels included; 0 when there is none. */
    public double highest() {
        double dots = lines.stream()
                .flatMap(line -> line.dots().stream())
                .filter(dot -> dot.up() != null)
                .mapToDouble(Dot::height)
                .max()
                .orElse(0);
        return Math.max(dots, levels.stream().mapToDouble(Mark::at).max().orElse(0));
    }

    /** The least value up, levels included; 0 when there is none. */
    public double lowest() {
        return Stream.concat(
                        lines.stream()
                                .flatMap(line -> line.dots().stream())
                                .filter(dot -> dot.up() != null)
                                .map(Dot::height),
                        levels.stream().map(Mark::at))
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(0);
    }
}
