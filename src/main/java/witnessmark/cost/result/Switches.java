package witnessmark.cost.result;

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

    /** Whether a piece of a failure is in the total. */
    public boolean takes(Piece piece) {
        boolean column = switch (piece.place()) {
            case CASH -> true;
            case LABOUR -> labour;
            case MISSED -> missed;
            case SPOILED -> spoiled;
            case RUNNING, OWN_WORK, KEPT -> false;
        };
        return column && (allocated || !piece.allocated()) && (planned || !piece.planned());
    }

    /** The same, but for what is spent either way and what was due anyway. */
    public Switches with(boolean allocatedToo, boolean plannedToo) {
        return new Switches(labour, missed, spoiled, allocatedToo, plannedToo);
    }
}
