package witnessmark.study.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;

/**
 * What is read at one place, and where it is going.
 *
 * @param place as the crew says it; empty when there is one only
 * @param counted the readings that are compared, in their order; none when nothing was read since it began anew
 * @param before those from before it began anew
 * @param apart those made hot where the last was made cold, or the other way, or with another tester: never compared
 * @param since the build with which it began anew; null when it began with a baseline or the first reading
 * @param trend where it is going
 * @param chance how often readings without a trend would lie in an order as clear, from 0 to 1; null when too few
 * @param slope the line through those counted; null when too few
 * @param baseline what the last is held against
 * @param neighbours the places beside; null where nothing like it was read that day at two of them
 * @param limits the figures of its limits, those passed first, then those it goes towards, the soonest first
 * @param call what all that asks for
 */
public record PlaceTrend(
        String place,
        List<Read> counted,
        List<Read> before,
        List<Read> apart,
        @Nullable Entry<Build> since,
        Trend trend,
        @Nullable Double chance,
        @Nullable Slope slope,
        Read baseline,
        @Nullable Neighbours neighbours,
        List<LimitAhead> limits,
        Call call) {
    public PlaceTrend {
        counted = List.copyOf(counted);
        before = List.copyOf(before);
        apart = List.copyOf(apart);
        limits = List.copyOf(limits);
    }

    /** The last reading that is compared; null when nothing was read since it began anew. */
    public @Nullable Read last() {
        return counted.isEmpty() ? null : counted.get(counted.size() - 1);
    }

    /** The next figure of a limit that it is known to go towards, or null. */
    public @Nullable LimitAhead next() {
        return limits.stream().filter(LimitAhead::ahead).findFirst().orElse(null);
    }
}
