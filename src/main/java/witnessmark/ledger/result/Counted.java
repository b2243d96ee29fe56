package witnessmark.ledger.result;

/** Whether an entry is in the sum, and if not, why. */
public enum Counted {
    /** It is in the sum. */
    YES,
    /** Charged, but it does not say this counter: not known, never zero. */
    NOT_READ,
    /** Perhaps the same run as another; it counts nowhere until somebody decides. */
    PERHAPS_SAME,
    /** It ran before the moment the life carried in is stated at: a contradiction to settle. */
    BEFORE_PRIOR_LIFE
}
