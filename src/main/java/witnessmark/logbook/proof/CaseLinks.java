package witnessmark.logbook.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentLink;
import witnessmark.ledger.AsOf;
import witnessmark.logbook.View;

/** Which other incidents one may be laid beside, and what joins it to some of them. */
public final class CaseLinks {
    /**
     * Another incident.
     *
     * @param why what joins them; empty where one is the other again, or where nothing does
     * @param linked whether anything does
     */
    public record Other(Entry<Incident> incident, String why, boolean linked) {}

    private CaseLinks() {}

    /** Those that are the same again first, then those linked, then the others; each the latest first. */
    public static List<Other> of(View view, Entry<Incident> incident) {
        Facts facts = view.facts();
        AsOf asOf = view.ledger().asOf();
        Map<Id<Incident>, String> joined = new LinkedHashMap<>();
        if (incident.fact().before() != null) {
            joined.put(incident.fact().before(), "");
        }
        facts.of(Incident.class)
                .where(other -> incident.id().equals(other.before()))
                .forEach(other -> joined.put(other.id(), ""));
        facts.of(IncidentLink.class).where(link -> true).forEach(entry -> {
            IncidentLink link = entry.fact();
            if (link.incident().equals(incident.id())) {
                joined.put(link.other(), link.why());
            } else if (link.other().equals(incident.id())) {
                joined.put(link.incident(), link.why());
            }
        });
        List<Other> all = new ArrayList<>();
        facts.of(Incident.class).where(other -> asOf.counts(other.at())).forEach(other -> {
            if (!other.id().equals(incident.id())) {
                String why = joined.get(other.id());
                all.add(new Other(other, Objects.requireNonNullElse(why, ""), why != null));
            }
        });
        all.sort(Comparator.comparing((Other other) -> !other.linked())
                .thenComparing(other -> !other.why().isEmpty())
                .thenComparing(other -> other.incident().fact().at(), Comparator.reverseOrder()));
        return all;
    }
}
