package witnessmark.fit;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;

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
        return answers.stream().filter(Checks::asked).toList();
    }

    private static Answer masses(Sheet sheet) {
        MeasurePlace place = new MeasurePlace(MeasureKind.MASS_SPREAD, null, null);
        return Answers.of(
                MeasureKind.MASS_SPREAD,
                List.of(Spread.measured(sheet, place, sheet.places(MeasureKind.PISTON_MASS))),
                null);
    }

    /** Whether anybody measured for it or set a limit: what nobody asks for is not called missing. */
    private static boolean asked(Answer answer) {
        return answer.checks().stream().anyMatch(check -> check.value() != null || limited(check));
    }

    /** A limit somebody set, not only what the trade holds to. */
    private static boolean limited(Check check) {
        return check.bounds().least() != null && check.bounds().least().rank() != null
                || check.bounds().most() != null && check.bounds().most().rank() != null;
    }
}
