package witnessmark.fit;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Work;

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

    /** The sheet as it would be. */
    public Sheet on(Sheet sheet) {
        Sheet next = sheet;
        if (headSkim != null) {
            next = new Rework(next).after(Work.headSkim(headSkim));
        }
        if (deckSkim != null) {
            next = new Rework(next).after(Work.deckSkim(deckSkim));
        }
        if (crownCut != null) {
            Map<Integer, Long> cuts = new TreeMap<>();
            next.numbers(MeasureKind.DECK_CLEARANCE).forEach(cylinder -> cuts.put(cylinder, crownCut));
            next = new Rework(next).after(Work.crownCuts(cuts));
        }
        Map<MeasurePlace, Long> figures = new HashMap<>();
        if (rodArea != null) {
            figures.put(new MeasurePlace(MeasureKind.ROD_AREA, null, null), rodArea);
        }
        if (gasket != null) {
            figures.put(new MeasurePlace(MeasureKind.GASKET_THICKNESS, null, Spot.RING_CLAMPED), gasket);
        }
        return figures.isEmpty() ? next : next.with(figures);
    }
}
