package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;

/**
 * What engines of one make have in common.
 *
 * @param name unique
 * @param cylinders 1 or more
 * @param layout in words: in-line four, iron block …
 * @param bore nominal, or null when not written down
 * @param stroke nominal, or null when not written down
 * @param rodLength between centres, or null when not written down
 * @param firingOrder cylinder numbers in order, or null
 * @param measuringOrder the order in which the crew measures cylinders, or null
 * @param redLine where the limiter stands, or null
 * @param overRevAbove speed that asks for an inspection, or null
 * @param note anything else
 * @param mains how many main bearings, or null when not written down
 */
public record EngineDesign(
        String name,
        int cylinders,
        String layout,
        @Nullable Length bore,
        @Nullable Length stroke,
        @Nullable Length rodLength,
        @Nullable String firingOrder,
        @Nullable String measuringOrder,
        @Nullable EngineSpeed redLine,
        @Nullable EngineSpeed overRevAbove,
        String note,
        @AddedLater @Nullable Integer mains)
        implements Fact {
    public EngineDesign {
        if (mains != null && mains < 1) {
            throw new IllegalArgumentException("a crank turns in at least one bearing");
        }
        if (cylinders < 1) {
            throw new IllegalArgumentException("an engine has at least one cylinder");
        }
    }

    @Override
    public String knownAs() {
        return name;
    }
}
