package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.BuildProof;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Part;
import witnessmark.domain.Tool;
import witnessmark.domain.TrackRepair;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * Track repairs that are not proven as of the ledger's day: closed by then, and neither measured nor closed by hand by
 * then. A later build does not prove an earlier one: somebody says so. While it is open the engine is apart instead.
 */
public final class UnprovenBuilds {
    private final LifeLedger ledger;
    private final Map<Id<Engine>, List<UnprovenBuild>> byEngine = new HashMap<>();
    private final List<UnprovenBuild> all = new ArrayList<>();

    public UnprovenBuilds(LifeLedger ledger) {
        this.ledger = ledger;
        Set<Id<Build>> proven = new HashSet<>();
        ledger.facts()
                .of(BuildProof.class)
                .inForce()
                .filter(proof -> ledger.asOf().counts(proof.fact().at()))
                .forEach(proof -> proven.add(proof.fact().build()));
        Map<Id<Build>, Entry<TrackRepair>> repairs = new HashMap<>();
        ledger.facts()
                .of(TrackRepair.class)
                .inForce()
                .forEach(repair -> repairs.put(repair.fact().build(), repair));
        ledger.facts()
                .of(Build.class)
                .inForce()
                .filter(build -> repairs.containsKey(build.id()) && !proven.contains(build.id()))
                .forEach(build -> add(build, repairs.get(build.id())));
        all.sort(Comparator.comparing(UnprovenBuild::since)
                .thenComparing(unproven -> unproven.build().id()));
        all.forEach(unproven -> byEngine.computeIfAbsent(unproven.build().fact().engine(), id -> new ArrayList<>())
                .add(unproven));
    }

    /** Every one of them, the first closed first. */
    public List<UnprovenBuild> all() {
        return List.copyOf(all);
    }

    /** Those of an engine, the first closed first. */
    public List<UnprovenBuild> of(Id<Engine> engine) {
        return List.copyOf(byEngine.getOrDefault(engine, List.of()));
    }

    private void add(Entry<Build> build, @Nullable Entry<TrackRepair> repair) {
        Moment closed = build.fact().closed();
        if (repair != null && closed != null && ledger.asOf().counts(closed)) {
            Id<Tool> tool = repair.fact().tool();
            all.add(new UnprovenBuild(
                    build,
                    repair,
                    tool == null
                            ? null
                            : ledger.facts().of(Tool.class).find(tool).orElse(null),
                    ledger.facts().of(Joint.class).where(joint -> build.id().equals(joint.build())),
                    closed,
                    parts(build, Fitment::buildIn),
                    parts(build, Fitment::buildOut),
                    ledger.engineSince(build.fact().engine(), Counter.RUNNING, closed)));
        }
    }

    private List<Entry<Part>> parts(Entry<Build> build, Function<Fitment, @Nullable Id<Build>> of) {
        return ledger.facts().of(Fitment.class).where(fitment -> build.id().equals(of.apply(fitment))).stream()
                .flatMap(fitment ->
                        ledger.facts().of(Part.class).find(fitment.fact().part()).stream())
                .toList();
    }
}
