package witnessmark.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Term;

/** How the pistons stand at top dead centre, and how far from the head. */
final class DeckChecks {
    private final Sheet sheet;

    DeckChecks(Sheet sheet) {
        this.sheet = sheet;
    }

    List<Answer> all() {
        List<Check> means =
                sheet.numbers(MeasureKind.DECK_MEAN).stream().map(this::mean).toList();
        return List.of(
                Answers.of(MeasureKind.DECK_MEAN, means, new DeckPattern(sheet).of(means)),
                Answers.of(
                        MeasureKind.PISTON_ROCK,
                        sheet.numbers(MeasureKind.PISTON_ROCK).stream()
                                .map(this::rock)
                                .toList(),
                        null),
                Answers.of(MeasureKind.DECK_SPREAD, List.of(Spread.of(sheet, MeasureKind.DECK_SPREAD, means)), null),
                Answers.of(MeasureKind.CROWN_TO_HEAD, crownToHead(), null));
    }

    /** The mean of both sides: what ratio and deck average use. */
    Check mean(int cylinder) {
        return new Sum(sheet)
                .add(deck(cylinder, Spot.THRUST), Term.Part.PLUS_HALF)
                .add(deck(cylinder, Spot.ANTI_THRUST), Term.Part.PLUS_HALF)
                .check(new MeasurePlace(MeasureKind.DECK_MEAN, cylinder, null));
    }

    /** The difference of both sides, whichever is higher. */
    private Check rock(int cylinder) {
        MeasurePlace thrust = deck(cylinder, Spot.THRUST);
        MeasurePlace other = deck(cylinder, Spot.ANTI_THRUST);
        Given one = sheet.measured(thrust);
        Given two = sheet.measured(other);
        boolean thrustLower = one == null || two == null || one.value() >= two.value();
        return new Sum(sheet)
                .add(thrustLower ? thrust : other, thrustLower ? one : two, Term.Part.PLUS)
                .add(thrustLower ? other : thrust, thrustLower ? two : one, Term.Part.MINUS)
                .check(new MeasurePlace(MeasureKind.PISTON_ROCK, cylinder, null));
    }

    /** Deck clearance and gasket on each side, and what a pad stands back: the squish of the trade, at rest. */
    private List<Check> crownToHead() {
        List<Check> checks = new ArrayList<>();
        for (int cylinder : sheet.numbers(MeasureKind.CROWN_TO_HEAD)) {
            for (Spot side : MeasureKind.CROWN_TO_HEAD.spots()) {
                Sum sum = new Sum(sheet)
                        .add(deck(cylinder, side), Term.Part.PLUS)
                        .add(GASKET, gasket(sheet), Term.Part.PLUS);
                MeasurePlace recess = new MeasurePlace(MeasureKind.PAD_RECESS, cylinder, null);
                Given pad = sheet.given(recess);
                if (pad != null) {
                    sum.add(recess, pad, Term.Part.PLUS);
                }
                checks.add(sum.check(new MeasurePlace(MeasureKind.CROWN_TO_HEAD, cylinder, side)));
            }
        }
        return checks;
    }

    static final MeasurePlace GASKET = new MeasurePlace(MeasureKind.GASKET_THICKNESS, null, Spot.RING_CLAMPED);

    /** Clamped thickness at the ring; at the body where the ring's is not known. */
    static @Nullable Given gasket(Sheet sheet) {
        Given ring = sheet.given(GASKET);
        return ring == null
                ? sheet.given(new MeasurePlace(MeasureKind.GASKET_THICKNESS, null, Spot.BODY_CLAMPED))
                : ring;
    }

    static MeasurePlace deck(int cylinder, Spot side) {
        return new MeasurePlace(MeasureKind.DECK_CLEARANCE, cylinder, side);
    }
}
