package witnessmark.logbook.run;

import java.util.Map;
import witnessmark.domain.StartKnown;
import witnessmark.logbook.port.Today;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * Asks about a time out that the clock has not reached. It does not stop: the computer's clock may be the one that is
 * wrong. Where today is the day of a story, the clock says nothing.
 */
final class StillToCome {
    private StillToCome() {}

    static void ask(Today today, Which which, Map<RunField, FieldReading> out) {
        Moment start = which.start();
        FieldReading outAt = out.get(RunField.OUT_AT);
        if (start == null || which.startKnown() == StartKnown.ESTIMATE || outAt == null || outAt.problem() != null) {
            return;
        }
        Moment now = Moment.of(today.now(), start.zone());
        if (now.day().equals(today.day()) && start.isAfter(now) && start.day().equals(now.day())) {
            Problem asked = Problem.of(ProblemKind.RUN_STILL_TO_COME, start, now);
            out.put(RunField.OUT_AT, new FieldReading(outAt.note(), asked, null));
        }
    }
}
