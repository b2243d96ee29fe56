package witnessmark.study.result;

import java.util.List;

/**
 * One pull.
 *
 * @param number as on the sheet
 * @param points in order of speed
 */
public record DynoPull(int number, List<PullPoint> points) {
    public DynoPull {
        points = List.copyOf(points);
    }
}
