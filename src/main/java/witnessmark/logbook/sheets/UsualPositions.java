package witnessmark.logbook.sheets;

import static witnessmark.domain.PartKind.*;

import java.util.List;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Id;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;

/**
 * The positions a new engine design begins with (common practice, no source). An empty one does not make an engine
 * incomplete: a logbook just begun does not know of most parts, and asking at every run would say nothing.
 */
final class UsualPositions {
    private static final List<PartKind> USUAL = List.of(
            CRANK,
            RODS,
            ROD_BOLTS,
            PISTONS,
            RINGS,
            BIG_END_SHELLS,
            MAIN_SHELLS,
            HEAD,
            HEAD_GASKET,
            VALVE_SPRINGS,
            INLET_VALVES,
            EXHAUST_VALVES,
            FOLLOWERS,
            CAMSHAFTS,
            TIMING_CHAIN,
            OIL_PUMP,
            WATER_PUMP,
            OIL_AND_FILTER,
            FLYWHEEL,
            CLUTCH);

    private UsualPositions() {}

    static void make(ReadSheet in, SheetField field, Id<EngineDesign> design) {
        int turn = 1;
        for (PartKind kind : USUAL) {
            in.make(field, new Position(design, null, kind, kind.code(), turn++, false));
        }
    }
}
