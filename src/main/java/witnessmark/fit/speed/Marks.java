package witnessmark.fit.speed;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.fit.Sheet;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.MarkReading;
import witnessmark.fit.result.MarkReading.Fit;
import witnessmark.fit.result.MarkReading.How;

/**
 * What the marks of contact on the crowns fit: the piston has come up by what it stood below the deck and by how deep its
 * mark is. Stretch, take-up and growth act alike in all cylinders; a crank that bends gives most in the middle between two
 * main bearings; a loose bearing shows in one cylinder. A hint by least squares, no verdict.
 */
public final class Marks {
    /** What a mark's depth is read to, in millimetres either way; common practice, no source. */
    private static final double READ_TO = 0.03;
    /** Fewer marks tell nothing of a pattern. */
    private static final int FEWEST = 3;

    private Marks() {}

    /** What the marks on a sheet fit; empty where too few are read, or nothing is known of the deck. */
    public static Optional<MarkReading> of(Sheet sheet) {
        SortedMap<Integer, Double> rises = new TreeMap<>();
        Rest rest = new Rest(sheet, null);
        for (int cylinder : sheet.numbers(MeasureKind.CROWN_MARK)) {
            Given mark = sheet.measured(new MeasurePlace(MeasureKind.CROWN_MARK, cylinder, null));
            Optional<Double> deck = rest.worked(MeasureKind.DECK_MEAN, cylinder);
            if (mark != null && deck.isPresent()) {
                rises.put(cylinder, deck.get() + Rest.millimetres(mark.value()));
            }
        }
        return rises.size() < FEWEST ? Optional.empty() : Optional.of(read(rises, gives(rises, rest.throwsInBay())));
    }

    /**
     * @param rises by cylinder, three at least
     * @param gives how far each throw gives beside the one that gives most, by cylinder
     */
    static MarkReading read(SortedMap<Integer, Double> rises, Map<Integer, Double> gives) {
        List<Fit> fits = new ArrayList<>();
        fits.add(fit(
                How.ALIKE_IN_ALL,
                null,
                rises,
                rises.keySet().stream().collect(TreeMap::new, (m, c) -> m.put(c, 1.0), Map::putAll)));
        boolean differ = gives.values().stream().distinct().count() > 1;
        if (differ) {
            fits.add(fit(How.BENDING, null, rises, gives));
        }
        rises.keySet().stream()
                .map(apart -> withoutOne(apart, rises))
                .min(Comparator.comparingDouble(Fit::leftOver))
                .ifPresent(fits::add);
        fits.sort(Comparator.comparingDouble(Fit::leftOver));
        boolean apart = fits.size() < 2 || fits.get(1).leftOver() - fits.get(0).leftOver() > READ_TO;
        return new MarkReading(rises, fits, apart);
    }

    /** {@code rise = amount · gives}, by least squares. */
    private static Fit fit(
            How how, @Nullable Integer apart, SortedMap<Integer, Double> rises, Map<Integer, Double> gives) {
        double up = 0;
        double down = 0;
        for (Map.Entry<Integer, Double> rise : rises.entrySet()) {
            double give = gives.getOrDefault(rise.getKey(), 0.0);
            up += give * rise.getValue();
            down += give * give;
        }
        double amount = down > 0 ? up / down : 0;
        Map<Integer, Double> residuals = new TreeMap<>();
        double squares = 0;
        for (Map.Entry<Integer, Double> rise : rises.entrySet()) {
            double left = rise.getValue() - amount * gives.getOrDefault(rise.getKey(), 0.0);
            residuals.put(rise.getKey(), left);
            squares += left * left;
        }
        return new Fit(how, apart, amount, Math.sqrt(squares / Math.max(1, rises.size() - 1)), residuals);
    }

    /** All but one alike, and that one as it is. */
    private static Fit withoutOne(int apart, SortedMap<Integer, Double> rises) {
        TreeMap<Integer, Double> others = new TreeMap<>(rises);
        others.remove(apart);
        TreeMap<Integer, Double> alike = new TreeMap<>();
        others.keySet().forEach(cylinder -> alike.put(cylinder, 1.0));
        Fit fit = fit(How.ONE_APART, apart, others, alike);
        Map<Integer, Double> residuals = new TreeMap<>(fit.residuals());
        residuals.put(apart, 0.0);
        return new Fit(How.ONE_APART, apart, fit.amount(), fit.leftOver(), residuals);
    }

    /** A bar between two supports gives by the square of both ways to them. */
    private static Map<Integer, Double> gives(SortedMap<Integer, Double> rises, int throwsInBay) {
        Map<Integer, Double> gives = new TreeMap<>();
        for (int cylinder : rises.keySet()) {
            double share = Bending.pinAt(cylinder, throwsInBay);
            gives.put(cylinder, share * share * (1 - share) * (1 - share));
        }
        double most =
                gives.values().stream().mapToDouble(Double::doubleValue).max().orElse(1);
        gives.replaceAll((cylinder, give) -> give / most);
        return gives;
    }
}
