package witnessmark.domain;

import java.util.List;
import witnessmark.quantity.Dimension;

/**
 * What stands on a build sheet: measured, or worked out of what is. Bores, journals and clearances are of single throws:
 * a crank pin is counted by its cylinder.
 */
public enum MeasureKind implements Coded {
    /** From the middle of the main bearings to the deck. */
    BLOCK_HEIGHT(
            "block deck height",
            BuildStep.BLOCK,
            Dimension.LENGTH,
            PlacedAt.ENGINE,
            Spot.FRONT_EXHAUST,
            Spot.FRONT_INLET,
            Spot.REAR_EXHAUST,
            Spot.REAR_INLET),
    DECK_FLATNESS(
            "deck flatness",
            BuildStep.BLOCK,
            Dimension.LENGTH,
            PlacedAt.ENGINE,
            Spot.EXHAUST_SIDE,
            Spot.INLET_SIDE,
            Spot.FRONT_END,
            Spot.REAR_END,
            Spot.DIAGONAL_FRONT_EXHAUST,
            Spot.DIAGONAL_FRONT_INLET,
            Spot.BETWEEN_BORES),
    DECK_RA(
            "deck finish Ra",
            BuildStep.BLOCK,
            Dimension.ROUGHNESS,
            PlacedAt.ENGINE,
            Spot.FRONT_END,
            Spot.MIDDLE,
            Spot.REAR_END),
    DECK_RZ(
            "deck finish Rz",
            BuildStep.BLOCK,
            Dimension.ROUGHNESS,
            PlacedAt.ENGINE,
            Spot.FRONT_END,
            Spot.MIDDLE,
            Spot.REAR_END),
    BORE(
            "bore",
            BuildStep.BLOCK,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.TOP_ACROSS,
            Spot.TOP_ALONG,
            Spot.MIDDLE_ACROSS,
            Spot.MIDDLE_ALONG,
            Spot.BOTTOM_ACROSS,
            Spot.BOTTOM_ALONG),
    BORE_RA("bore finish Ra", BuildStep.BLOCK, Dimension.ROUGHNESS, PlacedAt.CYLINDER, Spot.TOP, Spot.BOTTOM),
    /** Shells out, caps tightened. */
    MAIN_HOUSING("main housing", BuildStep.BLOCK, Dimension.LENGTH, PlacedAt.MAIN, Spot.UPRIGHT, Spot.ACROSS),
    /** Shells in, caps tightened. */
    MAIN_BORE("main bearing bore", BuildStep.BLOCK, Dimension.LENGTH, PlacedAt.MAIN, Spot.UPRIGHT),
    MAIN_JOURNAL(
            "main journal",
            BuildStep.CRANK,
            Dimension.LENGTH,
            PlacedAt.MAIN,
            Spot.FRONT_UPRIGHT,
            Spot.FRONT_ACROSS,
            Spot.REAR_UPRIGHT,
            Spot.REAR_ACROSS),
    MAIN_CLEARANCE("main bearing clearance", BuildStep.CRANK, Dimension.LENGTH, PlacedAt.MAIN),
    PIN_JOURNAL(
            "crank pin",
            BuildStep.CRANK,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.FRONT_UPRIGHT,
            Spot.FRONT_ACROSS,
            Spot.REAR_UPRIGHT,
            Spot.REAR_ACROSS),
    CRANK_RUN_OUT("crank run-out", BuildStep.CRANK, Dimension.LENGTH, PlacedAt.ENGINE),
    CRANK_END_FLOAT("crank end float", BuildStep.CRANK, Dimension.LENGTH, PlacedAt.ENGINE),
    /** Between centres. */
    ROD_LENGTH("rod length", BuildStep.RODS, Dimension.LENGTH, PlacedAt.CYLINDER),
    /** Of the shank where it is thinnest, as the part's maker draws it. */
    ROD_AREA("rod shank section", BuildStep.RODS, Dimension.AREA, PlacedAt.ENGINE),
    /** At the red line, as its maker gives it or as somebody measured it. */
    ROD_STRETCH("rod stretch at the red line", BuildStep.RODS, Dimension.LENGTH, PlacedAt.ENGINE),
    ROD_BEND("rod bend in 100 mm", BuildStep.RODS, Dimension.LENGTH, PlacedAt.CYLINDER),
    ROD_TWIST("rod twist in 100 mm", BuildStep.RODS, Dimension.LENGTH, PlacedAt.CYLINDER),
    /** Shells out, cap tightened. */
    BIG_END_HOUSING("big-end housing", BuildStep.RODS, Dimension.LENGTH, PlacedAt.CYLINDER, Spot.UPRIGHT, Spot.ACROSS),
    /** As the rod bench gives it, or from its housing. */
    BIG_END_OVALITY("big-end housing ovality", BuildStep.RODS, Dimension.LENGTH, PlacedAt.CYLINDER),
    /** Shells in, cap tightened. */
    BIG_END_BORE("big-end bore", BuildStep.RODS, Dimension.LENGTH, PlacedAt.CYLINDER, Spot.UPRIGHT),
    BIG_END_CLEARANCE("big-end clearance", BuildStep.RODS, Dimension.LENGTH, PlacedAt.CYLINDER),
    ROD_SIDE("rod side clearance", BuildStep.RODS, Dimension.LENGTH, PlacedAt.CYLINDER),
    BOLT_BEFORE(
            "rod bolt length before", BuildStep.RODS, Dimension.LENGTH, PlacedAt.CYLINDER, Spot.BOLT_A, Spot.BOLT_B),
    BOLT_STRETCH("rod bolt stretch", BuildStep.RODS, Dimension.LENGTH, PlacedAt.CYLINDER, Spot.BOLT_A, Spot.BOLT_B),
    BOLT_AFTER("rod bolt length after", BuildStep.RODS, Dimension.LENGTH, PlacedAt.CYLINDER, Spot.BOLT_A, Spot.BOLT_B),
    PIN_IN_BOSS("pin clearance in the piston", BuildStep.PISTONS, Dimension.LENGTH, PlacedAt.CYLINDER),
    PIN_IN_BUSH("pin clearance in the rod", BuildStep.PISTONS, Dimension.LENGTH, PlacedAt.CYLINDER),
    /** At the height its maker names. */
    PISTON("piston diameter", BuildStep.PISTONS, Dimension.LENGTH, PlacedAt.CYLINDER),
    TOP_LAND("top land diameter", BuildStep.PISTONS, Dimension.LENGTH, PlacedAt.CYLINDER),
    TOP_LAND_HEIGHT("top land height", BuildStep.PISTONS, Dimension.LENGTH, PlacedAt.CYLINDER),
    COMPRESSION_HEIGHT("compression height", BuildStep.PISTONS, Dimension.LENGTH, PlacedAt.CYLINDER),
    /** Dishes and pockets above zero, domes below. */
    CROWN_VOLUME("crown volume", BuildStep.PISTONS, Dimension.VOLUME, PlacedAt.CYLINDER),
    RING_GAP_TOP("top ring gap", BuildStep.PISTONS, Dimension.LENGTH, PlacedAt.CYLINDER),
    RING_GAP_SECOND("second ring gap", BuildStep.PISTONS, Dimension.LENGTH, PlacedAt.CYLINDER),
    OIL_RAIL_GAP("oil rail gap", BuildStep.PISTONS, Dimension.LENGTH, PlacedAt.CYLINDER),
    /** Top and second groove. */
    RING_SIDE("ring side clearance", BuildStep.PISTONS, Dimension.LENGTH, PlacedAt.CYLINDER, Spot.TOP, Spot.BOTTOM),
    PISTON_MASS("piston mass", BuildStep.PISTONS, Dimension.MASS, PlacedAt.CYLINDER),
    PIN_MASS("pin mass", BuildStep.PISTONS, Dimension.MASS, PlacedAt.CYLINDER),
    RINGS_MASS("rings and locks mass", BuildStep.PISTONS, Dimension.MASS, PlacedAt.CYLINDER),
    ROD_BIG_MASS("rod big-end mass", BuildStep.RODS, Dimension.MASS, PlacedAt.CYLINDER),
    ROD_SMALL_MASS("rod small-end mass", BuildStep.RODS, Dimension.MASS, PlacedAt.CYLINDER),
    /** Above zero when the crown is below the deck. */
    DECK_CLEARANCE(
            "deck clearance", BuildStep.DECK, Dimension.LENGTH, PlacedAt.CYLINDER, Spot.THRUST, Spot.ANTI_THRUST),
    /** How deep a mark of contact stands below the deck when the piston is at top dead centre, read at strip. */
    CROWN_MARK("depth of the mark at the crown", BuildStep.DECK, Dimension.LENGTH, PlacedAt.CYLINDER),
    HEAD_THICKNESS(
            "head thickness",
            BuildStep.HEAD,
            Dimension.LENGTH,
            PlacedAt.ENGINE,
            Spot.FRONT_EXHAUST,
            Spot.FRONT_INLET,
            Spot.REAR_EXHAUST,
            Spot.REAR_INLET),
    HEAD_FLATNESS(
            "head flatness",
            BuildStep.HEAD,
            Dimension.LENGTH,
            PlacedAt.ENGINE,
            Spot.EXHAUST_SIDE,
            Spot.INLET_SIDE,
            Spot.FRONT_END,
            Spot.REAR_END,
            Spot.DIAGONAL_FRONT_EXHAUST,
            Spot.DIAGONAL_FRONT_INLET,
            Spot.BETWEEN_BORES),
    HEAD_RA(
            "head finish Ra",
            BuildStep.HEAD,
            Dimension.ROUGHNESS,
            PlacedAt.ENGINE,
            Spot.FRONT_END,
            Spot.MIDDLE,
            Spot.REAR_END),
    HEAD_RZ(
            "head finish Rz",
            BuildStep.HEAD,
            Dimension.ROUGHNESS,
            PlacedAt.ENGINE,
            Spot.FRONT_END,
            Spot.MIDDLE,
            Spot.REAR_END),
    CHAMBER_VOLUME("chamber volume", BuildStep.HEAD, Dimension.VOLUME, PlacedAt.CYLINDER),
    /** Where the chamber meets the face. */
    OPENING_AREA("chamber opening area", BuildStep.HEAD, Dimension.AREA, PlacedAt.CYLINDER),
    /** How far the pad stands back from the face; nothing where the pad is the face. */
    PAD_RECESS("squish pad recess", BuildStep.HEAD, Dimension.LENGTH, PlacedAt.CYLINDER),
    GASKET_THICKNESS(
            "gasket thickness",
            BuildStep.GASKET,
            Dimension.LENGTH,
            PlacedAt.ENGINE,
            Spot.RING_FREE,
            Spot.RING_CLAMPED,
            Spot.BODY_FREE,
            Spot.BODY_CLAMPED),
    GASKET_BORE(
            "gasket bore",
            BuildStep.GASKET,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.FREE,
            Spot.TRIAL_CLAMPED,
            Spot.AFTER_RUN),
    /** How far its ring may lie from the middle of the bore. */
    GASKET_OFFSET("gasket off centre", BuildStep.GASKET, Dimension.LENGTH, PlacedAt.CYLINDER),
    /** Below zero where the ring reaches into the bore. */
    FIRE_RING_INSET(
            "fire-ring inset",
            BuildStep.GASKET,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.FRONT,
            Spot.EXHAUST,
            Spot.REAR,
            Spot.INLET),
    SQUISH_WIRE("squish by wire", BuildStep.GASKET, Dimension.LENGTH, PlacedAt.CYLINDER, Spot.THRUST, Spot.ANTI_THRUST),
    VALVE_TO_PISTON_INLET(
            "inlet valve to piston",
            BuildStep.VALVE_GEAR,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.VALVE_A,
            Spot.VALVE_B),
    VALVE_TO_PISTON_EXHAUST(
            "exhaust valve to piston",
            BuildStep.VALVE_GEAR,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.VALVE_A,
            Spot.VALVE_B),
    SPRING_HEIGHT_INLET(
            "inlet spring fitted height",
            BuildStep.VALVE_GEAR,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.VALVE_A,
            Spot.VALVE_B),
    SEAT_FORCE_INLET(
            "inlet spring seat force",
            BuildStep.VALVE_GEAR,
            Dimension.FORCE,
            PlacedAt.CYLINDER,
            Spot.VALVE_A,
            Spot.VALVE_B),
    OPEN_FORCE_INLET(
            "inlet spring open force",
            BuildStep.VALVE_GEAR,
            Dimension.FORCE,
            PlacedAt.CYLINDER,
            Spot.VALVE_A,
            Spot.VALVE_B),
    COIL_BIND_INLET(
            "inlet coil-bind margin",
            BuildStep.VALVE_GEAR,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.VALVE_A,
            Spot.VALVE_B),
    LASH_INLET("inlet lash", BuildStep.VALVE_GEAR, Dimension.LENGTH, PlacedAt.CYLINDER, Spot.VALVE_A, Spot.VALVE_B),
    SPRING_HEIGHT_EXHAUST(
            "exhaust spring fitted height",
            BuildStep.VALVE_GEAR,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.VALVE_A,
            Spot.VALVE_B),
    SEAT_FORCE_EXHAUST(
            "exhaust spring seat force",
            BuildStep.VALVE_GEAR,
            Dimension.FORCE,
            PlacedAt.CYLINDER,
            Spot.VALVE_A,
            Spot.VALVE_B),
    OPEN_FORCE_EXHAUST(
            "exhaust spring open force",
            BuildStep.VALVE_GEAR,
            Dimension.FORCE,
            PlacedAt.CYLINDER,
            Spot.VALVE_A,
            Spot.VALVE_B),
    COIL_BIND_EXHAUST(
            "exhaust coil-bind margin",
            BuildStep.VALVE_GEAR,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.VALVE_A,
            Spot.VALVE_B),
    LASH_EXHAUST("exhaust lash", BuildStep.VALVE_GEAR, Dimension.LENGTH, PlacedAt.CYLINDER, Spot.VALVE_A, Spot.VALVE_B),
    /** Between the valve and the bore. */
    VALVE_ANGLE_INLET("inlet valve angle", BuildStep.TIMING, Dimension.ANGLE, PlacedAt.ENGINE),
    /** Middle of the lobe, in degrees of the crank from top dead centre. */
    CAM_TIMING_INLET("inlet cam timing", BuildStep.TIMING, Dimension.ANGLE, PlacedAt.ENGINE),
    /** Between the valve and the bore. */
    VALVE_ANGLE_EXHAUST("exhaust valve angle", BuildStep.TIMING, Dimension.ANGLE, PlacedAt.ENGINE),
    /** Middle of the lobe, in degrees of the crank from top dead centre. */
    CAM_TIMING_EXHAUST("exhaust cam timing", BuildStep.TIMING, Dimension.ANGLE, PlacedAt.ENGINE),
    SPROCKET_RADIUS("cam sprocket pitch radius", BuildStep.TIMING, Dimension.LENGTH, PlacedAt.ENGINE),
    BORE_TAPER("bore taper", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.CYLINDER),
    BORE_OVALITY("bore ovality", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.CYLINDER),
    PISTON_TO_WALL("piston to wall", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.CYLINDER),
    JOURNAL_OVALITY("journal ovality", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.MAIN),
    JOURNAL_TAPER("journal taper", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.MAIN),
    PIN_OVALITY("crank pin ovality", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.CYLINDER),
    PIN_TAPER("crank pin taper", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.CYLINDER),
    BOLT_GROWTH(
            "rod bolt left longer",
            BuildStep.WORKED_OUT,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.BOLT_A,
            Spot.BOLT_B),
    /** The mean of both sides of the thrust axis. */
    DECK_MEAN("deck clearance, mean", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.CYLINDER),
    SWEPT_VOLUME("swept volume", BuildStep.WORKED_OUT, Dimension.VOLUME, PlacedAt.CYLINDER),
    /** What is left above the piston at top dead centre. */
    CLEARANCE_VOLUME("clearance volume", BuildStep.WORKED_OUT, Dimension.VOLUME, PlacedAt.CYLINDER),
    /** Difference of the two sides of the deck clearance. */
    PISTON_ROCK("piston rock", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.CYLINDER),
    DECK_SPREAD("deck clearance spread", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.ENGINE),
    /** The squish of the trade: a figure at rest. */
    CROWN_TO_HEAD(
            "crown to head", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.CYLINDER, Spot.THRUST, Spot.ANTI_THRUST),
    /** Above zero where the ring reaches past the edge of the bore. */
    RING_OVER_BORE(
            "fire ring into the bore",
            BuildStep.WORKED_OUT,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.FREE,
            Spot.TRIAL_CLAMPED,
            Spot.AFTER_RUN),
    RING_OVER_CROWN(
            "fire ring over the crown",
            BuildStep.WORKED_OUT,
            Dimension.LENGTH,
            PlacedAt.CYLINDER,
            Spot.FREE,
            Spot.TRIAL_CLAMPED,
            Spot.AFTER_RUN),
    COMPRESSION_RATIO("compression ratio", BuildStep.WORKED_OUT, Dimension.RATIO, PlacedAt.CYLINDER),
    RATIO_SPREAD("compression ratio spread", BuildStep.WORKED_OUT, Dimension.RATIO, PlacedAt.ENGINE),
    CHAMBER_SPREAD("chamber volume spread", BuildStep.WORKED_OUT, Dimension.VOLUME, PlacedAt.ENGINE),
    MASS_SPREAD("piston mass spread", BuildStep.WORKED_OUT, Dimension.MASS, PlacedAt.ENGINE),
    /** What has been or may be taken off, nothing unless its maker allows it. */
    CROWN_CUT("cut off the crown", BuildStep.WORKED_OUT, Dimension.LENGTH, PlacedAt.CYLINDER);

