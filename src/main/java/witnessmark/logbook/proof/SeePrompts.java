package witnessmark.logbook.proof;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.study.cases.Prompts;
import witnessmark.study.result.Prompted;

/** Sees what the trade asks of a failure that shows such marks. */
public final class SeePrompts {
    private SeePrompts() {}

    /** Of one incident. */
    public static List<Prompted> of(View view, Entry<Incident> incident) {
        return new Prompts(view.ledger()).of(incident);
    }
}
