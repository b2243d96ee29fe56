package witnessmark.domain;

/** How well a life carried in is known. */
public enum PriorKind implements Coded {
    KNOWN("known"),
    /** With a range, by somebody's word. */
    TOLD("told"),
    /** Every life becomes 'at least'. */
    UNKNOWN("unknown");

    private final String code;

    PriorKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
