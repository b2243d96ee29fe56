package witnessmark.desktop.cases;

import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.proof.SeePrompts;
import witnessmark.logbook.proof.SeeWay;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.WayWords;

/** Words the investigation of an incident. The same answer always gives the same lines. */
public final class CaseModel {
    private final WayWords way;
    private final EvidenceWords evidence;
    private final PromptModel prompts;
    private final BesideWords beside;

    public CaseModel(Texts texts, Measures measures) {
        this.way = new WayWords(texts, measures);
        this.evidence = new EvidenceWords(texts, measures);
        this.prompts = new PromptModel(texts, measures);
        this.beside = new BesideWords(texts, measures);
    }

    public CaseLines lines(View view, Entry<Incident> incident, CaseSeen seen) {
        return new CaseLines(
                incident.id().text(),
                incident.fact().mark(),
                way.lines(view.facts(), SeeWay.of(view, incident)),
                evidence.lines(view.facts(), seen),
                prompts.lines(SeePrompts.of(view, incident), seen),
                beside.others(view, incident));
    }
}
