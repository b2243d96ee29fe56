package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/**
 * What parts of one make have in common.
 *
 * @param name unique
 * @param kind the kind of position it fits
 * @param maker maker's name as on the box
 * @param partNumber maker's number
 * @param singleUse it may be fitted once
 * @param canWreck its failure can wreck the engine
 * @param specification in words
 * @param gasketClass what a head gasket is made like; null when not said, or no head gasket
 */
public record PartDesign(
        String name,
        PartKind kind,
        String maker,
        String partNumber,
        boolean singleUse,
        boolean canWreck,
        String specification,
        @AddedLater @Nullable GasketClass gasketClass)
        implements Fact {
    @Override
    public String knownAs() {
        return name;
    }
}
