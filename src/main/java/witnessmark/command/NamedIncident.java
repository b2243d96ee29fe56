package witnessmark.command;

import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.money.SeeIncident;
import witnessmark.outcome.Outcome;

/** An incident as a command names it. */
final class NamedIncident {
    private NamedIncident() {}

    /** What hangs on it; did-not, with the sentence that says so, where there is none of that mark on the view's day. */
    static Outcome<IncidentPage> of(Answer answer, View view, String mark) {
        return answer.named(view, Incident.class, mark)
                .then(found -> SeeIncident.of(view, found.id())
                        .map(Outcome::worked)
                        .orElseGet(() -> answer.unnamed(Incident.class, mark)));
    }
}
