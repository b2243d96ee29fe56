package witnessmark.study.cases;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartHarm;
import witnessmark.ledger.LifeLedger;
import witnessmark.study.result.FailureMode;
import witnessmark.study.result.Prompted;

/**
 * What may be asked about a failure, by the marks that were found and the parts that failed (common practice, no source). A mark
 * says more than a part; whether it was put together wrong is always asked, last.
 */
public final class Prompts {
    private static final int MOST = 3;
    private static final int OF_A_MARK = 2;

    private final LifeLedger ledger;
    private final Facts facts;

    public Prompts(LifeLedger ledger) {
        this.ledger = ledger;
        this.facts = ledger.facts();
    }

    /** The three that most leads to, what most leads to first, and assembly after them. */
    public List<Prompted> of(Entry<Incident> incident) {
        List<Entry<Finding>> findings = facts
                .of(Finding.class)
                .where(finding -> incident.id().equals(finding.incident())
                        && ledger.asOf().counts(finding.at()))
                .stream()
                .sorted(Comparator.comparing(finding -> finding.fact().at()))
                .toList();
        List<Entry<Part>> failed = facts
                .of(IncidentPart.class)
                .where(part -> part.incident().equals(incident.id()) && part.harm() == PartHarm.FAILED)
                .stream()
                .map(part -> facts.of(Part.class).find(part.fact().part()).orElseThrow())
                .distinct()
                .toList();
        List<Prompted> all = new ArrayList<>();
        for (FailureMode mode : FailureMode.values()) {
            Prompted prompted = new Prompted(
                    mode,
                    findings.stream().filter(each -> mode.shownBy(each.fact())).toList(),
                    failed.stream().filter(each -> of(mode, each.fact())).toList());
            if (weight(prompted) > 0) {
                all.add(prompted);
            }
        }
        all.sort(Comparator.comparingInt(Prompts::weight).reversed()); // stable: alike stay in their order
        List<Prompted> most = new ArrayList<>(all.subList(0, Math.min(MOST, all.size())));
        most.add(new Prompted(FailureMode.AT_ASSEMBLY, List.of(), List.of()));
        return most;
    }

    private static int weight(Prompted prompted) {
        return OF_A_MARK * prompted.findings().size() + prompted.failed().size();
    }

    private boolean of(FailureMode mode, Part part) {
        return mode.of(facts.of(PartDesign.class).get(part.design()).kind());
    }
}
