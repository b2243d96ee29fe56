package witnessmark.trace.look;

import java.util.Optional;
import witnessmark.trace.kept.Samples;
import witnessmark.trace.result.ChannelFigures;

/** What a channel did in a stretch of its samples. */
public final class Between {
    private Between() {}

    /** Empty when no sample has a figure. */
    public static Optional<ChannelFigures> of(Samples samples) {
        long count = 0;
        int least = -1;
        int most = -1;
        double area = 0;
        long time = 0;
        double sum = 0;
        int before = -1;
        double[] values = samples.values();
        for (int i = 0; i < values.length; i++) {
            if (Double.isNaN(values[i])) {
                before = -1;
                continue;
            }
            count++;
            sum += values[i];
            least = least < 0 || values[i] < values[least] ? i : least;
            most = most < 0 || values[i] > values[most] ? i : most;
            if (before >= 0) {
                long step = samples.micros()[i] - samples.micros()[before];
                area += (values[before] + values[i]) / 2 * step;
                time += step;
            }
            before = i;
        }
        return count == 0
                ? Optional.empty()
                : Optional.of(new ChannelFigures(
                        count,
                        values[least],
                        samples.micros()[least],
                        values[most],
                        samples.micros()[most],
                        time > 0 ? area / time : sum / count));
    }
}
