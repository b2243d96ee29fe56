package witnessmark.study.result;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Reading;

/**
 * What was graded at one place.
 *
 * @param place as the crew says it; empty when there is one only
 * @param readings in their order, at least one
 * @param worseTwice whether it got worse twice running
 */
public record GradeLine(String place, List<Entry<Reading>> readings, boolean worseTwice) {
    public GradeLine {
        readings = List.copyOf(readings);
    }
}
