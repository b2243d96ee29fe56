package witnessmark.logbook.proof;

import java.util.Optional;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.study.cases.WayThere;
import witnessmark.study.result.WayTo;

/** Sees an engine's way up to a failure. */
public final class SeeWay {
    private SeeWay() {}

    /** Of one incident; empty where it names no engine. */
    public static Optional<WayTo> of(View view, Entry<Incident> incident) {
        return new WayThere(view.ledger()).of(incident);
    }
}
