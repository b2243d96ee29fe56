package witnessmark.study.result;

/** How far what was done about an incident is proven. */
public enum ProofState {
    /** Nothing that was to put it right is done. */
    OPEN,
    /** Done, and nothing has been seen of it yet; or what was seen was not as asked for. */
    DONE,
    /** It runs, and the trouble has stayed away so far. */
    HOLDING,
    /** Closed by a person. */
    CLOSED,
    /** It came back, closed or not. */
    CAME_BACK
}
