package witnessmark.logbook.money;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.Costs;
import witnessmark.cost.Failures;
import witnessmark.cost.LifeLost;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Place;
import witnessmark.domain.Cause;
import witnessmark.domain.Decision;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.MissedShare;
import witnessmark.ledger.AsOf;
import witnessmark.logbook.View;

/** Puts together what hangs on an incident. */
public final class SeeIncident {
    private final Facts facts;
    private final AsOf asOf;
    private final CostBook book;
    private final Map<Id<Incident>, IncidentCost> costs = new HashMap<>();

    private SeeIncident(View view) {
        this.facts = view.facts();
        this.asOf = view.ledger().asOf();
        this.book = Costs.asOf(facts, asOf);
        Failures.all(facts, book, asOf, piece -> true).forEach(cost -> costs.put(cost.incident(), cost));
    }

    /** How many are open on the view's day. */
    public static int open(View view) {
        AsOf asOf = view.ledger().asOf();
        return (int) view.facts()
                .of(Incident.class)
                .inForce()
                .filter(incident -> asOf.counts(incident.fact().at()) && open(incident, asOf))
                .count();
    }

    /** What the parts of an incident had run by then, as the logbook has it now, in the order of the page. */
    public static List<LifeThen.Ran> ranThen(View view, IncidentPage page) {
        if (page.parts().isEmpty()) {
            return List.of();
        }
        LifeThen then = LifeThen.at(view.facts(), page.incident().fact().at(), view.zone());
        return page.parts().stream().map(part -> then.of(part.fact().part())).toList();
    }

    /** Every incident up to the view's day with its page: the open ones first, each the latest first. */
    public static List<IncidentPage> all(View view) {
        SeeIncident see = new SeeIncident(view);
        return see.facts
                .of(Incident.class)
                .inForce()
                .filter(incident -> see.asOf.counts(incident.fact().at()))
                .sorted(Comparator.comparing((Entry<Incident> incident) -> !open(incident, see.asOf))
                        .thenComparing(incident -> incident.fact().at(), Comparator.reverseOrder()))
                .map(see::page)
                .toList();
    }

    /** One incident; empty where the view has none of that id. */
    public static Optional<IncidentPage> of(View view, Id<Incident> id) {
        SeeIncident see = new SeeIncident(view);
        return see.facts
                .of(Incident.class)
                .find(id)
                .filter(incident ->
                        incident.inForce() && see.asOf.counts(incident.fact().at()))
                .map(see::page);
    }

    /** What one incident cost, up to the day of the book. */
    static IncidentCost cost(Facts facts, CostBook book, AsOf asOf, Id<Incident> id) {
        return Failures.all(facts, book, asOf, piece -> true).stream()
                .filter(cost -> cost.incident().equals(id))
                .findFirst()
                .orElseGet(() -> nothing(id, book));
    }

    private IncidentCost cost(Id<Incident> id) {
        IncidentCost known = costs.get(id);
        return known == null ? nothing(id, book) : known;
    }

    private static IncidentCost nothing(Id<Incident> id, CostBook book) {
        return new IncidentCost(id, book.home(), List.of(), Set.of(Place.CASH, Place.LABOUR));
    }

    private static boolean open(Entry<Incident> incident, AsOf asOf) {
        return incident.fact().openAt(asOf.last());
    }

    private IncidentPage page(Entry<Incident> incident) {
        Id<Incident> id = incident.id();
        List<Entry<Cause>> causes =
                facts.of(Cause.class).where(cause -> cause.incident().equals(id));
        int given = causes.stream()
                .map(cause -> cause.fact().share())
                .mapToInt(share -> share == null ? 0 : share)
                .sum();
        Preventions preventions = new Preventions(facts, book.home(), asOf);
        return new IncidentPage(
                incident,
                open(incident, asOf),
                cost(id),
                facts.of(IncidentPart.class).where(part -> part.incident().equals(id)),
                causes,
                Math.max(0, Cause.WHOLE - given),
                preventions.of(id),
                preventions.together(id),
                facts.of(MissedShare.class).where(share -> share.incident().equals(id)),
                LifeLost.of(facts, id),
                before(incident.fact().before()),
                facts.of(Incident.class).where(other -> id.equals(other.before()) && asOf.counts(other.at())),
                facts
                        .of(Decision.class)
                        .where(decision -> (id.equals(decision.answers()) || id.equals(decision.ledTo()))
                                && asOf.counts(decision.asked()))
                        .stream()
                        .map(this::decided)
                        .toList());
    }

    /** The chain of incidents it looks like, never the same twice. */
    private List<Entry<Incident>> before(@Nullable Id<Incident> first) {
        List<Entry<Incident>> chain = new ArrayList<>();
        Id<Incident> next = first;
        while (next != null) {
            Entry<Incident> found = facts.of(Incident.class).find(next).orElse(null);
            if (found == null || !found.inForce() || chain.contains(found)) {
                break;
            }
            chain.add(found);
            next = found.fact().before();
        }
        return chain;
    }

    private Decided decided(Entry<Decision> decision) {
        return Decided.of(facts, decision, this::cost);
    }
}
