package witnessmark.fit.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.SpeedFigures;
import witnessmark.domain.Spot;
import witnessmark.fit.Sheet;
import witnessmark.fit.result.AtSpeed;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Closing;
import witnessmark.fit.result.Conditions;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.SpeedAnswer;
import witnessmark.fit.result.SpeedAnswer.Lack;
import witnessmark.fit.result.SpeedAnswer.Taken;
import witnessmark.mechanics.SliderCrank;

/**
 * What an engine's clearances become at speed, for each side of each cylinder. An estimate, held against touching with the
 * team's margin, never against a rule that was made for an engine at rest.
 */
public final class SpeedChecks {
    private final Rest rest;
    private final @Nullable Integer reference;

    private SpeedChecks(Rest rest, @Nullable Integer reference) {
        this.rest = rest;
        this.reference = reference;
    }

    /**
     * @param figures what the engine is made of and how hot it gets, or null when nobody wrote it down
     * @param redLine revolutions a minute, or null
     * @param seen the highest it is known to have turned, or null
     * @param measuredAt degrees Celsius the sheet was measured at
     */
    public static SpeedAnswer of(
            Sheet sheet,
            @Nullable SpeedFigures figures,
            @Nullable Integer redLine,
            @Nullable Integer seen,
            double measuredAt) {
        Rest rest = new Rest(sheet, figures);
        SpeedChecks checks = new SpeedChecks(rest, redLine == null ? seen : redLine);
        Conditions hot = Warm.hot(figures, measuredAt);
        List<AtSpeed> whenHot = checks.sides(hot);
        List<AtSpeed> whenCold = checks.sides(Warm.cold(figures, measuredAt));
        if (hot.assumed()) {
            rest.taken(Taken.TEMPERATURES);
        }
        return new SpeedAnswer(
                whenHot,
                whenCold,
                redLine,
                seen,
                rest.lacks(),
                rest.taken(),
                hot,
                figures == null || figures.margin() == null
                        ? null
                        : Rest.millimetres(figures.margin().nanometres()));
    }

    private List<AtSpeed> sides(Conditions conditions) {
        SliderCrank crank = rest.crank();
        if (reference == null) {
            rest.lacks(Lack.RED_LINE);
        }
        if (crank == null || reference == null) {
            return List.of();
        }
        Stretching stretching =
                new Stretching(rest, crank, reference, conditions.metals().rods());
        TakingUp takingUp = new TakingUp(rest);
        Growing growing = new Growing(rest, crank, conditions);
        Bending bending =
                new Bending(rest, crank, reference, conditions.metals().crank());
        List<AtSpeed> sides = new ArrayList<>();
        for (Check squish : rest.checks(MeasureKind.CROWN_TO_HEAD)) {
            Integer cylinder = squish.place().number();
            MeasurePlace place = new MeasurePlace(
                    MeasureKind.DECK_CLEARANCE, cylinder, squish.place().spot());
            Given deck = rest.sheet().given(place);
            if (cylinder == null || deck == null || squish.value() == null) {
                rest.lacks(deck == null ? Lack.DECK_CLEARANCE : Lack.GASKET);
                continue;
            }
            List<Closing> closings = new ArrayList<>(List.of(stretching.of(cylinder), takingUp.of(cylinder, place)));
            growing.of(cylinder).ifPresent(closings::add);
            bending.of(cylinder).ifPresent(closings::add);
            sides.add(new AtSpeed(
                    squish.place(),
                    reference,
                    Rest.millimetres(deck.value()),
                    Rest.standard(MeasureKind.DECK_CLEARANCE),
                    Rest.millimetres(squish.value() - deck.value()),
                    Rest.standard(MeasureKind.GASKET_THICKNESS),
                    overhang(cylinder),
                    closings));
        }
        return sides;
    }

    /**
     * The most any state of the clamped ring reaches over the crown, in millimetres; null when it is not known. A land that
     * grows takes as much of its play as it gains, so that the sum stays.
     */
    private @Nullable Double overhang(int cylinder) {
        return rest.checks(MeasureKind.RING_OVER_CROWN).stream()
                .filter(check -> Objects.equals(check.place().number(), cylinder)
                        && check.place().spot() != Spot.FREE
                        && check.value() != null)
                .map(check -> Rest.millimetres(Objects.requireNonNull(check.value())))
                .max(Double::compare)
                .orElse(null);
    }
}
