package witnessmark.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Term;

/** Bores: how round, how straight, how much room they leave the piston. */
final class BoreChecks {
    private static final List<Spot> ACROSS = List.of(Spot.TOP_ACROSS, Spot.MIDDLE_ACROSS, Spot.BOTTOM_ACROSS);
    private static final List<Spot> ALONG = List.of(Spot.TOP_ALONG, Spot.MIDDLE_ALONG, Spot.BOTTOM_ALONG);

    private final Sheet sheet;

    BoreChecks(Sheet sheet) {
        this.sheet = sheet;
    }

    List<Answer> all() {
        List<Check> taper = new ArrayList<>();
        List<Check> ovality = new ArrayList<>();
        List<Check> wall = new ArrayList<>();
        for (int cylinder : sheet.numbers(MeasureKind.BORE)) {
            taper.add(taper(cylinder));
            ovality.add(ovality(cylinder));
            wall.add(pistonToWall(cylinder));
        }
        return List.of(
                Answers.of(MeasureKind.BORE_TAPER, taper, null),
                Answers.of(MeasureKind.BORE_OVALITY, ovality, null),
                Answers.of(MeasureKind.PISTON_TO_WALL, wall, null));
    }

    /** Largest less smallest over the heights in one direction; of both directions the larger. */
    private Check taper(int cylinder) {
        MeasurePlace place = new MeasurePlace(MeasureKind.BORE_TAPER, cylinder, null);
        return larger(
                Spread.measured(sheet, place, places(cylinder, ACROSS)),
                Spread.measured(sheet, place, places(cylinder, ALONG)));
    }

    /** Largest less smallest of both directions at one height; of all heights the largest. */
    private Check ovality(int cylinder) {
        MeasurePlace place = new MeasurePlace(MeasureKind.BORE_OVALITY, cylinder, null);
        Check worst = null;
        for (int i = 0; i < ACROSS.size(); i++) {
            Check here = Spread.measured(sheet, place, places(cylinder, List.of(ACROSS.get(i), ALONG.get(i))));
            worst = worst == null ? here : larger(worst, here);
        }
        return Objects.requireNonNull(worst);
    }

    /** The smallest bore measured less the piston. */
    Check pistonToWall(int cylinder) {
        Given smallest = sheet.places(MeasureKind.BORE).stream()
                .filter(place -> place.at(MeasureKind.BORE, cylinder))
                .map(sheet::measured)
                .filter(Objects::nonNull)
                .min(Comparator.comparingLong(Given::value))
                .orElse(null);
        return new Sum(sheet)
                .add(new MeasurePlace(MeasureKind.BORE, cylinder, Spot.TOP_ACROSS), smallest, Term.Part.PLUS)
                .add(
                        new MeasurePlace(MeasureKind.PISTON, cylinder, null),
                        sheet.measured(new MeasurePlace(MeasureKind.PISTON, cylinder, null)),
                        Term.Part.MINUS)
                .check(new MeasurePlace(MeasureKind.PISTON_TO_WALL, cylinder, null));
    }

    private static List<MeasurePlace> places(int cylinder, List<Spot> spots) {
        return spots.stream()
                .map(spot -> new MeasurePlace(MeasureKind.BORE, cylinder, spot))
                .toList();
    }

    /** The larger of two figures; one that is there before one that is not. */
    static Check larger(Check one, Check other) {
        if (one.value() == null || other.value() == null) {
            return one.value() == null ? other.value() == null ? one : other : one;
        }
        return one.value() >= other.value() ? one : other;
    }
}
