package witnessmark.wording;

import java.util.List;
import witnessmark.study.result.WayTo;

/**
 * An engine's way up to a failure in words.
 *
 * @param heading what it is the way of; empty where there is none
 * @param said all of it in a few sentences
 * @param points the earliest first
 */
public record WayLines(String heading, String said, List<Point> points) {
    /** Of an incident that names no engine. */
    public static final WayLines NONE = new WayLines("", "", List.of());

    public WayLines {
        points = List.copyOf(points);
    }

    /**
     * A day on the way.
     *
     * @param day in words
     * @param hours what the engine had run by then
     * @param before what it ran from then to the failure; empty at the failure
     * @param seen what was seen, in short
     * @param changed what was changed, in short; empty for nothing
     * @param kinds all that happened, in order
     * @param whole all of it
     */
    public record Point(
            String day,
            String hours,
            String before,
            String seen,
            String changed,
            List<WayTo.Kind> kinds,
            String whole) {
        public Point {
            kinds = List.copyOf(kinds);
        }
    }
}
