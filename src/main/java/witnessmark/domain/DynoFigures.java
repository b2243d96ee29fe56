package witnessmark.domain;

/** What the figures of a dyno sheet are. */
public enum DynoFigures implements Coded {
    /** As the brake read them. */
    OBSERVED("observed"),
    /** Multiplied by the dyno with its factor. */
    CORRECTED("corrected");

    private final String code;

    DynoFigures(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
