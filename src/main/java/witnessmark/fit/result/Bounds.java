package witnessmark.fit.result;

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
