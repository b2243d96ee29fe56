package witnessmark.domain;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * Where something of an engine is measured.
 *
 * @param kind what is measured
 * @param number which cylinder or main bearing, counted from 1; null for the engine's one
 * @param spot where there; null when there is one figure for the place
 */
public record MeasurePlace(
        MeasureKind kind,
        @Nullable Integer number,
        @Nullable Spot spot) implements Comparable<MeasurePlace> {
    private static final Comparator<MeasurePlace> ORDER = Comparator.comparing(MeasurePlace::kind)
            .thenComparing(MeasurePlace::number, Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(MeasurePlace::spot, Comparator.nullsFirst(Comparator.naturalOrder()));

    public MeasurePlace {
        if ((number == null) != (kind.placedAt() == PlacedAt.ENGINE) || number != null && number < 1) {
            throw new IllegalArgumentException(
                    "a place of " + kind.code() + " is " + (number == null ? "numbered from 1" : "not numbered"));
        }
        if (kind.spots().isEmpty()
                ? spot != null
                : spot == null || !kind.spots().contains(spot)) {
            throw new IllegalArgumentException(kind.code() + " is not measured there");
        }
    }

    /** As far as it names a place, whatever the spot. */
    public boolean at(MeasureKind other, @Nullable Integer where) {
        return kind == other && (where == null ? number == null : where.equals(number));
    }

    @Override
    public int compareTo(MeasurePlace other) {
        return ORDER.compare(this, other);
    }
}
