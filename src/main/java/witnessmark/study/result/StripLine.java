package witnessmark.study.result;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.PartKind;
import witnessmark.domain.Zone;

/**
 * A line of a strip report: a place on an engine, or one side of it where the sides are looked at apart, in the order in which an
 * engine comes apart. What was written of such a place without a side has a line of its own, which no zone opens. Which zone lays
 * a line open is common practice, no source.
 */
public enum StripLine {
    PLUG(FindingPlace.PLUG, Side.WHOLE, Counted.CYLINDERS, Outline.DISC, null, Area.GAS, Zone.COVERS, Zone.HEAD),
    CAM(
            FindingPlace.CAM,
            Side.WHOLE,
            Counted.NOT,
            Outline.NONE,
            PartKind.CAMSHAFTS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    FOLLOWER(FindingPlace.FOLLOWER, Side.WHOLE, Counted.CYLINDERS, Outline.DISC, PartKind.FOLLOWERS, Area.VALVES),
    FOLLOWER_INLET(
            FindingPlace.FOLLOWER,
            Side.INLET,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.FOLLOWERS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    FOLLOWER_EXHAUST(
            FindingPlace.FOLLOWER,
            Side.EXHAUST,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.FOLLOWERS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    SPRING(FindingPlace.SPRING, Side.WHOLE, Counted.CYLINDERS, Outline.NONE, PartKind.VALVE_SPRINGS, Area.VALVES),
    SPRING_INLET(
            FindingPlace.SPRING,
            Side.INLET,
            Counted.CYLINDERS,
            Outline.NONE,
            PartKind.VALVE_SPRINGS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    SPRING_EXHAUST(
            FindingPlace.SPRING,
            Side.EXHAUST,
            Counted.CYLINDERS,
            Outline.NONE,
            PartKind.VALVE_SPRINGS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    RETAINER(FindingPlace.RETAINER, Side.WHOLE, Counted.CYLINDERS, Outline.DISC, PartKind.VALVE_SPRINGS, Area.VALVES),
    RETAINER_INLET(
            FindingPlace.RETAINER,
            Side.INLET,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.VALVE_SPRINGS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    RETAINER_EXHAUST(
            FindingPlace.RETAINER,
            Side.EXHAUST,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.VALVE_SPRINGS,
            Area.VALVES,
            Zone.COVERS,
            Zone.HEAD),
    VALVE(FindingPlace.VALVE, Side.WHOLE, Counted.CYLINDERS, Outline.DISC, null, Area.VALVES),
    VALVE_INLET(
            FindingPlace.VALVE,
            Side.INLET,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.INLET_VALVES,
            Area.VALVES,
            Zone.HEAD),
    VALVE_EXHAUST(
            FindingPlace.VALVE,
            Side.EXHAUST,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.EXHAUST_VALVES,
            Area.VALVES,
            Zone.HEAD),
    SEAT(FindingPlace.SEAT, Side.WHOLE, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD, Area.VALVES),
    SEAT_INLET(FindingPlace.SEAT, Side.INLET, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD, Area.VALVES, Zone.HEAD),
    SEAT_EXHAUST(
            FindingPlace.SEAT, Side.EXHAUST, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD, Area.VALVES, Zone.HEAD),
    GUIDE(FindingPlace.GUIDE, Side.WHOLE, Counted.CYLINDERS, Outline.NONE, PartKind.HEAD, Area.VALVES),
    GUIDE_INLET(FindingPlace.GUIDE, Side.INLET, Counted.CYLINDERS, Outline.NONE, PartKind.HEAD, Area.VALVES, Zone.HEAD),
    GUIDE_EXHAUST(
            FindingPlace.GUIDE, Side.EXHAUST, Counted.CYLINDERS, Outline.NONE, PartKind.HEAD, Area.VALVES, Zone.HEAD),
    CHAMBER(FindingPlace.CHAMBER, Side.WHOLE, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD, Area.GAS, Zone.HEAD),
    HEAD_FACE(FindingPlace.HEAD_FACE, Side.WHOLE, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD, Area.GAS, Zone.HEAD),
    GASKET(FindingPlace.GASKET, Side.WHOLE, Counted.CYLINDERS, Outline.DISC, PartKind.HEAD_GASKET, Area.GAS, Zone.HEAD),
    FIRE_RING(
            FindingPlace.FIRE_RING,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.HEAD_GASKET,
            Area.GAS,
            Zone.HEAD),
    BLOCK_FACE(
            FindingPlace.BLOCK_FACE, Side.WHOLE, Counted.CYLINDERS, Outline.DISC, PartKind.BLOCK, Area.GAS, Zone.HEAD),
    STUD(FindingPlace.STUD, Side.WHOLE, Counted.NOT, Outline.NONE, PartKind.HEAD_STUDS, Area.GAS, Zone.HEAD),
    BORE(
            FindingPlace.BORE,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.ROUND,
            PartKind.BLOCK,
            Area.CYLINDERS,
            Zone.HEAD,
            Zone.BOTTOM_END),
    CROWN(
            FindingPlace.CROWN,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.DISC,
            PartKind.PISTONS,
            Area.CYLINDERS,
            Zone.HEAD,
            Zone.BOTTOM_END),
    RING_LAND(
            FindingPlace.RING_LAND,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.ROUND,
            PartKind.PISTONS,
            Area.CYLINDERS,
            Zone.BOTTOM_END),
    RINGS(
            FindingPlace.RINGS,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.ROUND,
            PartKind.RINGS,
            Area.CYLINDERS,
            Zone.BOTTOM_END),
    SKIRT(
            FindingPlace.SKIRT,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.ROUND,
            PartKind.PISTONS,
            Area.CYLINDERS,
            Zone.BOTTOM_END),
    PIN(
            FindingPlace.PIN,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.TUNNEL,
            PartKind.PISTONS,
            Area.CYLINDERS,
            Zone.BOTTOM_END),
    PIN_BOSS(
            FindingPlace.PIN_BOSS,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.NONE,
            PartKind.PISTONS,
            Area.CYLINDERS,
            Zone.BOTTOM_END),
    CIRCLIP(
            FindingPlace.CIRCLIP,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.NONE,
            PartKind.PISTONS,
            Area.CYLINDERS,
            Zone.BOTTOM_END),
    ROD(FindingPlace.ROD, Side.WHOLE, Counted.CYLINDERS, Outline.NONE, PartKind.RODS, Area.CRANK, Zone.BOTTOM_END),
    LITTLE_END(
            FindingPlace.LITTLE_END,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.TUNNEL,
            PartKind.RODS,
            Area.CRANK,
            Zone.BOTTOM_END),
    ROD_HOUSING(
            FindingPlace.ROD_HOUSING,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.TUNNEL,
            PartKind.RODS,
            Area.CRANK,
            Zone.BOTTOM_END),
    ROD_BOLT(
            FindingPlace.ROD_BOLT,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.NONE,
            PartKind.ROD_BOLTS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    BIG_END_SHELL(
            FindingPlace.BIG_END_SHELL,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.HALF,
            PartKind.BIG_END_SHELLS,
            Area.CRANK),
    BIG_END_UPPER(
            FindingPlace.BIG_END_SHELL,
            Side.UPPER,
            Counted.CYLINDERS,
            Outline.HALF,
            PartKind.BIG_END_SHELLS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    BIG_END_LOWER(
            FindingPlace.BIG_END_SHELL,
            Side.LOWER,
            Counted.CYLINDERS,
            Outline.HALF,
            PartKind.BIG_END_SHELLS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    SHELL_BACK(
            FindingPlace.SHELL_BACK, Side.WHOLE, Counted.CYLINDERS, Outline.HALF, PartKind.BIG_END_SHELLS, Area.CRANK),
    SHELL_BACK_UPPER(
            FindingPlace.SHELL_BACK,
            Side.UPPER,
            Counted.CYLINDERS,
            Outline.HALF,
            PartKind.BIG_END_SHELLS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    SHELL_BACK_LOWER(
            FindingPlace.SHELL_BACK,
            Side.LOWER,
            Counted.CYLINDERS,
            Outline.HALF,
            PartKind.BIG_END_SHELLS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    CRANK_PIN(
            FindingPlace.CRANK_PIN,
            Side.WHOLE,
            Counted.CYLINDERS,
            Outline.TUNNEL,
            PartKind.CRANK,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    MAIN_SHELL(FindingPlace.MAIN_SHELL, Side.WHOLE, Counted.MAINS, Outline.HALF, PartKind.MAIN_SHELLS, Area.CRANK),
    MAIN_UPPER(
            FindingPlace.MAIN_SHELL,
            Side.UPPER,
            Counted.MAINS,
            Outline.HALF,
            PartKind.MAIN_SHELLS,
            Area.CRANK,
            Zone.BOTTOM_END),
    MAIN_LOWER(
            FindingPlace.MAIN_SHELL,
            Side.LOWER,
            Counted.MAINS,
            Outline.HALF,
            PartKind.MAIN_SHELLS,
            Area.CRANK,
            Zone.SUMP,
            Zone.BOTTOM_END),
    MAIN_JOURNAL(
            FindingPlace.MAIN_JOURNAL,
            Side.WHOLE,
            Counted.MAINS,
            Outline.TUNNEL,
            PartKind.CRANK,
            Area.CRANK,
            Zone.BOTTOM_END),
    MAIN_TUNNEL(
            FindingPlace.MAIN_TUNNEL,
            Side.WHOLE,
            Counted.MAINS,
            Outline.TUNNEL,
            PartKind.BLOCK,
            Area.CRANK,
            Zone.BOTTOM_END),
    THRUST_FACE(
            FindingPlace.THRUST_FACE,
            Side.WHOLE,
            Counted.NOT,
            Outline.WHEEL,
            PartKind.MAIN_SHELLS,
            Area.CRANK,
            Zone.BOTTOM_END),
    CRANK(FindingPlace.CRANK, Side.WHOLE, Counted.NOT, Outline.NONE, PartKind.CRANK, Area.CRANK, Zone.BOTTOM_END),
    CHAIN(FindingPlace.CHAIN, Side.WHOLE, Counted.NOT, Outline.NONE, PartKind.TIMING_CHAIN, Area.OUTSIDE, Zone.FRONT),
    DAMPER(FindingPlace.DAMPER, Side.WHOLE, Counted.NOT, Outline.WHEEL, PartKind.DAMPER, Area.OUTSIDE, Zone.FRONT),
    WATER_PUMP(
            FindingPlace.WATER_PUMP,
            Side.WHOLE,
            Counted.NOT,
            Outline.NONE,
            PartKind.WATER_PUMP,
            Area.OUTSIDE,
            Zone.FRONT),
    OIL_PUMP(
            FindingPlace.OIL_PUMP,
            Side.WHOLE,
            Counted.NOT,
            Outline.NONE,
            PartKind.OIL_PUMP,
            Area.OUTSIDE,
            Zone.FRONT,
            Zone.SUMP),
    SUMP(FindingPlace.SUMP, Side.WHOLE, Counted.NOT, Outline.NONE, null, Area.OUTSIDE, Zone.SUMP),
    OIL_FILTER(
            FindingPlace.OIL_FILTER,
            Side.WHOLE,
            Counted.NOT,
            Outline.NONE,
            PartKind.OIL_AND_FILTER,
            Area.OUTSIDE,
            Zone.COVERS,
            Zone.HEAD,
            Zone.SUMP,
            Zone.FRONT,
            Zone.BOTTOM_END),
    FLYWHEEL(
            FindingPlace.FLYWHEEL,
            Side.WHOLE,
            Counted.NOT,
            Outline.WHEEL,
            PartKind.FLYWHEEL,
            Area.OUTSIDE,
            Zone.OUT_OF_CAR),
    CLUTCH(FindingPlace.CLUTCH, Side.WHOLE, Counted.NOT, Outline.WHEEL, PartKind.CLUTCH, Area.OUTSIDE, Zone.OUT_OF_CAR),
    OIL_COOLER(FindingPlace.OIL_COOLER, Side.WHOLE, Counted.NOT, Outline.NONE, PartKind.OIL_COOLER, Area.OUTSIDE),
    HOSE(FindingPlace.HOSE, Side.WHOLE, Counted.NOT, Outline.NONE, null, Area.OUTSIDE),
    SEAL(FindingPlace.SEAL, Side.WHOLE, Counted.NOT, Outline.NONE, null, Area.OUTSIDE),
    INJECTOR(FindingPlace.INJECTOR, Side.WHOLE, Counted.CYLINDERS, Outline.NONE, null, Area.OUTSIDE),
    WIRING(FindingPlace.WIRING, Side.WHOLE, Counted.NOT, Outline.NONE, PartKind.HARNESS, Area.OUTSIDE),
    ELSEWHERE(FindingPlace.ELSEWHERE, Side.WHOLE, Counted.NOT, Outline.NONE, null, Area.OUTSIDE);

    /** Which side of a place. */
    public enum Side {
        WHOLE(""),
        UPPER("upper"),
        LOWER("lower"),
        INLET("inlet"),
        EXHAUST("exhaust");

        private final String word;

        Side(String word) {
            this.word = word;
        }

        /** As it begins the spot of a finding; empty for the whole. */
        public String word() {
            return word;
        }
    }

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
    private final Side side;
    private final Counted counted;
    private final Outline outline;
    private final @Nullable PartKind kind;
    private final Area area;
    private final Set<Zone> zones;

    StripLine(
            FindingPlace place,
            Side side,
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

    public Side side() {
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
        String begins = spot.toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(line -> line.place == at && begins.startsWith(line.side.word))
                .max(Comparator.comparingInt(line -> line.side.word.length()))
                .orElse(null);
    }

    /** The spot without the side that the line says already. */
    public String beyondSide(String spot) {
        return spot.toLowerCase(Locale.ROOT).startsWith(side.word)
                ? spot.substring(side.word.length()).strip()
                : spot;
    }

    /** The spot of a finding on this line. */
    public String spot(String beyond) {
        return Stream.of(side.word, beyond.strip())
                .filter(word -> !word.isEmpty())
                .reduce((one, other) -> one + " " + other)
                .orElse("");
    }
}
