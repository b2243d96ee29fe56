package witnessmark.fit;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.fit.result.WhatIf;
import witnessmark.fit.result.Work;

/** A sheet as it would be with what somebody tries; the sheet itself stays. */
public final class Trying {
    private Trying() {}

    /** The sheet as it would be. */
    public static Sheet on(Sheet sheet, WhatIf tried) {
        Sheet next = sheet;
        if (tried.headSkim() != null) {
            next = new Rework(next).after(Work.headSkim(tried.headSkim()));
        }
        if (tried.deckSkim() != null) {
            next = new Rework(next).after(Work.deckSkim(tried.deckSkim()));
        }
        if (tried.crownCut() != null) {
            Map<Integer, Long> cuts = new TreeMap<>();
            next.numbers(MeasureKind.DECK_CLEARANCE).forEach(cylinder -> cuts.put(cylinder, tried.crownCut()));
            next = new Rework(next).after(Work.crownCuts(cuts));
        }
        Map<MeasurePlace, Long> figures = new HashMap<>();
        if (tried.rodArea() != null) {
            figures.put(new MeasurePlace(MeasureKind.ROD_AREA, null, null), tried.rodArea());
        }
        if (tried.gasket() != null) {
            figures.put(new MeasurePlace(MeasureKind.GASKET_THICKNESS, null, Spot.RING_CLAMPED), tried.gasket());
        }
        return figures.isEmpty() ? next : next.with(figures);
    }
}
