package witnessmark.fit.result;

/** What a figure rests on. */
public enum Basis {
    MEASURED,
    /** Worked out of what was measured. */
    WORKED_OUT,
    /** As the engine's or the part's designer says it should be. */
    AS_DESIGNED,
    /** Nothing was said, and the usual is taken. */
    ASSUMED
}
