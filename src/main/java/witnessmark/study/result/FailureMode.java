package witnessmark.study.result;

import static witnessmark.domain.FindingMark.BEATEN;
import static witnessmark.domain.FindingMark.BENT;
import static witnessmark.domain.FindingMark.BLOCKED;
import static witnessmark.domain.FindingMark.BROKEN;
import static witnessmark.domain.FindingMark.BURNT;
import static witnessmark.domain.FindingMark.CARBON_TRACK;
import static witnessmark.domain.FindingMark.CHAFED;
import static witnessmark.domain.FindingMark.CRACKED;
import static witnessmark.domain.FindingMark.CRAZED;
import static witnessmark.domain.FindingMark.CRUSHED;
import static witnessmark.domain.FindingMark.DIRT_EMBEDDED;
import static witnessmark.domain.FindingMark.DISTORTED;
import static witnessmark.domain.FindingMark.EDGE_WORN;
import static witnessmark.domain.FindingMark.ERODED;
import static witnessmark.domain.FindingMark.FLAKES;
import static witnessmark.domain.FindingMark.FRETTED;
import static witnessmark.domain.FindingMark.GLAZED;
import static witnessmark.domain.FindingMark.HALF_MOON;
import static witnessmark.domain.FindingMark.HEAT_COLOUR;
import static witnessmark.domain.FindingMark.HOLED;
import static witnessmark.domain.FindingMark.LEAKING;
import static witnessmark.domain.FindingMark.LINING_TORN;
import static witnessmark.domain.FindingMark.LOOSE;
import static witnessmark.domain.FindingMark.MISSING;
import static witnessmark.domain.FindingMark.OUT_OF_ROUND;
import static witnessmark.domain.FindingMark.PITTED;
import static witnessmark.domain.FindingMark.POLISHED_ARC;
import static witnessmark.domain.FindingMark.RECESSED;
import static witnessmark.domain.FindingMark.SCORED;
import static witnessmark.domain.FindingMark.SCUFFED;
import static witnessmark.domain.FindingMark.SEIZED;
import static witnessmark.domain.FindingMark.SOFT;
import static witnessmark.domain.FindingMark.SPECKS;
import static witnessmark.domain.FindingMark.SPLIT;
import static witnessmark.domain.FindingMark.SPUN;
import static witnessmark.domain.FindingMark.STRETCHED;
import static witnessmark.domain.FindingMark.WET;
import static witnessmark.domain.FindingMark.WIPED;
import static witnessmark.domain.FindingMark.WORN;
import static witnessmark.domain.FindingPlace.BIG_END_SHELL;
import static witnessmark.domain.FindingPlace.BLOCK_FACE;
import static witnessmark.domain.FindingPlace.BORE;
import static witnessmark.domain.FindingPlace.CAM;
import static witnessmark.domain.FindingPlace.CHAIN;
import static witnessmark.domain.FindingPlace.CHAMBER;
import static witnessmark.domain.FindingPlace.CRANK;
import static witnessmark.domain.FindingPlace.CRANK_PIN;
import static witnessmark.domain.FindingPlace.CROWN;
import static witnessmark.domain.FindingPlace.DAMPER;
import static witnessmark.domain.FindingPlace.FIRE_RING;
import static witnessmark.domain.FindingPlace.FLYWHEEL;
import static witnessmark.domain.FindingPlace.FOLLOWER;
import static witnessmark.domain.FindingPlace.GASKET;
import static witnessmark.domain.FindingPlace.HEAD_FACE;
import static witnessmark.domain.FindingPlace.HOSE;
import static witnessmark.domain.FindingPlace.INJECTOR;
import static witnessmark.domain.FindingPlace.LITTLE_END;
import static witnessmark.domain.FindingPlace.MAIN_JOURNAL;
import static witnessmark.domain.FindingPlace.MAIN_SHELL;
import static witnessmark.domain.FindingPlace.OIL_COOLER;
import static witnessmark.domain.FindingPlace.OIL_FILTER;
import static witnessmark.domain.FindingPlace.OIL_PUMP;
import static witnessmark.domain.FindingPlace.PIN;
import static witnessmark.domain.FindingPlace.PLUG;
import static witnessmark.domain.FindingPlace.RETAINER;
import static witnessmark.domain.FindingPlace.RINGS;
import static witnessmark.domain.FindingPlace.RING_LAND;
import static witnessmark.domain.FindingPlace.ROD;
import static witnessmark.domain.FindingPlace.ROD_BOLT;
import static witnessmark.domain.FindingPlace.ROD_HOUSING;
import static witnessmark.domain.FindingPlace.SEAL;
import static witnessmark.domain.FindingPlace.SEAT;
import static witnessmark.domain.FindingPlace.SHELL_BACK;
import static witnessmark.domain.FindingPlace.SKIRT;
import static witnessmark.domain.FindingPlace.SPRING;
import static witnessmark.domain.FindingPlace.STUD;
import static witnessmark.domain.FindingPlace.SUMP;
import static witnessmark.domain.FindingPlace.VALVE;
import static witnessmark.domain.FindingPlace.WATER_PUMP;
import static witnessmark.domain.FindingPlace.WIRING;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.PartKind;

