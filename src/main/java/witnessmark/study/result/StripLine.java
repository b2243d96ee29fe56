package witnessmark.study.result;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.PartKind;
import witnessmark.domain.PlaceSide;
import witnessmark.domain.Zone;

/**
 * A line of a strip report: a place on an engine, or one side of it where the sides are looked at apart, in the order in which an
 * engine comes apart. What was written of such a place without a side has a line of its own, which no zone opens. Which zone lays
 * a line open is common practice, no source.
 */
public enum StripLine {
    PLUG(FindingPlace.PLUG, Counted.CYLINDERS, Outline.DISC, null, Area.GAS, Zone.COVERS, Zone.HEAD),
    CAM(FindingPlace.CAM, Counted.NOT, Outline.NONE, PartKind.CAMSHAFTS, Area.VALVES, Zone.COVERS, Zone.HEAD),
    FOLLOWER(FindingPlace.FOLLOWER, Counted.CYLINDERS, Outline.DISC, PartKind.FOLLOWERS, Area.VALVES),
    FOLLOWER_INLET(
            FindingPlace.FOLLOWER,
            PlaceSide.INLET,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.FOLLOWERS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    FOLLOWER_EXHAUST(
            FindingPlace.FOLLOWER,
            PlaceSide.EXHAUST,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.FOLLOWERS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    SPRING(FindingPlace.SPRING, Counted.CYLINDERS, Outline.NONE, PartKind.VALVE_SPRINGS, Area.VALVES),
    SPRING_INLET(
            FindingPlace.SPRING,
            PlaceSide.INLET,
            Counted.CYLINDERS,
            Outline.NONE,
            PartKind.VALVE_SPRINGS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    SPRING_EXHAUST(
            FindingPlace.SPRING,
            PlaceSide.EXHAUST,
            Counted.CYLINDERS,
            Outline.NONE,
            PartKind.VALVE_SPRINGS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    RETAINER(FindingPlace.RETAINER, Counted.CYLINDERS, Outline.DISC, PartKind.VALVE_SPRINGS, Area.VALVES),
    RETAINER_INLET(
            FindingPlace.RETAINER,
            PlaceSide.INLET,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.VALVE_SPRINGS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    RETAINER_EXHAUST(
            FindingPlace.RETAINER,
            PlaceSide.EXHAUST,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.VALVE_SPRINGS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    VALVE(FindingPlace.VALVE, Counted.CYLINDERS, Outline.DISC, null, Area.VALVES),
    VALVE_INLET(
            FindingPlace.VALVE,
            PlaceSide.INLET,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.INLET_VALVES,
            Area.VALVES,
            Zone.HEAD),
    VALVE_EXHAUST(
            FindingPlace.VALVE,
            PlaceSide.EXHAUST,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.EXHAUST_VALVES,
            Area.VALVES,
            Zone.HEAD),
    SEAT(FindingPlace.SEAT, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD, Area.VALVES),
    SEAT_INLET(
            FindingPlace.SEAT, PlaceSide.INLET, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD, Area.VALVES, Zone.HEAD),
    SEAT_EXHAUST(
            FindingPlace.SEAT,
            PlaceSide.EXHAUST,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.HEAD,
            Area.VALVES,
            Zone.HEAD),
    GUIDE(FindingPlace.GUIDE, Counted.CYLINDERS, Outline.NONE, PartKind.HEAD, Area.VALVES),
    GUIDE_INLET(
            FindingPlace.GUIDE,
            PlaceSide.INLET,
            Counted.CYLINDERS,
            Outline.NONE,
            PartKind.HEAD,
            Area.VALVES,
            Zone.HEAD),
    GUIDE_EXHAUST(
            FindingPlace.GUIDE,
            PlaceSide.EXHAUST,
            Counted.CYLINDERS,
            Outline.NONE,
            PartKind.HEAD,
            Area.VALVES,
            Zone.HEAD),
    CHAMBER(FindingPlace.CHAMBER, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD, Area.GAS, Zone.HEAD),
    HEAD_FACE(FindingPlace.HEAD_FACE, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD, Area.GAS, Zone.HEAD),
    GASKET(FindingPlace.GASKET, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD_GASKET, Area.GAS, Zone.HEAD),
    FIRE_RING(FindingPlace.FIRE_RING, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD_GASKET, Area.GAS, Zone.HEAD),
    BLOCK_FACE(FindingPlace.BLOCK_FACE, Counted.CYLINDERS, Outline.DISC, PartKind.BLOCK, Area.GAS, Zone.HEAD),
    STUD(FindingPlace.STUD, Counted.NOT, Outline.NONE, PartKind.HEAD_STUDS, Area.GAS, Zone.HEAD),
    BORE(
            FindingPlace.BORE,
            Counted.CYLINDERS,
            Outline.ROUND,
            PartKind.BLOCK,
            Area.CYLINDERS,
            Zone.HEAD,
            Zone.BOTTOM_END),
    CROWN(
            FindingPlace.CROWN,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.PISTONS,
            Area.CYLINDERS,
            Zone.HEAD,
            Zone.BOTTOM_END),
    RING_LAND(
            FindingPlace.RING_LAND,
            Counted.CYLINDERS,
            Outline.ROUND,
            PartKind.PISTONS,
            Area.CYLINDERS,
            Zone.BOTTOM_END),
    RINGS(FindingPlace.RINGS, Counted.CYLINDERS, Outline.ROUND, PartKind.RINGS, Area.CYLINDERS, Zone.BOTTOM_END),
    SKIRT(FindingPlace.SKIRT, Counted.CYLINDERS, Outline.ROUND, PartKind.PISTONS, Area.CYLINDERS, Zone.BOTTOM_END),
    PIN(FindingPlace.PIN, Counted.CYLINDERS, Outline.TUNNEL, PartKind.PISTONS, Area.CYLINDERS, Zone.BOTTOM_END),
    PIN_BOSS(FindingPlace.PIN_BOSS, Counted.CYLINDERS, Outline.NONE, PartKind.PISTONS, Area.CYLINDERS, Zone.BOTTOM_END),
    CIRCLIP(FindingPlace.CIRCLIP, Counted.CYLINDERS, Outline.NONE, PartKind.PISTONS, Area.CYLINDERS, Zone.BOTTOM_END),
    ROD(FindingPlace.ROD, Counted.CYLINDERS, Outline.NONE, PartKind.RODS, Area.CRANK, Zone.BOTTOM_END),
    LITTLE_END(FindingPlace.LITTLE_END, Counted.CYLINDERS, Outline.TUNNEL, PartKind.RODS, Area.CRANK, Zone.BOTTOM_END),
    ROD_HOUSING(
            FindingPlace.ROD_HOUSING, Counted.CYLINDERS, Outline.TUNNEL, PartKind.RODS, Area.CRANK, Zone.BOTTOM_END),
    ROD_BOLT(
            FindingPlace.ROD_BOLT,
            Counted.CYLINDERS,
            Outline.NONE,
            PartKind.ROD_BOLTS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    BIG_END_SHELL(FindingPlace.BIG_END_SHELL, Counted.CYLINDERS, Outline.HALF, PartKind.BIG_END_SHELLS, Area.CRANK),
    BIG_END_UPPER(
            FindingPlace.BIG_END_SHELL,
            PlaceSide.UPPER,
            Counted.CYLINDERS,
            Outline.HALF,
            PartKind.BIG_END_SHELLS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    BIG_END_LOWER(
            FindingPlace.BIG_END_SHELL,
            PlaceSide.LOWER,
            Counted.CYLINDERS,
            Outline.HALF,
            PartKind.BIG_END_SHELLS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    SHELL_BACK(FindingPlace.SHELL_BACK, Counted.CYLINDERS, Outline.HALF, PartKind.BIG_END_SHELLS, Area.CRANK),
    SHELL_BACK_UPPER(
            FindingPlace.SHELL_BACK,
            PlaceSide.UPPER,
            Counted.CYLINDERS,
            Outline.HALF,
            PartKind.BIG_END_SHELLS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    SHELL_BACK_LOWER(
            FindingPlace.SHELL_BACK,
            PlaceSide.LOWER,
            Counted.CYLINDERS,
            Outline.HALF,
            PartKind.BIG_END_SHELLS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    CRANK_PIN(
            FindingPlace.CRANK_PIN,
            Counted.CYLINDERS,
            Outline.TUNNEL,
            PartKind.CRANK,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    MAIN_SHELL(FindingPlace.MAIN_SHELL, Counted.MAINS, Outline.HALF, PartKind.MAIN_SHELLS, Area.CRANK),
    MAIN_UPPER(
            FindingPlace.MAIN_SHELL,
            PlaceSide.UPPER,
            Counted.MAINS,
            Outline.HALF,
            PartKind.MAIN_SHELLS,
            Area.CRANK,
            Zone.BOTTOM_END),
    MAIN_LOWER(
            FindingPlace.MAIN_SHELL,
            PlaceSide.LOWER,
            Counted.MAINS,
            Outline.HALF,
            PartKind.MAIN_SHELLS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    MAIN_JOURNAL(FindingPlace.MAIN_JOURNAL, Counted.MAINS, Outline.TUNNEL, PartKind.CRANK, Area.CRANK, Zone.BOTTOM_END),
    MAIN_TUNNEL(FindingPlace.MAIN_TUNNEL, Counted.MAINS, Outline.TUNNEL, PartKind.BLOCK, Area.CRANK, Zone.BOTTOM_END),
    THRUST_FACE(
            FindingPlace.THRUST_FACE, Counted.NOT, Outline.WHEEL, PartKind.MAIN_SHELLS, Area.CRANK, Zone.BOTTOM_END),
    CRANK(FindingPlace.CRANK, Counted.NOT, Outline.NONE, PartKind.CRANK, Area.CRANK, Zone.BOTTOM_END),
    CHAIN(FindingPlace.CHAIN, Counted.NOT, Outline.NONE, PartKind.TIMING_CHAIN, Area.OUTSIDE, Zone.FRONT),
    DAMPER(FindingPlace.DAMPER, Counted.NOT, Outline.WHEEL, PartKind.DAMPER, Area.OUTSIDE, Zone.FRONT),
    WATER_PUMP(FindingPlace.WATER_PUMP, Counted.NOT, Outline.NONE, PartKind.WATER_PUMP, Area.OUTSIDE, Zone.FRONT),
    OIL_PUMP(FindingPlace.OIL_PUMP, Counted.NOT, Outline.NONE, PartKind.OIL_PUMP, Area.OUTSIDE, Zone.FRONT, Zone.SUMP),
    SUMP(FindingPlace.SUMP, Counted.NOT, Outline.NONE, null, Area.OUTSIDE, Zone.SUMP),
    OIL_FILTER(
            FindingPlace.OIL_FILTER,
            Counted.NOT,
            Outline.NONE,
            PartKind.OIL_AND_FILTER,
            Area.OUTSIDE,
            Zone.COVERS,
            Zone.HEAD,
            Zone.SUMP,
            Zone.FRONT,
            Zone.BOTTOM_END),
    FLYWHEEL(FindingPlace.FLYWHEEL, Counted.NOT, Outline.WHEEL, PartKind.FLYWHEEL, Area.OUTSIDE, Zone.OUT_OF_CAR),
    CLUTCH(FindingPlace.CLUTCH, Counted.NOT, Outline.WHEEL, PartKind.CLUTCH, Area.OUTSIDE, Zone.OUT_OF_CAR),
    OIL_COOLER(FindingPlace.OIL_COOLER, Counted.NOT, Outline.NONE, PartKind.OIL_COOLER, Area.OUTSIDE),
    HOSE(FindingPlace.HOSE, Counted.NOT, Outline.NONE, null, Area.OUTSIDE),
    SEAL(FindingPlace.SEAL, Counted.NOT, Outline.NONE, null, Area.OUTSIDE),
    INJECTOR(FindingPlace.INJECTOR, Counted.CYLINDERS, Outline.NONE, null, Area.OUTSIDE),
    WIRING(FindingPlace.WIRING, Counted.NOT, Outline.NONE, PartKind.HARNESS, Area.OUTSIDE),
    ELSEWHERE(FindingPlace.ELSEWHERE, Counted.NOT, Outline.NONE, null, Area.OUTSIDE);

    /** What numbers mean there. */
    public enum Counted {
        /** There is one of it, or nobody numbers it. */
        NOT,
        CYLINDERS,
        MAINS
    }

    /** Where on an engine lines belong together. */
    public enum Area {
        GAS,
        VALVES,
        CYLINDERS,
        CRANK,
        OUTSIDE
    }

    private final FindingPlace place;
    private final PlaceSide side;
    private final Counted counted;
    private final Outline outline;
    private final @Nullable PartKind kind;
    private final Area area;
    private final Set<Zone> zones;

    /** A place that is looked at as a whole. */
    StripLine(FindingPlace place, Counted counted, Outline outline, @Nullable PartKind kind, Area area, Zone... zones) {
        this(place, PlaceSide.WHOLE, counted, outline, kind, area, zones);
    }

    StripLine(
            FindingPlace place,
            PlaceSide side,
            Counted counted,
            Outline outline,
            @Nullable PartKind kind,
            Area area,
            Zone... zones) {
        this.place = place;
        this.side = side;
        this.counted = counted;
        this.outline = outline;
        this.kind = kind;
        this.area = area;
        this.zones = zones.length == 0 ? EnumSet.noneOf(Zone.class) : EnumSet.copyOf(Arrays.asList(zones));
    }

    public FindingPlace place() {
        return place;
    }

    public PlaceSide side() {
        return side;
    }

    public Counted counted() {
        return counted;
    }

    public Outline outline() {
        return outline;
    }

    /** The kind of part it is on, or null where it is on none that has a position. */
    public @Nullable PartKind kind() {
        return kind;
    }

    public Area area() {
        return area;
    }

    /** Whether it can be looked at once these are open. */
    public boolean openedBy(Set<Zone> open) {
        return zones.stream().anyMatch(open::contains);
    }

    /** The zones that lay a place open, any of its sides; none for what lies outside. */
    public static Set<Zone> opening(FindingPlace place) {
        return Arrays.stream(values())
                .filter(line -> line.place == place)
                .flatMap(line -> line.zones.stream())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Zone.class)));
    }

    /** The line a finding belongs to: that of its side where its spot begins with one. Null for one without a place. */
    public static @Nullable StripLine of(Finding finding) {
        return of(finding.place(), finding.spot());
    }

    /** The same of what is going to be one. */
    public static @Nullable StripLine of(@Nullable FindingPlace at, String spot) {
        PlaceSide side = PlaceSide.of(spot);
        return Arrays.stream(values())
                .filter(line -> line.place == at && (line.side == side || line.side == PlaceSide.WHOLE))
                .max(Comparator.comparing(line -> line.side))
                .orElse(null);
    }

    /** The spot without the side that the line says already. */
    public String beyondSide(String spot) {
        return side.beyond(spot);
    }

    /** The spot of a finding on this line. */
    public String spot(String beyond) {
        return side.spot(beyond);
    }
}
