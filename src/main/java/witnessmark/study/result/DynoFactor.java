package witnessmark.study.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.CorrectionKind;
import witnessmark.mechanics.AtmosphericCorrection;

/**
 * What turned the figures of a sheet to a reference day.
 *
 * @param correction to which standard's
 * @param factor by what observed figures are multiplied; null when they are shown as observed, or nothing says by what the
 *     dyno multiplied
 * @param byTheDyno the dyno multiplied, and the figures came so
 * @param worked what the air that was written down makes of it by the standard; null when that cannot be worked out
 * @param dry pressure of the air without its vapour, kPa; null when that cannot be worked out
 * @param total the same with its vapour, as a barometer reads it
 * @param refused why the standard does not allow it, worst or not; empty when it does
 * @param missing what was not written down and is needed
 */
public record DynoFactor(
        CorrectionKind correction,
        @Nullable Double factor,
        boolean byTheDyno,
        @Nullable Double worked,
        @Nullable Double dry,
        @Nullable Double total,
        List<Why> refused,
        List<Needed> missing) {
    /** Why a standard does not correct. */
    public enum Why {
        TOO_COLD,
        TOO_WARM,
        TOO_THIN,
        TOO_DENSE,
        FACTOR_BELOW,
        FACTOR_ABOVE,
        /** What is written down can be no air. */
        NO_AIR
    }

    /** What a factor is worked out from. */
    public enum Needed {
        PRESSURE,
        AIR,
        HUMIDITY
    }

    /** Beyond this the factor the dyno used and the one its air gives are told apart. */
    private static final double ALIKE = 0.003;

    public DynoFactor {
        refused = List.copyOf(refused);
        missing = List.copyOf(missing);
    }

    /** The figure of the standard beyond which it does not correct: °C, kPa dry, or a factor; NaN where it has none. */
    public double limit(Why why) {
        AtmosphericCorrection.Code code = switch (correction) {
            case SAE_J1349 -> AtmosphericCorrection.Code.SAE_J1349;
            case ISO_1585 -> AtmosphericCorrection.Code.ISO_1585;
            case DIN_70020 -> AtmosphericCorrection.Code.DIN_70020;
            case NONE -> null;
        };
        if (code == null) {
            return Double.NaN;
        }
        return switch (why) {
            case TOO_COLD -> code.coldest();
            case TOO_WARM -> code.warmest();
            case TOO_THIN -> code.thinnest();
            case TOO_DENSE -> code.densest();
            case FACTOR_BELOW -> AtmosphericCorrection.LEAST;
            case FACTOR_ABOVE -> AtmosphericCorrection.MOST;
            case NO_AIR -> Double.NaN;
        };
    }

    /** Whether the standard goes by the air as a barometer reads it, its vapour included, and not by its dry part. */
    public boolean byTotal() {
        return correction == CorrectionKind.DIN_70020;
    }

    /** Whether the figures are corrected at all. */
    public boolean corrects() {
        return byTheDyno || factor != null && correction != CorrectionKind.NONE;
    }

    /** Whether the dyno multiplied by something else than its own air asks for. */
    public boolean differs() {
        return byTheDyno && factor != null && worked != null && Math.abs(factor / worked - 1) > ALIKE;
    }
}
