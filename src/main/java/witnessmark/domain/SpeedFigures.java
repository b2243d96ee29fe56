package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;
import witnessmark.quantity.Temperature;

/**
 * What an engine of a design is made of and how hot it gets, as far as its fit at speed is worked out of it. One entry
 * for a design; what is null was not written down.
 *
 * @param design of the engine
 * @param block made of
 * @param crank made of
 * @param rods made of
 * @param pistons made of
 * @param blockHot mean of the block between main bearings and deck, warmed up
 * @param crankHot mean of a throw
 * @param rodsHot mean of a rod
 * @param pistonsHot mean of a piston between pin and crown
 * @param blockCold mean of the block where somebody revs a cold engine
 * @param pistonsCold mean of a piston then
 * @param mainSpacing from the middle of one main bearing to the next, above 0
 * @param margin what is to be left between crown and head at speed, 0 or above
 * @param source where it is written
 */
public record SpeedFigures(
        Id<EngineDesign> design,
        @Nullable Metal block,
        @Nullable Metal crank,
        @Nullable Metal rods,
        @Nullable Metal pistons,
        @Nullable Temperature blockHot,
        @Nullable Temperature crankHot,
        @Nullable Temperature rodsHot,
        @Nullable Temperature pistonsHot,
        @Nullable Temperature blockCold,
        @Nullable Temperature pistonsCold,
        @Nullable Length mainSpacing,
        @Nullable Length margin,
        String source)
        implements Fact {
    public SpeedFigures {
        if (mainSpacing != null && mainSpacing.nanometres() <= 0 || margin != null && margin.nanometres() < 0) {
            throw new IllegalArgumentException("a spacing is above 0, and a margin is not below it");
        }
    }
}
