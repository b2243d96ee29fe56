package witnessmark.fit;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Contradiction;
import witnessmark.fit.result.Contradiction.What;
import witnessmark.fit.result.Given;
import witnessmark.quantity.Length;

/** Figures of a sheet that cannot all be right, whatever the limits. */
public final class Contradictions {
    private final Sheet sheet;
    private final List<Contradiction> found = new ArrayList<>();

    private Contradictions(Sheet sheet) {
        this.sheet = sheet;
    }

    public static List<Contradiction> of(Sheet sheet) {
        Contradictions all = new Contradictions(sheet);
        all.rods();
        all.gasket();
        all.pistons();
        all.journals(MeasureKind.MAIN_BORE, MeasureKind.MAIN_JOURNAL);
        all.journals(MeasureKind.BIG_END_BORE, MeasureKind.PIN_JOURNAL);
        all.bolts();
        return all.found;
    }

    private void rods() {
        Length stroke = sheet.stroke();
        for (MeasurePlace rod : sheet.places(MeasureKind.ROD_LENGTH)) {
            Given length = sheet.given(rod);
            if (stroke != null && length != null && 2 * length.value() <= stroke.nanometres()) {
                found.add(new Contradiction(What.ROD_NOT_LONGER_THAN_CRANK, List.of(rod)));
            }
        }
    }

    private void gasket() {
        unlessLess(
                What.CLAMPED_THICKER_THAN_FREE,
                new MeasurePlace(MeasureKind.GASKET_THICKNESS, null, Spot.RING_FREE),
                new MeasurePlace(MeasureKind.GASKET_THICKNESS, null, Spot.RING_CLAMPED));
        unlessLess(
                What.CLAMPED_THICKER_THAN_FREE,
                new MeasurePlace(MeasureKind.GASKET_THICKNESS, null, Spot.BODY_FREE),
                new MeasurePlace(MeasureKind.GASKET_THICKNESS, null, Spot.BODY_CLAMPED));
        for (int cylinder : sheet.numbers(MeasureKind.GASKET_BORE)) {
            unlessLess(
                    What.CLAMPED_BORE_WIDER_THAN_FREE,
                    new MeasurePlace(MeasureKind.GASKET_BORE, cylinder, Spot.FREE),
                    new MeasurePlace(MeasureKind.GASKET_BORE, cylinder, Spot.TRIAL_CLAMPED));
        }
    }

    private void pistons() {
        for (MeasurePlace bore : sheet.places(MeasureKind.BORE)) {
            unlessLess(
                    What.PISTON_NOT_SMALLER_THAN_BORE, bore, new MeasurePlace(MeasureKind.PISTON, bore.number(), null));
        }
    }

    private void journals(MeasureKind bore, MeasureKind journal) {
        for (MeasurePlace shaft : sheet.places(journal)) {
            unlessLess(What.JOURNAL_NOT_SMALLER_THAN_BORE, new MeasurePlace(bore, shaft.number(), Spot.UPRIGHT), shaft);
        }
    }

    private void bolts() {
        for (MeasurePlace after : sheet.places(MeasureKind.BOLT_AFTER)) {
            unlessLess(
                    What.BOLT_SHORTER_THAN_BEFORE,
                    after,
                    new MeasurePlace(MeasureKind.BOLT_BEFORE, after.number(), after.spot()));
        }
    }

    /** Notes two measured figures of which the second is larger than the first. */
    private void unlessLess(What what, MeasurePlace larger, MeasurePlace smaller) {
        Given most = sheet.measured(larger);
        Given least = sheet.measured(smaller);
        if (most != null && least != null && least.value() > most.value()) {
            found.add(new Contradiction(what, List.of(larger, smaller)));
        }
    }
}
