package witnessmark.domain;

/** What kind of part it is. A position takes parts of one kind. */
public enum PartKind implements Coded {
    CRANK("crank"),
    RODS("rods"),
    ROD_BOLTS("rod bolts"),
    PISTONS("pistons"),
    RINGS("rings"),
    BIG_END_SHELLS("big-end shells"),
    MAIN_SHELLS("main shells"),
    BLOCK("block"),
    HEAD("head"),
    HEAD_GASKET("head gasket"),
    HEAD_STUDS("head studs"),
    VALVE_SPRINGS("valve springs"),
    INLET_VALVES("inlet valves"),
    EXHAUST_VALVES("exhaust valves"),
    FOLLOWERS("cam followers"),
    CAMSHAFTS("camshafts"),
    TIMING_CHAIN("timing chain"),
    OIL_PUMP("oil pump"),
    WATER_PUMP("water pump"),
    OIL_AND_FILTER("oil and filter"),
    DAMPER("damper"),
    FLYWHEEL("flywheel"),
    CLUTCH("clutch"),
    GEARBOX("gearbox"),
    OIL_COOLER("oil cooler"),
    LINES("lines"),
    HARNESS("harness"),
    SENSOR("sensor"),
    HOUR_METER("hour meter"),
    OTHER("other");

    private final String code;

    PartKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
