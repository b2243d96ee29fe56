package witnessmark.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Pattern;

/**
 * What the deck clearances of a row show taken together (common practice, no source): all off the same way, gasket or
 * deck; one apart, its rod or piston; a ramp, the deck is not square to the crank.
 */
final class DeckPattern {
    /** Spread of a row that nobody limited: 0.05 mm, common practice. */
    private static final long USUAL_SPREAD = 50_000;

    private final Sheet sheet;

    DeckPattern(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Null while a cylinder of the row is not measured, or there are fewer than three. */
    @Nullable
    Pattern of(List<Check> means) {
        if (means.size() < 3 || means.stream().anyMatch(check -> check.value() == null)) {
            return null;
        }
        List<Long> row = means.stream()
                .map(check -> Objects.requireNonNull(check.value()))
                .toList();
        Bound most = sheet.bounds(MeasureKind.DECK_SPREAD, null).most();
        long allowed = most == null ? USUAL_SPREAD : most.value();
        if (spread(row) <= allowed) {
            return level(row, allowed);
        }
        for (int i = 0; i < row.size(); i++) {
            List<Long> others = new ArrayList<>(row);
            others.remove(i);
            if (3 * spread(others) <= spread(row)) {
                return new Pattern(Pattern.Shape.ONE_APART, i + 1);
            }
        }
        return ramp(row) ? new Pattern(Pattern.Shape.RAMP, null) : new Pattern(Pattern.Shape.UNEVEN, null);
    }

    private Pattern level(List<Long> row, long allowed) {
        Given designed = sheet.designed(new MeasurePlace(MeasureKind.DECK_CLEARANCE, 1, Spot.THRUST));
        if (designed != null && row.stream().allMatch(figure -> figure < designed.value() - allowed / 2)) {
            return new Pattern(Pattern.Shape.ALL_LOW, null);
        }
        if (designed != null && row.stream().allMatch(figure -> figure > designed.value() + allowed / 2)) {
            return new Pattern(Pattern.Shape.ALL_HIGH, null);
        }
        return new Pattern(Pattern.Shape.EVEN, null);
    }

    /** Whether each step from front to back goes the same way. */
    private static boolean ramp(List<Long> row) {
        boolean up = true;
        boolean down = true;
        for (int i = 1; i < row.size(); i++) {
            up &= row.get(i) > row.get(i - 1);
            down &= row.get(i) < row.get(i - 1);
        }
        return up || down;
    }

    private static long spread(List<Long> row) {
        return row.stream().mapToLong(Long::longValue).max().orElseThrow()
                - row.stream().mapToLong(Long::longValue).min().orElseThrow();
    }
}
