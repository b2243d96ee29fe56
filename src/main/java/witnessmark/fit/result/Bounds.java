package witnessmark.fit.result;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;

/**
 * What a figure may be and what is aimed at, of all limits that hold for it the narrowest.
 *
 * @param least not less than this, or null
 * @param most not more than this, or null
 * @param aimLeast aimed at not less than this, or null
 * @param aimMost aimed at not more than this, or null
 */
public record Bounds(
        @Nullable Bound least,
        @Nullable Bound most,
        @Nullable Long aimLeast,
        @Nullable Long aimMost) {
    public static final Bounds NONE = new Bounds(null, null, null, null);

    /** Whether there is anything to hold a figure against. */
    public boolean any() {
        return limits() || aimLeast != null || aimMost != null;
    }

    /** Whether there is a limit, not only an aim. */
    public boolean limits() {
        return least != null || most != null;
    }

    /** Whether somebody set a limit: what the trade holds to has no rank. */
    public boolean set() {
        return least != null && least.rank() != null || most != null && most.rank() != null;
    }

    /** Limits and aims, the least first. */
    public List<Long> known() {
        return Stream.of(
                        least == null ? null : Long.valueOf(least.value()),
                        most == null ? null : Long.valueOf(most.value()),
                        aimLeast,
                        aimMost)
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .sorted()
                .toList();
    }

    public FitVerdict verdict(long value) {
        if (least != null && value < least.value() || most != null && value > most.value()) {
            return FitVerdict.OUTSIDE;
        }
        if (aimLeast != null && value < aimLeast || aimMost != null && value > aimMost) {
            return FitVerdict.OFF_AIM;
        }
        return any() ? FitVerdict.INSIDE : FitVerdict.NO_LIMIT;
    }

    /** How far a figure lies inside its nearer limit, below 0 outside; null without a limit. */
    public @Nullable Long room(long value) {
        Long below = least == null ? null : Long.valueOf(value - least.value());
        Long above = most == null ? null : Long.valueOf(most.value() - value);
        return below == null ? above : above == null ? below : Long.valueOf(Math.min(below, above));
    }
}
