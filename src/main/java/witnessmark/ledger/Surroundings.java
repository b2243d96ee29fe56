package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Position;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;

/**
 * The entries that changed ones could contradict: those of the same engines, cars and parts, gathered. For one run this
 * is a small part of the logbook, for an import all of it.
 */
final class Surroundings {
    final Facts facts;
    final Names names;
    final Grouped<Engine, Run> engineRuns;
    final Grouped<Car, Run> carRuns;
    final Grouped<Part, Fitment> parts;
    final Grouped<Engine, Fitment> inEngines;
    final Grouped<Car, Fitment> inCars;
    final Grouped<Engine, Build> engineBuilds;
    final Grouped<Engine, EngineInCar> engines;
    final Grouped<Car, EngineInCar> cars;
    final Grouped<Part, PriorLife> partPriors;
    final Grouped<Engine, PriorLife> enginePriors;

    private final Set<Id<?>> changed = new HashSet<>();

    Surroundings(Facts facts, Collection<? extends Entry<?>> changes) {
        this.facts = facts;
        this.names = new Names(facts);
        Touched touched = new Touched(facts, changes);
        changes.forEach(entry -> changed.add(entry.id()));
        this.engineRuns = Grouped.of(
                facts.of(Run.class),
                Run::engine,
                run -> counts(run, touched.engines, run.fact().engine()));
        this.carRuns = Grouped.of(
                facts.of(Run.class),
                Run::car,
                run -> counts(run, touched.cars, run.fact().car()));
        this.parts = Grouped.of(
                facts.of(Fitment.class),
                Fitment::part,
                fitment -> counts(fitment, touched.parts, fitment.fact().part()));
        this.inEngines = Grouped.of(
                facts.of(Fitment.class),
                Fitment::engine,
                fitment -> counts(fitment, touched.engines, fitment.fact().engine()));
        this.inCars = Grouped.of(
                facts.of(Fitment.class),
                Fitment::car,
                fitment -> counts(fitment, touched.cars, fitment.fact().car()));
        this.engineBuilds = Grouped.of(
                facts.of(Build.class),
                Build::engine,
                build -> counts(build, touched.engines, build.fact().engine()));
        this.engines = Grouped.of(
                facts.of(EngineInCar.class),
                EngineInCar::engine,
                stay -> counts(stay, touched.engines, stay.fact().engine()));
        this.cars = Grouped.of(
                facts.of(EngineInCar.class),
                EngineInCar::car,
                stay -> counts(stay, touched.cars, stay.fact().car()));
        this.partPriors = Grouped.of(
                facts.of(PriorLife.class),
                PriorLife::part,
                prior -> counts(prior, touched.parts, prior.fact().part()));
        this.enginePriors = Grouped.of(
                facts.of(PriorLife.class),
                PriorLife::engine,
                prior -> counts(prior, touched.engines, prior.fact().engine()));
    }

    boolean changed(Entry<?> entry) {
        return changed.contains(entry.id());
    }

    /** The times in which an engine's or car's stays lasted. */
    Spans<EngineInCar> stays(List<Entry<EngineInCar>> stays) {
        return new Spans<>(stays, stay -> stay.from().epochMillis(), stay -> Spans.end(stay.to()));
    }

    /** The times in which fitments lasted. */
    Spans<Fitment> fitments(List<Entry<Fitment>> fitments) {
        return new Spans<>(fitments, fitment -> fitment.from().epochMillis(), fitment -> Spans.end(fitment.to()));
    }

    /** The times in which fitments of one engine or car lasted, position by position. */
    Map<Id<Position>, Spans<Fitment>> positions(List<Entry<Fitment>> fitments) {
        Map<Id<Position>, List<Entry<Fitment>>> byPosition = new HashMap<>();
        for (Entry<Fitment> fitment : fitments) {
            byPosition
                    .computeIfAbsent(fitment.fact().position(), id -> new ArrayList<>())
                    .add(fitment);
        }
        Map<Id<Position>, Spans<Fitment>> spans = new HashMap<>();
        byPosition.forEach((position, there) -> spans.put(position, fitments(there)));
        return spans;
    }

    /** The times in which runs that count were out. */
    Spans<Run> runs(List<Entry<Run>> runs) {
        return new Spans<>(
                runs.stream().filter(run -> run.fact().perhapsSame() == null).toList(),
                run -> run.start().epochMillis(),
                run -> run.back().epochMillis());
    }

    /** What an engine is built to, or null when there is no such engine. */
    @Nullable
    Id<EngineDesign> design(@Nullable Id<Engine> engine) {
        return engine == null
                ? null
                : facts.of(Engine.class)
                        .find(engine)
                        .map(entry -> entry.fact().design())
                        .orElse(null);
    }

    private static <O extends Fact> boolean counts(Entry<?> entry, Set<Id<O>> touched, @Nullable Id<O> owner) {
        return owner != null && entry.inForce() && touched.contains(owner);
    }
}
