package witnessmark.ledger;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.ToldRunning;

/** What ran: one {@link Line} for each engine and each car. Immutable. */
final class Running {
    private final Grouped<Engine, Run> engineRuns;
    private final Grouped<Car, Run> carRuns;
    private final Grouped<Engine, ToldRunning> told;
    private final Map<Id<Engine>, Line> engines;
    private final Map<Id<Car>, Line> cars;

    private Running(
            Grouped<Engine, Run> engineRuns,
            Grouped<Car, Run> carRuns,
            Grouped<Engine, ToldRunning> told,
            Map<Id<Engine>, Line> engines,
            Map<Id<Car>, Line> cars) {
        this.engineRuns = engineRuns;
        this.carRuns = carRuns;
        this.told = told;
        this.engines = engines;
        this.cars = cars;
    }

    static Running of(Facts facts, Cutoff cutoff) {
        Grouped<Engine, Run> engineRuns = Grouped.of(facts.of(Run.class), Run::engine, cutoff::counts);
        Grouped<Car, Run> carRuns = Grouped.of(facts.of(Run.class), Run::car, cutoff::counts);
        Grouped<Engine, ToldRunning> told =
                Grouped.of(facts.of(ToldRunning.class), ToldRunning::engine, cutoff::counts);
        Set<Id<Engine>> ran = new HashSet<>(engineRuns.owners());
        ran.addAll(told.owners());
        return new Running(
                engineRuns,
                carRuns,
                told,
                renewed(Map.of(), ran, engine -> Line.of(engineRuns.of(engine), told.of(engine))),
                renewed(Map.of(), carRuns.owners(), car -> Line.of(carRuns.of(car), List.of())));
    }

    /** The same once a change is in; lines it does not touch are kept with their totals. */
    Running after(Facts older, Facts newer, Cutoff cutoff) {
        Diff<Run> runs = Diff.between(older.of(Run.class), newer.of(Run.class));
        Diff<ToldRunning> stretches = Diff.between(older.of(ToldRunning.class), newer.of(ToldRunning.class));
        if (runs == null || stretches == null) {
            return of(newer, cutoff);
        }
        Grouped<Engine, Run> nextEngineRuns = engineRuns.after(runs);
        Grouped<Car, Run> nextCarRuns = carRuns.after(runs);
        Grouped<Engine, ToldRunning> nextTold = told.after(stretches);
        Set<Id<Engine>> ran = engineRuns.touched(runs);
        ran.addAll(told.touched(stretches));
        return new Running(
                nextEngineRuns,
                nextCarRuns,
                nextTold,
                renewed(engines, ran, engine -> Line.of(nextEngineRuns.of(engine), nextTold.of(engine))),
                renewed(cars, carRuns.touched(runs), car -> Line.of(nextCarRuns.of(car), List.of())));
    }

    Line of(Id<Engine> engine) {
        return engines.getOrDefault(engine, Line.EMPTY);
    }

    Line ofCar(Id<Car> car) {
        return cars.getOrDefault(car, Line.EMPTY);
    }

    private static <O extends Fact> Map<Id<O>, Line> renewed(
            Map<Id<O>, Line> lines, Set<Id<O>> touched, Function<Id<O>, Line> line) {
        if (touched.isEmpty()) {
            return lines;
        }
        Map<Id<O>, Line> next = new HashMap<>(lines);
        for (Id<O> owner : touched) {
            next.put(owner, line.apply(owner));
        }
        return next;
    }
}
