package witnessmark.study.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Entry;

/**
 * A sheet beside the engine's own baseline.
 *
 * @param baseline the sheet it is held against; null when there is none before it
 * @param verdict what comes of it
 * @param peak change of the highest power, a share of the baseline's; NaN when not compared
 * @param peakMoved how much faster the engine turns at its highest power now, rpm; NaN when not compared
 * @param worst the lowest change anywhere both curves reach; NaN when not compared
 * @param worstRpm at which speed
 * @param area change of mean power between {@code from} and {@code to}; NaN when not compared
 * @param from the lowest speed both reach, rpm; NaN when not compared
 * @param to the highest, rpm
 * @param noise what two sheets may differ by with nothing changed, a share
 * @param noiseFromPulls whether the pulls themselves gave that, not what dynos usually repeat by
 */
public record DynoChange(
        @Nullable Entry<DynoSheet> baseline,
        DynoVerdict verdict,
        double peak,
        double peakMoved,
        double worst,
        double worstRpm,
        double area,
        double from,
        double to,
        double noise,
        boolean noiseFromPulls) {}
