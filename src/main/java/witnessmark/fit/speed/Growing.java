package witnessmark.fit.speed;

import java.util.Optional;
import java.util.stream.Stream;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.fit.Stuff;
import witnessmark.fit.result.Basis;
import witnessmark.fit.result.Closing;
import witnessmark.fit.result.Conditions;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.SpeedAnswer.Lack;
import witnessmark.mechanics.FirstOrder;
import witnessmark.mechanics.Growth;
import witnessmark.mechanics.SliderCrank;

/** How crank, rod and piston grow against the block. With an iron block that closes, with an aluminium one it opens. */
final class Growing {
    private static final int PARTS = 4;

    private final Rest rest;
    private final SliderCrank crank;
    private final Conditions warm;

    Growing(Rest rest, SliderCrank crank, Conditions warm) {
        this.rest = rest;
        this.crank = crank;
        this.warm = warm;
    }

    Optional<Closing> of(int cylinder) {
        Given height = rest.sheet().given(new MeasurePlace(MeasureKind.COMPRESSION_HEIGHT, cylinder, null));
        if (height == null) {
            rest.lacks(Lack.COMPRESSION_HEIGHT);
            return Optional.empty();
        }
        double[] lengths = lengths(cylinder, Rest.millimetres(height.value()));
        double[] at = new double[2 * PARTS];
        double[] standards = new double[2 * PARTS];
        double[] alphas = alphas();
        double[] warmer = {warm.crank(), warm.rods(), warm.pistons(), warm.block()};
        for (int i = 0; i < PARTS; i++) {
            at[i] = alphas[i];
            at[PARTS + i] = warmer[i] - warm.measuredAt();
            standards[i] = FirstOrder.withinHalfWidth(Stuff.ALPHA_HALF_WIDTH * alphas[i]);
            standards[PARTS + i] = FirstOrder.withinHalfWidth(Warm.HALF_WIDTH);
        }
        FirstOrder carried = FirstOrder.of(
                x -> Growth.closes(
                        new Growth(x[0], lengths[0], x[PARTS]),
                        new Growth(x[1], lengths[1], x[PARTS + 1]),
                        new Growth(x[2], lengths[2], x[PARTS + 2]),
                        new Growth(x[3], lengths[3], x[PARTS + 3])),
                at,
                standards);
        return Optional.of(new Closing(
                Closing.Kind.GROWTH,
                carried.value(),
                carried.standard(),
                warm.assumed() ? Basis.ASSUMED : Basis.WORKED_OUT));
    }

    /** Throw, rod, piston from pin to crown, and the block that holds them all with what is left below its deck. */
    private double[] lengths(int cylinder, double piston) {
        double radius = crank.radius() * 1000;
        double rod = crank.rod() * 1000;
        double deck = rest.worked(MeasureKind.DECK_MEAN, cylinder).orElse(0.0);
        return new double[] {radius, rod, piston, radius + rod + piston + deck};
    }

    private double[] alphas() {
        Conditions.Metals metals = warm.metals();
        return Stream.of(metals.crank(), metals.rods(), metals.pistons(), metals.block())
                .mapToDouble(metal -> Stuff.of(metal).alpha())
                .toArray();
    }
}
