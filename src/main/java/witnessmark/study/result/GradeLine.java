package witnessmark.study.result;

import java.util.List;

/**
 * What was graded at one place.
 *
 * @param place as the crew says it; empty when there is one only
 * @param readings in their order, at least one; the figure of each is how bad it was, 0 as it should be
 * @param worseTwice whether it got worse twice running
 */
public record GradeLine(String place, List<Read> readings, boolean worseTwice) {
    public GradeLine {
        readings = List.copyOf(readings);
    }
}
