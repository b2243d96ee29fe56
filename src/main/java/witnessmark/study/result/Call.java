package witnessmark.study.result;

/** What readings ask for, worst first. */
public enum Call {
    /** They get worse and stand off those of the same kind beside them: look at this place. */
    LOOK,
    /** The last one breaks a limit. */
    PAST_LIMIT,
    /** They get worse; nothing beside them says whether it is this place alone, or it is not. */
    WORSE,
    NONE
}
