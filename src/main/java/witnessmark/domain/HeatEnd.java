package witnessmark.domain;

/** How an engine is left at the end of a trace, for heat cycles to be counted on in its next run. */
public enum HeatEnd implements Coded {
    /** Cold enough that warming up counts one more. */
    COLD("cold"),
    /** Warm: counted, and not cold since. */
    HOT("hot"),
    /** Neither: as it was when the trace began. */
    AS_BEGUN("as begun");

    private final String code;

    HeatEnd(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
