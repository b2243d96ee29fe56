package witnessmark.domain;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;

/**
 * What goes under a straightedge laid along one line of a face: the gap lies between two feelers.
 *
 * @param look of which look
 * @param line along which line, one of {@link #LINES}
 * @param number between bores, the lower of the two cylinders; null elsewhere
 * @param goes the thickest feeler that goes under; 0 when none does
 * @param stops the thinnest that does not, above what goes; null when it was not tried
 */
public record FaceLine(
        Id<FaceLook> look,
        Spot line,
        @Nullable Integer number,
        Length goes,
        @Nullable Length stops) implements Fact {
    /** The lines a straightedge is laid along. */
    public static final Set<Spot> LINES = Set.copyOf(EnumSet.of(
            Spot.EXHAUST_SIDE,
            Spot.INLET_SIDE,
            Spot.FRONT_END,
            Spot.REAR_END,
            Spot.DIAGONAL_FRONT_EXHAUST,
            Spot.DIAGONAL_FRONT_INLET,
            Spot.BETWEEN_BORES));

    public FaceLine {
        if (!LINES.contains(line)) {
            throw new IllegalArgumentException("no straightedge lies along " + line.code());
        }
        if ((number != null) != (line == Spot.BETWEEN_BORES)) {
            throw new IllegalArgumentException("between bores, and only there, the bore is told");
        }
        if (goes.nanometres() < 0 || stops != null && stops.compareTo(goes) <= 0) {
            throw new IllegalArgumentException("what stops is thicker than what goes");
        }
    }
}
