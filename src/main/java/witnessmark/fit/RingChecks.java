package witnessmark.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Basis;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Term;

/**
 * Whether the fire ring of the head gasket reaches into the bore or over the crown, free, trial-clamped and after run:
 * a ring that cleared when laid on can reach in once it is squashed. Into the bore {@code (B − G)/2 + e}; over the crown
 * {@code min((D − G)/2 + s, (B − G)/2) + e} with s the piston's sideways play.
 */
final class RingChecks {
    private final Sheet sheet;
    private final BoreChecks bores;

    RingChecks(Sheet sheet) {
        this.sheet = sheet;
        this.bores = new BoreChecks(sheet);
    }

    List<Answer> all() {
        List<Check> intoBore = new ArrayList<>();
        List<Check> overCrown = new ArrayList<>();
        for (int cylinder : sheet.numbers(MeasureKind.RING_OVER_BORE)) {
            for (Spot state : MeasureKind.RING_OVER_BORE.spots()) {
                Given gasket = sheet.given(new MeasurePlace(MeasureKind.GASKET_BORE, cylinder, state));
                if (gasket != null || state == Spot.TRIAL_CLAMPED) {
                    Check bore = intoBore(cylinder, state, gasket);
                    intoBore.add(bore);
                    overCrown.add(overCrown(cylinder, state, gasket, bore));
                }
            }
        }
        return List.of(
                Answers.of(MeasureKind.RING_OVER_BORE, intoBore, null),
                Answers.of(MeasureKind.RING_OVER_CROWN, overCrown, null));
    }

    private Check intoBore(int cylinder, Spot state, @Nullable Given gasket) {
        return new Sum(sheet)
                .add(topBorePlace(cylinder), topBore(cylinder), Term.Part.PLUS_HALF)
                .add(gasketPlace(cylinder, state), gasket, Term.Part.MINUS_HALF)
                .add(offset(cylinder).place(), offset(cylinder), Term.Part.PLUS)
                .check(new MeasurePlace(MeasureKind.RING_OVER_BORE, cylinder, state));
    }

    private Check overCrown(int cylinder, Spot state, @Nullable Given gasket, Check intoBore) {
        MeasurePlace place = new MeasurePlace(MeasureKind.RING_OVER_CROWN, cylinder, state);
        Check atCrown = new Sum(sheet)
                .add(new MeasurePlace(MeasureKind.TOP_LAND, cylinder, null), Term.Part.PLUS_HALF)
                .add(gasketPlace(cylinder, state), gasket, Term.Part.MINUS_HALF)
                .add(bores.pistonToWall(cylinder), Term.Part.PLUS_HALF)
                .add(offset(cylinder).place(), offset(cylinder), Term.Part.PLUS)
                .check(place);
        Long bore = intoBore.value();
        boolean wallStopsIt = bore != null && atCrown.value() != null && bore < atCrown.value();
        return wallStopsIt ? new Sum(sheet).add(intoBore, Term.Part.PLUS).check(place) : atCrown;
    }

    /** The largest bore measured at the top, where the ring lies; else as designed. */
    private @Nullable Given topBore(int cylinder) {
        return Stream.of(Spot.TOP_ACROSS, Spot.TOP_ALONG)
                .map(spot -> sheet.measured(new MeasurePlace(MeasureKind.BORE, cylinder, spot)))
                .filter(Objects::nonNull)
                .max(Comparator.comparingLong(Given::value))
                .orElseGet(() -> sheet.designed(topBorePlace(cylinder)));
    }

    private static MeasurePlace topBorePlace(int cylinder) {
        return new MeasurePlace(MeasureKind.BORE, cylinder, Spot.TOP_ACROSS);
    }

    private static MeasurePlace gasketPlace(int cylinder, Spot state) {
        return new MeasurePlace(MeasureKind.GASKET_BORE, cylinder, state);
    }

    /** How far the ring lies off the middle; taken as nothing where nobody measured it. */
    private Given offset(int cylinder) {
        MeasurePlace place = new MeasurePlace(MeasureKind.GASKET_OFFSET, cylinder, null);
        Given measured = sheet.given(place);
        return measured == null ? new Given(place, 0, Basis.ASSUMED, "") : measured;
    }
}
