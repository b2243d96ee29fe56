package witnessmark.trace.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.SpeedHistogram;

/**
 * What engine speed comes to. Speed goes evenly from one sample to the next.
 *
 * @param running time, milliseconds
 * @param loaded time under load, milliseconds
 * @param high time at high speed, milliseconds, or null when nobody said from where
 * @param covered time with speed logged, milliseconds; what was bridged is not
 * @param revolutions of the crankshaft
 * @param speeds the running time by speed; its sum is {@code running}
 * @param extremes highest and lowest speed
 */
public record SpeedFound(
        long running,
        long loaded,
        @Nullable Long high,
        long covered,
        double revolutions,
        SpeedHistogram speeds,
        Extremes extremes) {}
