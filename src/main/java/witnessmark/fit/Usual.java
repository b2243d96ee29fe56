package witnessmark.fit;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.GasketClass;
import witnessmark.domain.MeasureKind;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Bounds;

/**
 * What the trade holds to where nobody set a limit, and how well it measures. All of it common practice, no source,
 * unless a line says more. None of it is a limit of anybody's: an entered one takes its place.
 */
public final class Usual {
    private static final long MICROMETRE = 1_000;

    private Usual() {}

    /**
     * The half-width within which a figure measured in good hands lies, in whole parts of its dimension: outside
     * micrometer 3 µm, bore gauge 5 µm, dial and bridge 10 µm, feeler 20 µm, straightedge 30 µm, a chamber 0.25 cc.
     * Null where no such figure is usual.
     */
    public static @Nullable Long halfWidth(MeasureKind kind) {
        return switch (kind) {
            case PISTON, TOP_LAND, MAIN_JOURNAL, PIN_JOURNAL, BOLT_BEFORE, BOLT_STRETCH, BOLT_AFTER -> 3 * MICROMETRE;
            case BORE, MAIN_BORE, MAIN_HOUSING, BIG_END_BORE, BIG_END_HOUSING, BIG_END_OVALITY -> 5 * MICROMETRE;
            case MAIN_CLEARANCE, BIG_END_CLEARANCE -> 6 * MICROMETRE;
            case DECK_CLEARANCE,
                    BLOCK_HEIGHT,
                    HEAD_THICKNESS,
                    GASKET_THICKNESS,
                    COMPRESSION_HEIGHT,
                    TOP_LAND_HEIGHT,
                    PAD_RECESS,
                    CRANK_END_FLOAT,
                    CRANK_RUN_OUT -> 10 * MICROMETRE;
            case RING_GAP_TOP,
                    RING_GAP_SECOND,
                    OIL_RAIL_GAP,
                    RING_SIDE,
                    ROD_SIDE,
                    GASKET_BORE,
                    LASH_INLET,
                    LASH_EXHAUST -> 20 * MICROMETRE;
            case HEAD_FLATNESS, DECK_FLATNESS -> 30 * MICROMETRE;
            case CHAMBER_VOLUME -> 250L;
            case CROWN_VOLUME -> 200L;
            default -> null;
        };
    }

    /**
     * Bounds for a kind nobody limited: a fire ring does not reach past an edge; a face is no rougher than its gasket
     * takes.
     */
    static Bounds bounds(MeasureKind kind, @Nullable GasketClass gasket, Bounds aims) {
        return switch (kind) {
            case RING_OVER_BORE, RING_OVER_CROWN -> most(0, aims);
            case FIRE_RING_INSET -> new Bounds(new Bound(0, null, ""), null, aims.aimLeast(), aims.aimMost());
            case HEAD_RA, DECK_RA -> gasket == null ? aims : ra(gasket, aims);
            case HEAD_RZ, DECK_RZ -> gasket == null ? aims : rz(gasket, aims);
            default -> aims;
        };
    }

    /** Ra a gasket's class takes: a soft face creeps on too smooth a one, layers of steel leak on too rough a one. */
    private static Bounds ra(GasketClass gasket, Bounds aims) {
        return switch (gasket) {
            case COMPOSITE -> between(750, 2_500, aims);
            case COPPER, COPPER_WITH_WIRE -> between(800, 1_600, aims);
            case MULTI_LAYER_STEEL -> most(1_270, aims);
            case GAS_RING -> most(800, aims);
        };
    }

    private static Bounds rz(GasketClass gasket, Bounds aims) {
        return switch (gasket) {
            case COMPOSITE -> most(15_000, aims);
            case COPPER, COPPER_WITH_WIRE -> most(10_000, aims);
            case MULTI_LAYER_STEEL -> most(8_000, aims);
            case GAS_RING -> most(4_000, aims);
        };
    }

    private static Bounds most(long value, Bounds aims) {
        return new Bounds(null, new Bound(value, null, ""), aims.aimLeast(), aims.aimMost());
    }

    private static Bounds between(long least, long most, Bounds aims) {
        return new Bounds(new Bound(least, null, ""), new Bound(most, null, ""), aims.aimLeast(), aims.aimMost());
    }
}
