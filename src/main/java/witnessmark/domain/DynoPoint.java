package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;

/**
 * One speed of one pull.
 *
 * @param sheet on which sheet
 * @param pull which pull of it, 1 or more
 * @param speed above 0
 * @param torqueMillinewtonMetres as the sheet has it
 * @param lambdaThousandths or null when not written down
 * @param oilPressure or null when not written down
 * @param oil its temperature, or null when not written down
 * @param water its temperature, or null when not written down
 * @param exhaust degrees Celsius of each cylinder's exhaust in order, {@code 758 752 763 756}, with a dash where one
 *     was not read; empty for none
 */
public record DynoPoint(
        Id<DynoSheet> sheet,
        int pull,
        EngineSpeed speed,
        int torqueMillinewtonMetres,
        @Nullable Integer lambdaThousandths,
        @Nullable Pressure oilPressure,
        @Nullable Temperature oil,
        @Nullable Temperature water,
        String exhaust)
        implements Fact {
    public DynoPoint {
        if (pull < 1 || speed.rpm() <= 0) {
            throw new IllegalArgumentException("pulls are counted from 1, and a pull turns the engine");
        }
    }
}