/**
 * How engines fail, by what is found where: which marks lead to asking about it, and failed parts of which kinds. What is asked
 * then is common practice of the trade, worded in a bundle.
 */
public enum FailureMode {
    LOST_GRIP(
            Set.of(SHELL_BACK, ROD_HOUSING, ROD_BOLT),
            Set.of(FRETTED, OUT_OF_ROUND, STRETCHED),
            Set.of(PartKind.RODS, PartKind.ROD_BOLTS)),
    SPUN_SHELL(
            Set.of(BIG_END_SHELL, MAIN_SHELL, CRANK_PIN, MAIN_JOURNAL),
            Set.of(SPUN, LINING_TORN, HEAT_COLOUR),
            Set.of(PartKind.BIG_END_SHELLS, PartKind.MAIN_SHELLS)),
    DEBRIS(
            Set.of(BIG_END_SHELL, MAIN_SHELL, OIL_FILTER, OIL_COOLER, SUMP, CRANK_PIN),
            Set.of(DIRT_EMBEDDED, SCORED, FLAKES, SPECKS),
            Set.of(PartKind.OIL_COOLER)),
    WIPED_SHELL(Set.of(BIG_END_SHELL, MAIN_SHELL), Set.of(WIPED, CRAZED, EDGE_WORN), Set.of(PartKind.BIG_END_SHELLS)),
    OIL_SHORT(Set.of(OIL_PUMP, SUMP), Set.of(BLOCKED, WORN, SCORED, LOOSE), Set.of(PartKind.OIL_PUMP)),
    BOLT_BROKEN(Set.of(ROD_BOLT, STUD), Set.of(BROKEN, CRACKED), Set.of(PartKind.HEAD_STUDS)),
    ROD_BENT(Set.of(ROD, LITTLE_END, PIN), Set.of(BENT, BROKEN, CRACKED, HEAT_COLOUR), Set.of(PartKind.RODS)),
    CRANK_CRACKED(
            Set.of(CRANK, CRANK_PIN, MAIN_JOURNAL, DAMPER),
            Set.of(CRACKED, BROKEN),
            Set.of(PartKind.CRANK, PartKind.DAMPER)),
    DETONATION(
            Set.of(PLUG, CROWN, RING_LAND, CHAMBER, FIRE_RING),
            Set.of(PITTED, SPECKS, BEATEN, ERODED, BROKEN),
            Set.of(PartKind.PISTONS)),
    LEAN(Set.of(PLUG, CROWN, INJECTOR), Set.of(ERODED, HOLED, BURNT, BLOCKED), Set.of(PartKind.PISTONS)),
    SCUFFED_PISTON(Set.of(SKIRT, BORE, RINGS), Set.of(SCUFFED, SEIZED, SCORED, GLAZED, WORN), Set.of(PartKind.PISTONS)),
    VALVE_STRIKE(Set.of(CROWN, VALVE), Set.of(HALF_MOON, BENT), Set.of(PartKind.INLET_VALVES, PartKind.EXHAUST_VALVES)),
    SQUISH_CONTACT(Set.of(CROWN, CHAMBER, HEAD_FACE), Set.of(POLISHED_ARC), Set.of()),
    GASKET_LEAK(
            Set.of(GASKET, HEAD_FACE, BLOCK_FACE), Set.of(CARBON_TRACK, LEAKING, BURNT), Set.of(PartKind.HEAD_GASKET)),
    FIRE_RING_BEATEN(Set.of(FIRE_RING, GASKET), Set.of(BEATEN, CRUSHED, SPLIT), Set.of(PartKind.HEAD_GASKET)),
    HEAD_TOO_HOT(Set.of(HEAD_FACE, CHAMBER, SEAT), Set.of(DISTORTED, SOFT, CRACKED, RECESSED), Set.of(PartKind.HEAD)),
    VALVE_DROPPED(
            Set.of(VALVE, RETAINER), Set.of(BROKEN, MISSING), Set.of(PartKind.INLET_VALVES, PartKind.EXHAUST_VALVES)),
    SPRING_BROKEN(Set.of(SPRING), Set.of(BROKEN, CRACKED, WORN, SOFT), Set.of(PartKind.VALVE_SPRINGS)),
    VALVE_BURNT(Set.of(VALVE, SEAT), Set.of(BURNT, PITTED), Set.of(PartKind.EXHAUST_VALVES)),
    CAM_WORN(Set.of(CAM, FOLLOWER), Set.of(WORN, PITTED, SCUFFED), Set.of(PartKind.CAMSHAFTS, PartKind.FOLLOWERS)),
    CHAIN_LONG(Set.of(CHAIN), Set.of(STRETCHED, WORN, LOOSE, BROKEN), Set.of(PartKind.TIMING_CHAIN)),
    OIL_LEAK(Set.of(SEAL), Set.of(LEAKING, SPLIT, WET), Set.of()),
    WATER_LOST(Set.of(HOSE, WATER_PUMP), Set.of(LOOSE, LEAKING, SPLIT, CHAFED), Set.of(PartKind.WATER_PUMP)),
    FALSE_READING(Set.of(WIRING), Set.of(CHAFED, LOOSE, BROKEN), Set.of(PartKind.SENSOR, PartKind.HARNESS)),
    FLYWHEEL_LOOSE(
            Set.of(FLYWHEEL, DAMPER), Set.of(LOOSE, FRETTED, CRACKED), Set.of(PartKind.FLYWHEEL, PartKind.DAMPER)),
    /** What is asked of every failure: whether it was put together wrong. */
    AT_ASSEMBLY(Set.of(), Set.of(), Set.of());

    private final Set<FindingPlace> places;
    private final Set<FindingMark> marks;
    private final Set<PartKind> parts;

    FailureMode(Set<FindingPlace> places, Set<FindingMark> marks, Set<PartKind> parts) {
        this.places = places;
        this.marks = marks;
        this.parts = parts;
    }

    /** Whether such a mark there leads to asking about it. */
    public boolean shows(FindingPlace place, FindingMark mark) {
        return places.contains(place) && marks.contains(mark);
    }

    /** Every mark, those first that a place is looked at for, and that it is as it should be before them. */
    public static List<FindingMark> marksAt(FindingPlace place) {
        return Stream.of(true, false)
                .flatMap(known -> Arrays.stream(FindingMark.values()).filter(mark -> known == knownAt(place, mark)))
                .toList();
    }

    private static boolean knownAt(FindingPlace place, FindingMark mark) {
        return mark == FindingMark.NO_MARK
                || mark == FindingMark.AS_NEW
                || mark == FindingMark.EVEN_WEAR
                || Arrays.stream(values()).anyMatch(mode -> mode.shows(place, mark));
    }

    /** Whether a failed part of that kind leads to asking about it. */
    public boolean of(PartKind kind) {
        return parts.contains(kind);
    }
}
