package witnessmark.cost.result;

import java.util.Arrays;
import java.util.List;

/**
 * What a total takes in besides the cash out for failures.
 *
 * @param labour own work at the team's rate
 * @param missed events that were not attended
 * @param spoiled weekends that were attended and lost
 * @param allocated shares of what is spent either way, as of a truck that goes for another car
 * @param planned work that was due anyway and was done at the same access
 */
public record Switches(boolean labour, boolean missed, boolean spoiled, boolean allocated, boolean planned) {
    /** All but spoiled weekends. */
    public static final Switches USUAL = new Switches(true, true, false, true, true);

    /** Everything that failures cost. */
    public static final Switches ALL = new Switches(true, true, true, true, true);

    /** Whether a piece of a failure is in the total. */
    public boolean takes(Piece piece) {
        return takes(piece.place()) && (allocated || !piece.allocated()) && (planned || !piece.planned());
    }

    /** Whether something is written and a total takes in none of it: then it is not 0, and not unwritten either. */
    public boolean leaveOutAll(List<Piece> pieces) {
        return !pieces.isEmpty() && pieces.stream().noneMatch(this::takes);
    }

    /** The columns that a total takes in, in their order. */
    public List<Place> columns() {
        return Arrays.stream(Place.values()).filter(this::takes).toList();
    }

    private boolean takes(Place column) {
        return switch (column) {
            case CASH -> true;
            case LABOUR -> labour;
            case MISSED -> missed;
            case SPOILED -> spoiled;
            case RUNNING, OWN_WORK, KEPT -> false;
        };
    }

    /** The same, but for what is spent either way and what was due anyway. */
    public Switches with(boolean allocatedToo, boolean plannedToo) {
        return new Switches(labour, missed, spoiled, allocatedToo, plannedToo);
    }
}
