package witnessmark.ledger;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.outcome.ProblemKind;

/**
 * Lives carried in that disagree: with another stated for the same moment, or with runs from before the moment, which are
 * not counted. Somebody should say which of the two is right.
 */
final class PriorChecks {
    private final Surroundings around;
    private final Clashes clashes;
    private final Map<Id<?>, RunStarts> starts = new HashMap<>();

    PriorChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
    }

    void check() {
        for (Id<Part> part : around.partPriors.owners()) {
            List<Tenure> tenures = Tenure.of(around.facts.of(Part.class), part);
            check(around.partPriors.of(part), around.names.part(part), prior -> ofPart(prior, tenures));
        }
        for (Id<Engine> engine : around.enginePriors.owners()) {
            check(around.enginePriors.of(engine), around.names.of(engine), prior -> ofEngine(prior, engine));
        }
    }

    /** What contradicts a prior life: the entry to look at, and the run that was earlier. */
    private record Earlier(Entry<?> look, Entry<Run> run) {}

    /** Lives carried in by several counters are stated at one moment; one word about it is enough. */
    private void check(
            List<Entry<PriorLife>> priors, String name, Function<Entry<PriorLife>, @Nullable Earlier> earlier) {
        Set<Long> told = new HashSet<>();
        differ(priors, name);
        for (Entry<PriorLife> prior : priors) {
            Earlier found = told.contains(prior.fact().at().epochMillis()) ? null : earlier.apply(prior);
            if (found != null) {
                told.add(prior.fact().at().epochMillis());
                clashes.add(
                        found.look(),
                        ProblemKind.PRIOR_LIFE_OVERLAPS_RUNS,
                        name,
                        prior.fact().at(),
                        found.run().fact().name());
            }
        }
    }

    /** Two figures for the same counter at the same moment: a card and a history that disagree. */
    private void differ(List<Entry<PriorLife>> priors, String name) {
        for (int i = 0; i < priors.size(); i++) {
            for (Entry<PriorLife> other : priors.subList(i + 1, priors.size())) {
                Entry<PriorLife> one = priors.get(i);
                if (disagree(one.fact(), other.fact()) && (around.changed(one) || around.changed(other))) {
                    clashes.add(
                            around.changed(other) ? other : one,
                            ProblemKind.PRIOR_LIVES_DIFFER,
                            name,
                            other.fact().at(),
                            one.fact().words(),
                            other.fact().words());
                }
            }
        }
    }

    private static boolean disagree(PriorLife one, PriorLife other) {
        return one.counter() == other.counter()
                && one.at().epochMillis() == other.at().epochMillis()
                && (one.lowest() != other.lowest()
                        || one.highest() != other.highest()
                        || one.amount() != other.amount());
    }

    private @Nullable Earlier ofEngine(Entry<PriorLife> prior, Id<Engine> engine) {
        return earlier(
                starts(engine), Long.MIN_VALUE, prior.fact().at().epochMillis(), around.changed(prior) ? prior : null);
    }

    private @Nullable Earlier ofPart(Entry<PriorLife> prior, List<Tenure> tenures) {
        for (Tenure tenure : tenures) {
            for (Entry<Fitment> fitment : around.parts.of(tenure.part())) {
                Stretch stretch = Stretch.of(tenure, fitment.fact(), Long.MIN_VALUE);
                Earlier found = earlier(
                        starts(fitment.fact()),
                        stretch.from(),
                        Math.min(stretch.to(), prior.fact().at().epochMillis()),
                        around.changed(prior) ? prior : around.changed(fitment) ? fitment : null);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    /** A run within the stretch: any when an entry that has to do with it was changed, else one that was itself. */
    private static @Nullable Earlier earlier(RunStarts starts, long from, long to, @Nullable Entry<?> changed) {
        Entry<Run> run = starts.first(from, to, changed == null);
        return run == null ? null : new Earlier(changed == null ? run : changed, run);
    }

    private RunStarts starts(Fitment fitment) {
        Id<Engine> engine = fitment.engine();
        Id<Car> car = fitment.car();
        return engine != null
                ? starts(engine)
                : car != null ? starts.computeIfAbsent(car, id -> starts(around.carRuns.of(car))) : starts(List.of());
    }

    private RunStarts starts(Id<Engine> engine) {
        return starts.computeIfAbsent(engine, id -> starts(around.engineRuns.of(engine)));
    }

    private RunStarts starts(List<Entry<Run>> runs) {
        return new RunStarts(runs, around::changed);
    }
}
