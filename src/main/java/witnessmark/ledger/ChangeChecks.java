package witnessmark.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Nothing is fitted, taken off or put in a car while the engine runs: a change stands between runs. */
final class ChangeChecks {
    private final Surroundings around;
    private final Clashes clashes;
    private final Map<Id<?>, NavigableMap<Long, Moment>> changes = new HashMap<>();
    private final Map<Id<?>, Spans<Run>> runs = new HashMap<>();

    ChangeChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
    }

    /** Looks for a change inside a run. */
    void checkRun(Entry<Run> entry) {
        Run run = entry.fact();
        Id<Car> car = run.car();
        NavigableMap<Long, Moment> inEngine = changes.computeIfAbsent(
                run.engine(), id -> moments(around.inEngines.of(run.engine()), around.engines.of(run.engine())));
        Moment change = inside(run, inEngine);
        if (change == null && car != null) {
            change = inside(
                    run, changes.computeIfAbsent(car, id -> moments(around.inCars.of(car), around.cars.of(car))));
        }
        if (change != null && run.perhapsSame() == null) {
            add(entry, run, change);
        }
    }

    /** Looks for a run, itself not changed, that goes on while a part is fitted or taken off. */
    void checkFitment(Entry<Fitment> entry) {
        Fitment fitment = entry.fact();
        List<Spans<Run>> places = new ArrayList<>();
        if (fitment.engine() != null) {
            places.add(runs(fitment.engine()));
        }
        if (fitment.car() != null) {
            places.add(runsOfCar(fitment.car()));
        }
        check(entry, places, fitment.from(), fitment.to());
    }

    /** Looks for a run, itself not changed, that goes on while an engine goes into a car or comes out. */
    void checkStay(Entry<EngineInCar> entry) {
        EngineInCar stay = entry.fact();
        check(entry, List.of(runs(stay.engine()), runsOfCar(stay.car())), stay.from(), stay.to());
    }

    private void check(Entry<?> entry, List<Spans<Run>> places, Moment from, @Nullable Moment to) {
        for (Moment change : to == null ? List.of(from) : List.of(from, to)) {
            for (Spans<Run> place : places) {
                Entry<Run> run = place.inside(change.epochMillis());
                if (run != null && !around.changed(run)) {
                    add(entry, run.fact(), change);
                    return;
                }
            }
        }
    }

    private void add(Entry<?> entry, Run run, Moment change) {
        clashes.add(entry, ProblemKind.CHANGE_INSIDE_RUN, run.name(), run.start(), run.back(), change);
    }

    private Spans<Run> runs(Id<Engine> engine) {
        return runs.computeIfAbsent(engine, id -> around.runs(around.engineRuns.of(engine)));
    }

    private Spans<Run> runsOfCar(Id<Car> car) {
        return runs.computeIfAbsent(car, id -> around.runs(around.carRuns.of(car)));
    }

    private static @Nullable Moment inside(Run run, NavigableMap<Long, Moment> changes) {
        Map.Entry<Long, Moment> next = changes.higherEntry(run.start().epochMillis());
        return next != null && next.getKey() < run.back().epochMillis() ? next.getValue() : null;
    }

    private static NavigableMap<Long, Moment> moments(List<Entry<Fitment>> fitments, List<Entry<EngineInCar>> stays) {
        NavigableMap<Long, Moment> moments = new TreeMap<>();
        Stream.concat(
                        fitments.stream()
                                .flatMap(entry ->
                                        ends(entry.fact().from(), entry.fact().to())),
                        stays.stream()
                                .flatMap(entry ->
                                        ends(entry.fact().from(), entry.fact().to())))
                .forEach(moment -> moments.put(moment.epochMillis(), moment));
        return moments;
    }

    private static Stream<Moment> ends(Moment from, @Nullable Moment to) {
        return to == null ? Stream.of(from) : Stream.of(from, to);
    }
}
