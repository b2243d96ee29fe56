package witnessmark.fit.speed;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Metal;
import witnessmark.domain.SpeedFigures;
import witnessmark.fit.result.Conditions;
import witnessmark.fit.result.Conditions.Metals;
import witnessmark.quantity.Temperature;

/** How warm an engine is taken to be, as written down or as usual. */
final class Warm {
    /** A mean temperature of a part is known to so many degrees either way; common practice, no source. */
    static final double HALF_WIDTH = 15;

    private Warm() {}

    /**
     * An engine warmed up. What nobody wrote down: block 90, crank 95, rods 110, pistons 190 °C, an iron block, steel
     * crank and rods, aluminium pistons; common practice, no source.
     */
    static Conditions hot(@Nullable SpeedFigures figures, double measuredAt) {
        return new Conditions(
                or(figures == null ? null : figures.blockHot(), 90),
                or(figures == null ? null : figures.crankHot(), 95),
                or(figures == null ? null : figures.rodsHot(), 110),
                or(figures == null ? null : figures.pistonsHot(), 190),
                measuredAt,
                metals(figures),
                figures == null
                        || figures.blockHot() == null
                        || figures.crankHot() == null
                        || figures.rodsHot() == null
                        || figures.pistonsHot() == null
                        || lacksMetal(figures));
    }

    /** An engine revved before it is warm: block and crank 30, rods 40, pistons 110 °C where nobody wrote it down. */
    static Conditions cold(@Nullable SpeedFigures figures, double measuredAt) {
        double block = or(figures == null ? null : figures.blockCold(), 30);
        return new Conditions(
                block,
                block,
                block + 10,
                or(figures == null ? null : figures.pistonsCold(), 110),
                measuredAt,
                metals(figures),
                figures == null || figures.blockCold() == null || figures.pistonsCold() == null || lacksMetal(figures));
    }

    private static boolean lacksMetal(SpeedFigures figures) {
        return figures.block() == null
                || figures.crank() == null
                || figures.rods() == null
                || figures.pistons() == null;
    }

    private static Metals metals(@Nullable SpeedFigures figures) {
        return new Metals(
                or(figures == null ? null : figures.block(), Metal.CAST_IRON),
                or(figures == null ? null : figures.crank(), Metal.STEEL),
                or(figures == null ? null : figures.rods(), Metal.STEEL),
                or(figures == null ? null : figures.pistons(), Metal.ALUMINIUM));
    }

    private static Metal or(@Nullable Metal written, Metal usual) {
        return written == null ? usual : written;
    }

    private static double or(@Nullable Temperature written, double usual) {
        return written == null ? usual : written.inCelsius().doubleValue();
    }
}
