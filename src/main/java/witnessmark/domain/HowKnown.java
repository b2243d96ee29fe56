package witnessmark.domain;

/** How a figure came about. */
public enum HowKnown implements Coded {
    /** From a logger or dyno trace. */
    TRACE("trace"),
    HOUR_METER("hour meter"),
    /** By watch, or by somebody who stood there. */
    TIMED("timed"),
    /** Somebody said so afterwards. */
    TOLD("told"),
    ESTIMATED("estimated");

    private final String code;

    HowKnown(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