    private final String code;
    private final BuildStep step;
    private final Dimension dimension;
    private final PlacedAt placedAt;
    private final List<Spot> spots;

    MeasureKind(String code, BuildStep step, Dimension dimension, PlacedAt placedAt, Spot... spots) {
        this.code = code;
        this.step = step;
        this.dimension = dimension;
        this.placedAt = placedAt;
        this.spots = List.of(spots);
    }

    @Override
    public String code() {
        return code;
    }

    /** When it is measured while the engine goes together. */
    public BuildStep step() {
        return step;
    }

    public Dimension dimension() {
        return dimension;
    }

    public PlacedAt placedAt() {
        return placedAt;
    }

    /** Where at each place, in measuring order; empty when there is one figure for a place. */
    public List<Spot> spots() {
        return spots;
    }

    /** Whether nobody measures it: it is worked out, and never typed. */
    public boolean workedOut() {
        return step == BuildStep.WORKED_OUT;
    }

    /**
     * To how many decimals of its shown unit it is usually read: a micrometre by micrometer, bore gauge and stretch gauge,
     * a hundredth of a millimetre by dial, bridge and feeler, a tenth of a cubic centimetre by burette; common practice,
     * no source. What is worked out is said to what it is made of allows: a mean of two dial readings to half of one.
     */
    public int decimals() {
        return switch (dimension) {
            case LENGTH -> fine() ? 3 : 2;
            case VOLUME -> this == CLEARANCE_VOLUME || this == SWEPT_VOLUME ? 2 : 1;
            case RATIO -> 2;
            case ROUGHNESS, MASS, ANGLE, TORQUE -> 1;
            case AREA, FORCE, COUNT -> 0;
        };
    }

    private boolean fine() {
        return switch (this) {
            case BORE,
                    MAIN_HOUSING,
                    MAIN_BORE,
                    MAIN_JOURNAL,
                    MAIN_CLEARANCE,
                    PIN_JOURNAL,
                    CRANK_RUN_OUT,
                    BIG_END_HOUSING,
                    BIG_END_OVALITY,
                    BIG_END_BORE,
                    BIG_END_CLEARANCE,
                    BOLT_BEFORE,
                    BOLT_STRETCH,
                    BOLT_AFTER,
                    PIN_IN_BOSS,
                    PIN_IN_BUSH,
                    PISTON,
                    TOP_LAND,
                    BORE_TAPER,
                    BORE_OVALITY,
                    PISTON_TO_WALL,
                    JOURNAL_OVALITY,
                    JOURNAL_TAPER,
                    PIN_OVALITY,
                    PIN_TAPER,
                    BOLT_GROWTH,
                    DECK_MEAN -> true;
            default -> false;
        };
    }

    /** Whether figures of both signs are usual, so that the side has to be told. */
    public boolean sided() {
        return this == DECK_CLEARANCE;
    }
}
