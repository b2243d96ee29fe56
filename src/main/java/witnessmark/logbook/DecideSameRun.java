package witnessmark.logbook;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;

/** Settles whether an entry is the same run as another: until then it counts nowhere. */
public final class DecideSameRun {
    private final Desk desk;

    public DecideSameRun(Desk desk) {
        this.desk = desk;
    }

    /** It is the same run: this entry is struck out. */
    public Outcome<Written> same(Entry<Run> run, String because) {
        return desk.write(
                because, List.of(new Entry<>(run.id(), run.fact(), Standing.STRUCK_OUT, because, run.rev() + 1)));
    }

    /** It is a run of its own: from now on it counts. */
    public Outcome<Written> another(Entry<Run> run, String why) {
        return desk.write(
                why,
                List.of(new Entry<>(run.id(), run.fact().perhapsSameAs(null), Standing.IN_FORCE, null, run.rev() + 1)));
    }
}
