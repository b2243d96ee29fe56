package witnessmark.fit.speed;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import witnessmark.domain.HowStood;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.fit.result.Basis;
import witnessmark.fit.result.Closing;
import witnessmark.fit.result.SpeedAnswer.Lack;
import witnessmark.fit.result.SpeedAnswer.Taken;
import witnessmark.mechanics.FirstOrder;

/**
 * The clearances that the pull of the piston takes up, as far as they are not in the deck clearance already: all of them
 * where it was read with the piston pressed down, none where it was drawn up, and anything between where nobody said.
 */
final class TakingUp {
    private final Rest rest;

    TakingUp(Rest rest) {
        this.rest = rest;
    }

    Closing of(int cylinder, MeasurePlace deck) {
        double all = bigEnd(cylinder) + mains(cylinder) + pins(cylinder);
        HowStood stood = rest.sheet().stood(deck);
        boolean known = stood == HowStood.PUSHED_DOWN || stood == HowStood.PULLED_UP;
        double share = known ? stood == HowStood.PUSHED_DOWN ? 1 : 0 : 0.5;
        if (!known) {
            rest.taken(Taken.HOW_IT_STOOD);
        }
        double read = share
                * Math.hypot(Rest.standard(MeasureKind.BIG_END_CLEARANCE), Rest.standard(MeasureKind.MAIN_CLEARANCE));
        return new Closing(
                Closing.Kind.TAKE_UP,
                share * all,
                known ? read : Math.hypot(read, FirstOrder.withinHalfWidth(all / 2)),
                known ? Basis.WORKED_OUT : Basis.ASSUMED);
    }

    private double bigEnd(int cylinder) {
        Optional<Double> clearance = rest.worked(MeasureKind.BIG_END_CLEARANCE, cylinder);
        if (clearance.isEmpty()) {
            rest.lacks(Lack.BIG_END_CLEARANCE);
        }
        return clearance.orElse(0.0);
    }

    /** The mean of the main bearings before and behind a throw. */
    private double mains(int cylinder) {
        int before = (cylinder - 1) / rest.throwsInBay() + 1;
        double[] clearances = Stream.of(before, before + 1)
                .flatMap(main -> rest.worked(MeasureKind.MAIN_CLEARANCE, main).stream())
                .mapToDouble(Double::doubleValue)
                .toArray();
        if (clearances.length == 0) {
            rest.lacks(Lack.MAIN_CLEARANCE);
        }
        return DoubleStream.of(clearances).average().orElse(0);
    }

    private double pins(int cylinder) {
        double[] clearances = Stream.of(MeasureKind.PIN_IN_BOSS, MeasureKind.PIN_IN_BUSH)
                .map(kind -> rest.sheet().given(new MeasurePlace(kind, cylinder, null)))
                .filter(Objects::nonNull)
                .mapToDouble(given -> Rest.millimetres(given.value()))
                .toArray();
        if (clearances.length < 2) {
            rest.lacks(Lack.PIN_CLEARANCE);
        }
        return DoubleStream.of(clearances).sum();
    }
}
