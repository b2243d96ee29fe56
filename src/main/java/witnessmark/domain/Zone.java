package witnessmark.domain;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * What a build opened. Opening one zone may open another: a depth includes another when its zones do. Which parts come
 * within reach with a zone is common practice (trade handbook, work grouped by how deep the strip is).
 */
public enum Zone implements Coded {
    COVERS(
            "covers",
            EnumSet.of(PartKind.VALVE_SPRINGS, PartKind.FOLLOWERS, PartKind.CAMSHAFTS, PartKind.OIL_AND_FILTER)),
    HEAD(
            "head",
            EnumSet.of(
                    PartKind.HEAD,
                    PartKind.HEAD_GASKET,
                    PartKind.HEAD_STUDS,
                    PartKind.VALVE_SPRINGS,
                    PartKind.INLET_VALVES,
                    PartKind.EXHAUST_VALVES,
                    PartKind.FOLLOWERS,
                    PartKind.CAMSHAFTS)),
    SUMP(
            "sump",
            EnumSet.of(
                    PartKind.BIG_END_SHELLS,
                    PartKind.MAIN_SHELLS,
                    PartKind.ROD_BOLTS,
                    PartKind.OIL_PUMP,
                    PartKind.OIL_AND_FILTER)),
    FRONT("front", EnumSet.of(PartKind.TIMING_CHAIN, PartKind.DAMPER, PartKind.WATER_PUMP, PartKind.OIL_PUMP)),
    BOTTOM_END(
            "bottom end",
            EnumSet.of(
                    PartKind.BLOCK,
                    PartKind.CRANK,
                    PartKind.RODS,
                    PartKind.ROD_BOLTS,
                    PartKind.PISTONS,
                    PartKind.RINGS,
                    PartKind.BIG_END_SHELLS,
                    PartKind.MAIN_SHELLS)),
    OUT_OF_CAR("out of the car", EnumSet.of(PartKind.FLYWHEEL, PartKind.CLUTCH));

    /** What hangs on the outside or is of no kind the trade has a name for: nothing has to be opened to reach it. */
    private static final Set<PartKind> OUTSIDE = Collections.unmodifiableSet(EnumSet.of(
            PartKind.GEARBOX,
            PartKind.OIL_COOLER,
            PartKind.LINES,
            PartKind.HARNESS,
            PartKind.SENSOR,
            PartKind.HOUR_METER,
            PartKind.OTHER));

    private final String code;
    private final Set<PartKind> within;

    Zone(String code, Set<PartKind> within) {
        this.code = code;
        this.within = Collections.unmodifiableSet(within);
    }

    /** Whether parts of a kind come within reach once this is open; what is outside is within reach in any zone. */
    public boolean reaches(PartKind kind) {
        return within.contains(kind) || OUTSIDE.contains(kind);
    }

    @Override
    public String code() {
        return code;
    }
}
