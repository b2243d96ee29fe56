package witnessmark.domain;

/** Where at its place something is measured. */
public enum Spot implements Coded {
    THRUST("thrust side"),
    ANTI_THRUST("anti-thrust side"),
    /** 10 to 15 mm from the top, square to the pin. */
    TOP_ACROSS("top, across"),
    /** 10 to 15 mm from the top, along the pin. */
    TOP_ALONG("top, along"),
    MIDDLE_ACROSS("middle, across"),
    MIDDLE_ALONG("middle, along"),
    BOTTOM_ACROSS("bottom, across"),
    BOTTOM_ALONG("bottom, along"),
    TOP("top"),
    BOTTOM("bottom"),
    FRONT_UPRIGHT("front, upright"),
    FRONT_ACROSS("front, across"),
    REAR_UPRIGHT("rear, upright"),
    REAR_ACROSS("rear, across"),
    /** In the direction of the load. */
    UPRIGHT("upright"),
    ACROSS("across"),
    FRONT_EXHAUST("front, exhaust side"),
    FRONT_INLET("front, inlet side"),
    REAR_EXHAUST("rear, exhaust side"),
    REAR_INLET("rear, inlet side"),
    EXHAUST_SIDE("along the exhaust side"),
    INLET_SIDE("along the inlet side"),
    FRONT_END("front end"),
    REAR_END("rear end"),
    DIAGONAL_FRONT_EXHAUST("diagonal from front exhaust"),
    DIAGONAL_FRONT_INLET("diagonal from front inlet"),
    BETWEEN_BORES("between the bores"),
    MIDDLE("middle"),
    FREE("free"),
    TRIAL_CLAMPED("trial-clamped"),
    AFTER_RUN("after run"),
    RING_FREE("ring, free"),
    RING_CLAMPED("ring, clamped"),
    BODY_FREE("body, free"),
    BODY_CLAMPED("body, clamped"),
    FRONT("front"),
    EXHAUST("exhaust side"),
    REAR("rear"),
    INLET("inlet side"),
    /** The nearer to the front. */
    VALVE_A("valve A"),
    VALVE_B("valve B"),
    BOLT_A("bolt A"),
    BOLT_B("bolt B");

    private final String code;

    Spot(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
