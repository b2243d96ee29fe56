package witnessmark.fit.speed;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Metal;
import witnessmark.domain.SpeedFigures;
import witnessmark.fit.Stuff;
import witnessmark.fit.result.Basis;
import witnessmark.fit.result.Closing;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.SpeedAnswer.Lack;
import witnessmark.mechanics.Beam;
import witnessmark.mechanics.FirstOrder;
import witnessmark.mechanics.SliderCrank;

/**
 * How far a throw is pulled towards the head between its main bearings: a plain bar of the journal's diameter, which the
 * webs let give several times as much. An estimate with a wide band; what the throw beside it pulls the other way is left
 * out.
 */
final class Bending {
    /** So many times a plain bar, half of it either way; common practice, no source. */
    private static final double WEBS = 4;

    private static final double WEBS_HALF_WIDTH = 2;

    private final Rest rest;
    private final SliderCrank crank;
    private final double omega;
    private final Stuff metal;

    Bending(Rest rest, SliderCrank crank, int reference, Metal of) {
        this.rest = rest;
        this.crank = crank;
        this.omega = SliderCrank.omega(reference);
        this.metal = Stuff.of(of);
    }

    Optional<Closing> of(int cylinder) {
        Double spacing = spacing();
        Given journal = journal();
        Double pinEnd = rest.pinEnd(cylinder);
        if (spacing == null || journal == null || pinEnd == null) {
            return Optional.empty();
        }
        double eye = Optional.ofNullable(rest.kilograms(MeasureKind.ROD_SMALL_MASS, cylinder))
                .orElse(0.0);
        double force = (pinEnd + eye) * crank.accelerationAtTop(omega);
        double at = pinAt(cylinder, rest.throwsInBay()) * spacing;
        double plain = 1000
                * new Beam(spacing, Rest.millimetres(journal.value()) / 1000, metal.modulus()).moves(force, at, at);
        return Optional.of(new Closing(
                Closing.Kind.BENDING,
                WEBS * plain,
                FirstOrder.withinHalfWidth(WEBS_HALF_WIDTH * plain),
                Basis.ASSUMED));
    }

    /** In metres. */
    private @Nullable Double spacing() {
        SpeedFigures figures = rest.figures();
        if (figures == null || figures.mainSpacing() == null) {
            rest.lacks(Lack.MAIN_SPACING);
            return null;
        }
        return Rest.millimetres(figures.mainSpacing().nanometres()) / 1000;
    }

    private @Nullable Given journal() {
        Given journal = rest.sheet().places(MeasureKind.MAIN_JOURNAL).stream()
                .map(rest.sheet()::given)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
        if (journal == null) {
            rest.lacks(Lack.MAIN_JOURNAL);
        }
        return journal;
    }

    /** Where a throw's pin lies between its main bearings, as a share of the way. */
    static double pinAt(int cylinder, int throwsInBay) {
        return ((cylinder - 1) % throwsInBay + 0.5) / throwsInBay;
    }
}
