package witnessmark.domain;

/** What was found at a place of a trace. */
public enum TraceMarkKind implements Coded {
    /** Above the limit while the engine drove. */
    LIMITER("over-rev on the limiter"),
    /** Above the limit with the throttle shut: the wheels turned the engine. */
    MECHANICAL("mechanical over-rev"),
    /** Above the limit, and no throttle was logged to tell which. */
    OVER_REV("over-rev"),
    /** Less oil pressure than the floor at that speed. */
    OIL_DIP("oil pressure dip"),
    /** The sensor or its wire, not the oil. */
    FALSE_DIP("false oil pressure dip"),
    /** A temperature that fell while the engine was hot. */
    IMPLAUSIBLE_FALL("implausible fall"),
    TOO_HOT("too hot"),
    /** Nothing was logged, or nothing changed that always does. */
    DROP_OUT("drop-out"),
    /** A figure that nothing could have reached in the time. */
    SPIKE("spike"),
    TIME_BACK("time goes back"),
    /** Time that was not logged. */
    GAP("gap"),
    REPEATED("repeated sample"),
    /** NaN, infinite or empty where a figure belongs. */
    NO_NUMBER("no number"),
    TEXT("text in place of a number"),
    /** A figure that stood still while the engine did not. */
    FROZEN("frozen"),
    /** A sensor that reads something with the engine at rest. */
    OFFSET("offset at rest"),
    /** Speeds before the engine ran. */
    CRANKING("cranking noise"),
    /** The heading in the midst of the figures. */
    HEADINGS("headings again");

    private final String code;

    TraceMarkKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
