package witnessmark.logbook.sharing;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Photo;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.money.SeeIncident;
import witnessmark.logbook.photos.PhotosOf;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.proof.SeeCase;
import witnessmark.study.result.ProofLine;
import witnessmark.study.result.ProofMade;

/** What somebody typed that stands on the case sheet of an incident, in its order: in any case, and when words are wanted. */
public final class TypedWords {
    private TypedWords() {}

    /** What its causes are called, which is on the sheet whatever is wanted: as typed, what is blamed first. */
    public static List<String> always(View view, Entry<Incident> incident) {
        return SeeCase.of(view, incident).evidence().causes().stream()
                .map(cause -> cause.fact().statement())
                .filter(statement -> !statement.isBlank())
                .toList();
    }

    /** What is on it only when words are wanted: as typed; none that is empty. */
    public static List<String> of(View view, Entry<Incident> incident) {
        List<String> typed = new ArrayList<>();
        typed.add(incident.fact().title());
        typed.add(incident.fact().seen());
        CaseSeen seen = SeeCase.of(view, incident);
        for (Entry<Finding> finding : seen.evidence().findings()) {
            typed.add(finding.fact().spot());
            typed.add(finding.fact().words());
        }
        IncidentPage page = SeeIncident.of(view, incident.id()).orElseThrow();
        for (Entry<Cause> cause : page.causes()) {
            for (CauseCall call : seen.evidence().calls().getOrDefault(cause.id(), List.of())) {
                typed.add(call.because());
            }
        }
        for (Entry<Finding> finding : seen.evidence().findings()) {
            for (Entry<Cause> cause : page.causes()) {
                seen.evidence()
                        .of(finding.id(), cause.id())
                        .ifPresent(weighing -> typed.add(weighing.fact().why()));
            }
        }
        for (Entry<CauseTest> test : seen.tests()) {
            typed.add(test.fact().what());
            typed.add(test.fact().found());
        }
        for (Entry<IncidentPart> part : page.parts()) {
            typed.add(part.fact().note());
        }
        for (Entry<CaseAction> action : seen.actions()) {
            typed.add(action.fact().what());
        }
        for (ProofLine line : seen.proof().lines()) {
            typed.add(line.wanted().fact().what());
            for (ProofMade made : line.made()) {
                typed.add(made.seen().fact().words());
            }
        }
        for (Entry<Photo> photo : PhotosOf.incident(incident.id()).in(view)) {
            typed.add(photo.fact().caption());
        }
        typed.removeIf(String::isBlank);
        return List.copyOf(typed);
    }
}
