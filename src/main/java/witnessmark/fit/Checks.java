package witnessmark.fit;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.fit.result.Answer;

/** Everything that is worked out of a build sheet at rest. */
public final class Checks {
    private Checks() {}

    /** An answer for each kind of figure there is a limit for or something measured of, in the order a builder asks. */
    public static List<Answer> of(Sheet sheet) {
        List<Answer> answers = new ArrayList<>();
        answers.addAll(new DeckChecks(sheet).all());
        answers.addAll(new RingChecks(sheet).all());
        answers.addAll(new RatioChecks(sheet).all());
        answers.addAll(new BoreChecks(sheet).all());
        answers.addAll(new BearingChecks(sheet).all());
        answers.add(masses(sheet));
        answers.addAll(new MeasuredChecks(sheet).all());
        return answers.stream().filter(Checks::told).toList();
    }

    private static Answer masses(Sheet sheet) {
        MeasurePlace place = new MeasurePlace(MeasureKind.MASS_SPREAD, null, null);
        return Answers.of(
                MeasureKind.MASS_SPREAD,
                List.of(Spread.measured(sheet, place, sheet.places(MeasureKind.PISTON_MASS))),
                null);
    }

    /**
     * Whether it is told: asked for, or measured as it is and held against what the trade holds to, so that what is left
     * empty on the sheet is told too.
     */
    private static boolean told(Answer answer) {
        return answer.asked()
                || !answer.kind().workedOut()
                        && answer.checks().stream()
                                .anyMatch(check -> check.bounds().any());
    }
}
