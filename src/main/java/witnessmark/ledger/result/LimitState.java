package witnessmark.ledger.result;

/** How a life stands to a limit, worst first. */
public enum LimitState {
    /** Used, with told running at its high end, up to the limit or past it. */
    OVER,
    /** Some run does not say the counter, or life from before the logbook is not known: more may have been used. */
    NOT_KNOWN,
    /** Some is left, and everything is known. */
    WITHIN
}
