package witnessmark.chart;

import java.util.List;

/**
 * One line of a chart.
 *
 * @param id which one, for choosing it
 * @param name written at its right end, in its colour; empty where it goes without one
 * @param path how it goes from point to point
 * @param quiet drawn thin and grey behind the others
 * @param dots from left to right; two may stand at the same place, one above the other
 */
public record Line(String id, String name, Path path, boolean quiet, List<Dot> dots) {
    /** How a line goes from point to point. */
    public enum Path {
        STRAIGHT,
        /** Level until the next point, then straight up or down to it. */
        STEP
    }

    public Line {
        dots = List.copyOf(dots);
        for (int i = 1; i < dots.size(); i++) {
            if (dots.get(i).across() < dots.get(i - 1).across()) {
                throw new IllegalArgumentException("the points of " + name + " do not go from left to right");
            }
        }
    }
}
