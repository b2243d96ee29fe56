package witnessmark.fit.result.face;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.quantity.Length;

/**
 * What a skim of the head did.
 *
 * @param removed what came off
 * @param ratioBefore compression ratio, mean of the cylinders, or null
 * @param ratioAfter likewise
 * @param ratioRests the chamber after was not measured but worked out of the opening area
 * @param valves what valves lost towards the pistons
 * @param cam degrees of the cam, or null while the sprocket radius is not known
 * @param crank degrees of the crank, or null likewise
 * @param missing what is needed for what is null
 */
public record SkimEffect(
        Length removed,
        @Nullable Double ratioBefore,
        @Nullable Double ratioAfter,
        boolean ratioRests,
        List<Valve> valves,
        @Nullable Double cam,
        @Nullable Double crank,
        List<MeasureKind> missing) {
    public SkimEffect {
        valves = List.copyOf(valves);
        missing = List.copyOf(missing);
    }

    /**
     * The least clearance of a row of valves to the pistons.
     *
     * @param kind inlet or exhaust
     * @param before measured before, or null
     * @param lostLeast it loses at least this
     * @param lostMost it loses at most this; null while the valve's angle is not known
     * @param measured measured after, or null
     */
    public record Valve(
            MeasureKind kind,
            @Nullable Length before,
            Length lostLeast,
            @Nullable Length lostMost,
            @Nullable Length measured) {}
}
