package witnessmark.logbook.standing;

/**
 * How far a new logbook has been begun, in the order in which it is done.
 *
 * @param car a car is written down
 * @param engine an engine is written down
 * @param run a run is logged
 */
public record FirstSteps(boolean car, boolean engine, boolean run) {
    /** Whether a step is left; once a run is logged the logbook stands by itself. */
    public boolean left() {
        return !run;
    }
}
