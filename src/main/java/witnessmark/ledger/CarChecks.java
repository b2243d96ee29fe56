package witnessmark.ledger;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.outcome.ProblemKind;

/** Engines that cannot have been in the cars they are said to have been in. */
final class CarChecks {
    private final Surroundings around;
    private final Clashes clashes;
    private final Map<Id<Engine>, Map<Id<Car>, Spans<EngineInCar>>> stays = new HashMap<>();

    CarChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
    }

    void check() {
        for (Id<Engine> engine : around.engines.owners()) {
            around.stays(around.engines.of(engine)).eachOverlap(around::changed, this::twoCars);
        }
        for (Id<Car> car : around.cars.owners()) {
            around.stays(around.cars.of(car)).eachOverlap(around::changed, this::twoEngines);
        }
    }

    /** Whether a run was in a car its engine was in; a run without a car needs none. */
    void check(Entry<Run> run) {
        if (elsewhere(run.fact())) {
            add(run, run.fact());
        }
    }

    /** Looks for a run that a changed stay of its engine has left without its car. */
    void checkRunsOf(Entry<EngineInCar> stay) {
        for (Entry<Run> run : around.engineRuns.of(stay.fact().engine())) {
            if (!around.changed(run) && elsewhere(run.fact())) {
                add(stay, run.fact());
                return;
            }
        }
    }

    private boolean elsewhere(Run run) {
        Id<Car> car = run.car();
        if (car == null) {
            return false;
        }
        Spans<EngineInCar> there =
                stays.computeIfAbsent(run.engine(), this::staysByCar).get(car);
        return there == null || !there.covers(run.start().epochMillis());
    }

    private Map<Id<Car>, Spans<EngineInCar>> staysByCar(Id<Engine> engine) {
        Map<Id<Car>, List<Entry<EngineInCar>>> byCar = around.engines.of(engine).stream()
                .collect(Collectors.groupingBy(stay -> stay.fact().car()));
        Map<Id<Car>, Spans<EngineInCar>> spans = new HashMap<>();
        byCar.forEach((car, there) -> spans.put(car, around.stays(there)));
        return spans;
    }

    private void add(Entry<?> entry, Run run) {
        Id<Car> car = run.car();
        if (car != null) {
            clashes.add(
                    entry,
                    ProblemKind.ENGINE_NOT_IN_CAR,
                    around.names.of(run.engine()),
                    around.names.car(car),
                    run.start());
        }
    }

    private void twoCars(Entry<EngineInCar> stay, Entry<EngineInCar> other) {
        clashes.add(
                stay,
                ProblemKind.ENGINE_IN_TWO_CARS,
                around.names.of(stay.fact().engine()),
                around.names.car(other.fact().car()),
                around.names.car(stay.fact().car()),
                Spans.later(stay.fact().from(), other.fact().from()));
    }

    private void twoEngines(Entry<EngineInCar> stay, Entry<EngineInCar> other) {
        if (!stay.fact().engine().equals(other.fact().engine())) {
            clashes.add(
                    stay,
                    ProblemKind.TWO_ENGINES_IN_CAR,
                    around.names.car(stay.fact().car()),
                    around.names.of(other.fact().engine()),
                    around.names.of(stay.fact().engine()),
                    Spans.later(stay.fact().from(), other.fact().from()));
        }
    }
}
