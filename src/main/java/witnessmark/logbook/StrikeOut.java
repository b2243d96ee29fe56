package witnessmark.logbook;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Standing;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Takes a wrong entry out, with a reason; it stays in the logbook and can be restored. */
public final class StrikeOut {
    private final Desk desk;

    public StrikeOut(Desk desk) {
        this.desk = desk;
    }

    /**
     * @param entry the entry as last seen
     * @param because the reason; an empty one is refused
     */
    public <F extends Fact> Outcome<Written> strikeOut(Entry<F> entry, String because, String why) {
        if (because.isBlank()) {
            return Outcome.didNot(Problem.of(ProblemKind.NEEDED, "reason"));
        }
        return desk.write(
                why,
                List.of(new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, because.strip(), entry.rev() + 1)));
    }

    /** Puts a struck-out entry back in force; the guards look at it again. */
    public <F extends Fact> Outcome<Written> restore(Entry<F> entry, String why) {
        return desk.write(
                why, List.of(new Entry<>(entry.id(), entry.fact(), Standing.IN_FORCE, null, entry.rev() + 1)));
    }
}
