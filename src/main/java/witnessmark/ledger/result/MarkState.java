package witnessmark.ledger.result;

/** How a part, an engine or a car stands, worst first. */
public enum MarkState {
    /** Something happened to it that asks for work, and nobody signed that it was done. */
    HELD,
    /** Used, with told running at its high end, up to a limit or past it; a reading beyond its limit; a date past. */
    OVER,
    /** Over, and signed to go on up to a new figure that is not reached. */
    RUN_ON,
    /** Inside, and not any more within the next event's running, or within one event's running after it. */
    DUE,
    /**
     * Some run does not say the counter, life from before the logbook is not known, or a reading is missing or too old:
     * more may have been used, or worse be found.
     */
    NOT_KNOWN,
    /** Some is left after what is to come, and everything is known. */
    WITHIN
}
