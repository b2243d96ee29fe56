package witnessmark.cost.result;

/** Where a piece of a cost is counted. Each piece is counted in one place. */
public enum Place {
    /** Cash out for a failure. */
    CASH,
    /** Own work on a failure, at the team's rate. */
    LABOUR,
    /** Lost on an event the car did not go to, because of a failure. */
    MISSED,
    /** Spent on a weekend the car went to, and lost by a failure: apart, and part of the running unless asked for. */
    SPOILED,
    /** What racing costs when nothing breaks. */
    RUNNING,
    /** Own work that no failure asked for, at the team's rate. */
    OWN_WORK,
    /** Bought and still to be used. */
    KEPT;

    /** Whether it is owed to a failure. */
    public boolean ofFailure() {
        return compareTo(SPOILED) <= 0;
    }

    /** Whether no money moves. */
    public boolean valued() {
        return this == LABOUR || this == OWN_WORK;
    }
}
