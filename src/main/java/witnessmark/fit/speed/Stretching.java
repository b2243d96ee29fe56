package witnessmark.fit.speed;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Metal;
import witnessmark.fit.Stuff;
import witnessmark.fit.result.Basis;
import witnessmark.fit.result.Closing;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.SpeedAnswer.Taken;
import witnessmark.mechanics.FirstOrder;
import witnessmark.mechanics.RodStretch;
import witnessmark.mechanics.SliderCrank;
import witnessmark.quantity.Dimension;

/**
 * How far the rods stretch at the reference speed: its maker's figure or a measured one first; then by its section over
 * the whole distance between centres (eyes, pin and crank left out, so a lower bound); else what is usual.
 */
final class Stretching {
    /** Without section or stretch, at the red line: common practice, no source. */
    private static final double USUAL = 0.10;

    private static final double USUAL_HALF_WIDTH = 0.05;
    /** How well a stretch that is told, a drawn section and a weighed piston are known: shares either way. */
    private static final double TOLD_HALF_WIDTH = 0.15;

    private static final double AREA_HALF_WIDTH = 0.05;
    private static final double MASS_HALF_WIDTH = 0.02;

    private final Rest rest;
    private final SliderCrank crank;
    private final double omega;
    private final Stuff rod;

    Stretching(Rest rest, SliderCrank crank, int reference, Metal rods) {
        this.rest = rest;
        this.crank = crank;
        this.omega = SliderCrank.omega(reference);
        this.rod = Stuff.of(rods);
    }

    Closing of(int cylinder) {
        Given told = rest.sheet().given(new MeasurePlace(MeasureKind.ROD_STRETCH, null, null));
        if (told != null) {
            double amount = Rest.millimetres(told.value());
            return new Closing(
                    Closing.Kind.STRETCH, amount, FirstOrder.withinHalfWidth(TOLD_HALF_WIDTH * amount), told.basis());
        }
        Given area = rest.sheet().given(new MeasurePlace(MeasureKind.ROD_AREA, null, null));
        Double pinEnd = area == null ? null : rest.pinEnd(cylinder);
        return area == null || pinEnd == null ? usual() : worked(area, pinEnd);
    }

    private Closing usual() {
        rest.taken(Taken.STRETCH);
        return new Closing(Closing.Kind.STRETCH, USUAL, FirstOrder.withinHalfWidth(USUAL_HALF_WIDTH), Basis.ASSUMED);
    }

    private Closing worked(Given area, double pinEnd) {
        double section = Dimension.AREA.number(area.value()) * 1e-6;
        FirstOrder carried = FirstOrder.of(
                x -> 1000 * new RodStretch(crank, x[0], x[1], rod.density(), crank.rod()).uniform(x[2], omega),
                new double[] {pinEnd, rod.modulus(), section},
                new double[] {
                    FirstOrder.withinHalfWidth(MASS_HALF_WIDTH * pinEnd),
                    FirstOrder.withinHalfWidth(Stuff.MODULUS_HALF_WIDTH * rod.modulus()),
                    FirstOrder.withinHalfWidth(AREA_HALF_WIDTH * section)
                });
        return new Closing(Closing.Kind.STRETCH, carried.value(), carried.standard(), area.basis());
    }

    /**
     * Pull at the big end at a speed, in newtons: what the bolts of a rod hold together at overlap top dead centre. By the
     * section where it is known, else by the masses of both ends.
     *
     * @return null where masses are missing
     */
    @Nullable
    Double pull(int cylinder, double rpm) {
        Double pinEnd = rest.pinEnd(cylinder);
        if (pinEnd == null) {
            return null;
        }
        double speed = SliderCrank.omega(rpm);
        Given area = rest.sheet().given(new MeasurePlace(MeasureKind.ROD_AREA, null, null));
        if (area != null) {
            return new RodStretch(crank, pinEnd, rod.modulus(), rod.density(), crank.rod())
                    .forceAtBigEnd(Dimension.AREA.number(area.value()) * 1e-6, speed);
        }
        Double eye = rest.kilograms(MeasureKind.ROD_SMALL_MASS, cylinder);
        return eye == null ? null : Double.valueOf((pinEnd + eye) * crank.accelerationAtTop(speed));
    }
}
