package witnessmark.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Cause;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.PartKind;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/**
 * What failures went on, dearest first: each incident's total is shared among what it is put under, by blame among
 * cause areas and evenly among kinds of part that failed, to the minor unit.
 */
public final class Bars {
    private final Facts facts;
    private final Function<Object, Optional<RunningTime>> running;

    /**
     * @param facts everything written
     * @param running what an engine or a car, by its id, has run in the time asked about; empty where it has run nothing
     */
    public Bars(Facts facts, Function<Object, Optional<RunningTime>> running) {
        this.facts = facts;
        this.running = running;
    }

    /**
     * The bars, dearest first; what nobody has said comes last.
     *
     * @param by what incidents are put under
     * @param costs what each cost
     * @param switches what a total takes in
     */
    public List<Bar> of(BarsBy by, List<IncidentCost> costs, Switches switches) {
        Map<Optional<Object>, List<Bar.Part>> parts = new LinkedHashMap<>();
        for (IncidentCost cost : costs) {
            Money total = cost.total(switches);
            if (total.isNone()) {
                continue;
            }
            List<Weighed> under = under(by, cost.incident());
            List<Long> shares = LargestRemainder.split(
                    total.minor(), under.stream().map(Weighed::weight).toList());
            for (int i = 0; i < under.size(); i++) {
                Money share = new Money(shares.get(i), total.currency());
                if (!share.isNone()) {
                    parts.computeIfAbsent(Optional.ofNullable(under.get(i).subject()), subject -> new ArrayList<>())
                            .add(new Bar.Part(cost.incident(), total, share));
                }
            }
        }
        Comparator<Bar> dearest = Comparator.comparingLong(bar -> -bar.amount().minor());
        return parts.entrySet().stream()
                .map(entry -> bar(entry.getKey().orElse(null), entry.getValue()))
                .sorted(Comparator.comparing((Bar bar) -> bar.subject() == null).thenComparing(dearest))
                .toList();
    }

    private Bar bar(@Nullable Object subject, List<Bar.Part> parts) {
        Money sum = parts.stream().map(Bar.Part::amount).reduce(Money::plus).orElseThrow();
        List<Bar.Part> dearest = parts.stream()
                .sorted(Comparator.comparingLong(part -> -part.amount().minor()))
                .toList();
        return new Bar(
                subject,
                sum,
                dearest,
                subject == null ? null : running.apply(subject).orElse(null));
    }

    private List<Weighed> under(BarsBy by, Id<Incident> id) {
        Incident incident = facts.of(Incident.class).get(id);
        return switch (by) {
            case INCIDENT -> List.of(new Weighed(id, 1));
            case EVENT -> List.of(new Weighed(incident.event(), 1));
            case CAR -> List.of(new Weighed(incident.car(), 1));
            case ENGINE -> List.of(new Weighed(incident.engine(), 1));
            case CAUSE_AREA -> areas(id);
            case PART_KIND -> kinds(id);
        };
    }

    /** By the blame that was given; what is left of the whole is nobody's yet. */
    private List<Weighed> areas(Id<Incident> id) {
        List<Weighed> areas = new ArrayList<>();
        long given = 0;
        for (Entry<Cause> cause :
                facts.of(Cause.class).where(each -> each.incident().equals(id))) {
            Integer share = cause.fact().share();
            if (share != null && share > 0) {
                areas.add(new Weighed(cause.fact().area(), share));
                given += share;
            }
        }
        if (given < Cause.WHOLE) {
            areas.add(new Weighed(null, Cause.WHOLE - given));
        }
        return areas;
    }

    private List<Weighed> kinds(Id<Incident> id) {
        List<PartKind> kinds = new PartKinds(facts).failed(id);
        return kinds.isEmpty()
                ? List.of(new Weighed(null, 1))
                : kinds.stream().map(kind -> new Weighed(kind, 1)).toList();
    }

    private record Weighed(@Nullable Object subject, long weight) {}
}
