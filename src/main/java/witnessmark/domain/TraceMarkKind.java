package witnessmark.domain;

/** What was found at a place of a trace: what the engine did, then what was wrong with the trace. */
public enum TraceMarkKind implements Coded {
    /** Above the limit while the engine drove. */
    LIMITER("over-rev on the limiter"),
    /** Above the limit with the throttle shut: the wheels turned the engine. */
    MECHANICAL("mechanical over-rev"),
    /** Above the limit, and no throttle was logged to tell which. */
    OVER_REV("over-rev"),
    /** Less oil pressure than the floor at that speed. */
    OIL_DIP("oil pressure dip"),
    /** A temperature that fell while the engine was hot. */
    IMPLAUSIBLE_FALL("implausible fall"),
    GAP("gap"),
    DROPOUT("dropout"),
    SPIKE("spike"),
    TIME_BACKWARDS("time backwards"),
    RESTART("restart"),
    DUPLICATE("duplicated sample"),
    NOT_A_NUMBER("not a number"),
    TEXT("text in numbers"),
    REPEATED_HEADING("repeated heading"),
    UNITS_ROW("units row"),
    UNREADABLE_ROW("unreadable row"),
    SHORT_ROW("short row"),
    LONG_ROW("long row"),
    CUT_OFF("cut off"),
    FROZEN("frozen"),
    OFFSET("offset at rest"),
    CRANKING("cranking noise"),
    SENSOR_DROP("sensor drop"),
    SENSOR_JUMP("sensor jump");

    private final String code;

    TraceMarkKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
