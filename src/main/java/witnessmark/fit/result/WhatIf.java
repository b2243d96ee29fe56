package witnessmark.fit.result;

import org.jspecify.annotations.Nullable;

/**
 * What somebody would like to know before anything is cut: a sheet with other figures. It is tried on a copy and never
 * written. Null is as it is.
 *
 * @param rodArea section of the rods' shank, in whole parts of an area
 * @param gasket thickness of the gasket's ring as clamped, in nanometres
 * @param crownCut off every crown, in nanometres, not below 0
 * @param deckSkim off the deck, in nanometres, not below 0
 * @param headSkim off the head, in nanometres, not below 0
 * @param redLine revolutions a minute
 */
public record WhatIf(
        @Nullable Long rodArea,
        @Nullable Long gasket,
        @Nullable Long crownCut,
        @Nullable Long deckSkim,
        @Nullable Long headSkim,
        @Nullable Integer redLine) {
    /** As it is. */
    public static final WhatIf NOTHING = new WhatIf(null, null, null, null, null, null);

    /** Whether anything would be otherwise. */
    public boolean any() {
        return !equals(NOTHING);
    }
}
