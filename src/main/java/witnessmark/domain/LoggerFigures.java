package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;

/**
 * What the figures of traces of engines of a design are worked out with. What is null is taken as usual.
 *
 * @param design of which engine design
 * @param runningAbove the engine runs above this
 * @param loadedAbove it is under load above this
 * @param highSpeedAbove it runs at high speed above this
 * @param oilFloor the least oil pressure for each 1000 rpm, hot
 * @param oilFloorFrom from this speed on
 * @param coldBelow cold water: warming up counts a heat cycle
 * @param hotAbove warm water
 * @param hotFor and for this long
 * @param source where these are written
 */
public record LoggerFigures(
        Id<EngineDesign> design,
        @Nullable EngineSpeed runningAbove,
        @Nullable EngineSpeed loadedAbove,
        @Nullable EngineSpeed highSpeedAbove,
        @Nullable Pressure oilFloor,
        @Nullable EngineSpeed oilFloorFrom,
        @Nullable Temperature coldBelow,
        @Nullable Temperature hotAbove,
        @Nullable RunningTime hotFor,
        String source)
        implements Fact {
    public LoggerFigures {
        if (runningAbove != null && loadedAbove != null && loadedAbove.compareTo(runningAbove) < 0) {
            throw new IllegalArgumentException("an engine under load runs");
        }
        if (coldBelow != null && hotAbove != null && hotAbove.compareTo(coldBelow) <= 0) {
            throw new IllegalArgumentException("cold lies below warm");
        }
    }
}
