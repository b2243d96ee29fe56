package witnessmark.fit.result;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasurePlace;

/**
 * One side of one cylinder at speed: {@code h(n) = h − stretch − take-up − growth − bending}. Millimetres and revolutions
 * a minute. Bands are twice the standard uncertainty, carried to first order (JCGM 100:2008, equation 10).
 *
 * @param place crown to head of which cylinder and side
 * @param reference the speed at which what goes with speed is stated, above 0
 * @param deck crown below the deck at rest
 * @param deckStandard standard uncertainty of that
 * @param above what lies between deck and head: the gasket as clamped, and the recess of a pad
 * @param aboveStandard standard uncertainty of that
 * @param overhang how far a ring reaches over the crown, above 0 where it does; null when not known
 * @param closings what closes
 */
public record AtSpeed(
        MeasurePlace place,
        double reference,
        double deck,
        double deckStandard,
        double above,
        double aboveStandard,
        @Nullable Double overhang,
        List<Closing> closings) {
    private static final double COVERAGE = 2;

    public AtSpeed {
        closings = List.copyOf(closings);
        if (!(reference > 0)) {
            throw new IllegalArgumentException("a reference speed is above 0");
        }
    }

    /** A figure with its band. */
    public record Band(double low, double likely, double high) {}

    /** What it closes by at a speed. */
    public double closes(double rpm) {
        return closings.stream()
                .mapToDouble(closing -> closing.at(rpm / reference))
                .sum();
    }

    /** Crown below the deck at a speed; below 0 where it rises above it, which is ordinary unless a ring hangs over it. */
    public Band deckAt(double rpm) {
        return band(deck - closes(rpm), deckUncertainty(rpm));
    }

    /** Crown to head at a speed. */
    public Band headAt(double rpm) {
        return band(deck + above - closes(rpm), Math.hypot(deckUncertainty(rpm), aboveStandard));
    }

    private double deckUncertainty(double rpm) {
        double variance = deckStandard * deckStandard;
        for (Closing closing : closings) {
            double standard = closing.standardAt(rpm / reference);
            variance += standard * standard;
        }
        return Math.sqrt(variance);
    }

    private static Band band(double likely, double standard) {
        return new Band(likely - COVERAGE * standard, likely, likely + COVERAGE * standard);
    }

    /** What closes it most at a speed. */
    public Optional<Closing> most(double rpm) {
        return closings.stream().max(Comparator.comparingDouble(closing -> closing.at(rpm / reference)));
    }

    /** Whether a ring reaches over the crown, so that a crown which rises above the deck meets it. */
    public boolean ringInTheWay() {
        return overhang != null && overhang > 0;
    }

    /**
     * From which speed on the crown is above the deck.
     *
     * @param surest the highest speed looked at
     */
    public Contact contact(double surest) {
        return new Contact(
                first(rpm -> deckAt(rpm).low(), surest),
                first(rpm -> deckAt(rpm).likely(), surest),
                first(rpm -> deckAt(rpm).high(), surest));
    }

    /** From which speed on the crown meets the head. */
    public Contact touching(double surest) {
        return new Contact(
                first(rpm -> headAt(rpm).low(), surest),
                first(rpm -> headAt(rpm).likely(), surest),
                first(rpm -> headAt(rpm).high(), surest));
    }

    /**
     * A range of speeds; null where even the highest looked at is not enough.
     *
     * @param notBefore below it that cannot be, by what is known
     * @param likely where it is to be expected
     * @param sureBy from there on it cannot but be
     */
    public record Contact(
            @Nullable Double notBefore,
            @Nullable Double likely,
            @Nullable Double sureBy) {}

    private interface Clearance {
        double at(double rpm);
    }

    /** The speed at which a clearance is used up, to a thousandth of a revolution; what closes only grows with speed. */
    private static @Nullable Double first(Clearance clearance, double surest) {
        if (clearance.at(0) <= 0) {
            return 0.0;
        }
        if (clearance.at(surest) > 0) {
            return null;
        }
        double low = 0;
        double high = surest;
        while (high - low > 1e-3) {
            double middle = (low + high) / 2;
            if (clearance.at(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
