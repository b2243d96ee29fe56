package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;

/**
 * What a dyno wrote of a run on it, and the day it ran on. Its pulls are {@link DynoPoint}s.
 *
 * @param run which run on the dyno
 * @param dyno which dyno, so that only what is of one is compared
 * @param figures what its torque figures are
 * @param correction what they were corrected to, or are to be
 * @param factorMillionths what the dyno multiplied by, in millionths; or null when it did not say
 * @param pressure of the air, or null when not written down
 * @param pressureIs what that is the pressure of
 * @param air temperature at the intake, or null when not written down
 * @param humidityPermille relative humidity, 0 to 1000, or null when not written down
 * @param sweepRpmPerSecond how fast it was swept, or null when held at each speed or not written down
 * @param fuel grade and batch
 * @param oil grade and batch
 * @param plugs their grade
 * @param map which ignition map
 * @param operator who ran it
 * @param baseline whether later sheets of this engine are held against it
 * @param verdict what was made of it
 * @param note anything else
 */
public record DynoSheet(
        Id<Run> run,
        String dyno,
        DynoFigures figures,
        CorrectionKind correction,
        @Nullable Integer factorMillionths,
        @Nullable Pressure pressure,
        AirPressure pressureIs,
        @Nullable Temperature air,
        @Nullable Integer humidityPermille,
        @Nullable Integer sweepRpmPerSecond,
        String fuel,
        String oil,
        String plugs,
        String map,
        String operator,
        boolean baseline,
        String verdict,
        String note)
        implements Fact {
    public DynoSheet {
        if (factorMillionths != null && factorMillionths <= 0 || sweepRpmPerSecond != null && sweepRpmPerSecond <= 0) {
            throw new IllegalArgumentException("a factor and a sweep are above 0");
        }
        if (humidityPermille != null && (humidityPermille < 0 || humidityPermille > 1_000)) {
            throw new IllegalArgumentException("humidity is between none and all");
        }
        if (figures == DynoFigures.CORRECTED && correction == CorrectionKind.NONE) {
            throw new IllegalArgumentException("what is corrected was corrected to something");
        }
    }
}
