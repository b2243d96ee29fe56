package witnessmark.study.trials;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.PartKind;

/** The places on an engine at which a finding speaks of the part that sits there, where nobody said of which part. */
final class FoundAt {
    private static final Map<PartKind, Set<FindingPlace>> PLACES = new EnumMap<>(Map.ofEntries(
            Map.entry(PartKind.CRANK, Set.of(FindingPlace.CRANK, FindingPlace.CRANK_PIN, FindingPlace.MAIN_JOURNAL)),
            Map.entry(PartKind.RODS, Set.of(FindingPlace.ROD, FindingPlace.LITTLE_END, FindingPlace.ROD_HOUSING)),
            Map.entry(PartKind.ROD_BOLTS, Set.of(FindingPlace.ROD_BOLT)),
            Map.entry(
                    PartKind.PISTONS,
                    Set.of(
                            FindingPlace.CROWN,
                            FindingPlace.RING_LAND,
                            FindingPlace.SKIRT,
                            FindingPlace.PIN,
                            FindingPlace.PIN_BOSS,
                            FindingPlace.CIRCLIP)),
            Map.entry(PartKind.RINGS, Set.of(FindingPlace.RINGS)),
            Map.entry(PartKind.BIG_END_SHELLS, Set.of(FindingPlace.BIG_END_SHELL)),
            Map.entry(PartKind.MAIN_SHELLS, Set.of(FindingPlace.MAIN_SHELL)),
            Map.entry(PartKind.HEAD_GASKET, Set.of(FindingPlace.GASKET, FindingPlace.FIRE_RING)),
            Map.entry(PartKind.HEAD_STUDS, Set.of(FindingPlace.STUD)),
            Map.entry(PartKind.VALVE_SPRINGS, Set.of(FindingPlace.SPRING, FindingPlace.RETAINER)),
            Map.entry(PartKind.FOLLOWERS, Set.of(FindingPlace.FOLLOWER)),
            Map.entry(PartKind.CAMSHAFTS, Set.of(FindingPlace.CAM)),
            Map.entry(PartKind.TIMING_CHAIN, Set.of(FindingPlace.CHAIN)),
            Map.entry(PartKind.OIL_PUMP, Set.of(FindingPlace.OIL_PUMP)),
            Map.entry(PartKind.OIL_AND_FILTER, Set.of(FindingPlace.OIL_FILTER)),
            Map.entry(PartKind.WATER_PUMP, Set.of(FindingPlace.WATER_PUMP)),
            Map.entry(PartKind.DAMPER, Set.of(FindingPlace.DAMPER)),
            Map.entry(PartKind.FLYWHEEL, Set.of(FindingPlace.FLYWHEEL)),
            Map.entry(PartKind.CLUTCH, Set.of(FindingPlace.CLUTCH))));

    private FoundAt() {}

    /** None for a kind of which nothing on an engine speaks alone. */
    static Set<FindingPlace> places(PartKind kind) {
        return PLACES.getOrDefault(kind, Set.of());
    }
}
