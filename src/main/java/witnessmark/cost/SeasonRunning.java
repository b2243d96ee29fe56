package witnessmark.cost;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;

/** What each engine and each car ran in a season: its life at the end less its life before the first day. */
public final class SeasonRunning {
    private final Map<Object, RunningTime> running = new HashMap<>();
    private final RunningTime all;

    /**
     * @param facts everything written
     * @param season which season
     * @param asOf the day up to which runs count
     */
    public SeasonRunning(Facts facts, SeasonSpan season, AsOf asOf) {
        AsOf end = season.last().isAfter(asOf.day()) ? asOf : new AsOf(season.last(), asOf.zone());
        LifeLedger after = LifeLedger.of(facts, end);
        LifeLedger before = LifeLedger.of(facts, new AsOf(season.first().minusDays(1), asOf.zone()));
        for (Entry<Engine> engine : facts.of(Engine.class).inForce().toList()) {
            running.put(
                    engine.id(),
                    less(
                            after.engineLife(engine.id(), Counter.RUNNING).total(),
                            before.engineLife(engine.id(), Counter.RUNNING).total()));
        }
        this.all = running.values().stream().reduce(RunningTime.NONE, RunningTime::plus);
        for (Entry<Car> car : facts.of(Car.class).inForce().toList()) {
            running.put(
                    car.id(),
                    less(
                            after.carLife(car.id(), Counter.RUNNING).total(),
                            before.carLife(car.id(), Counter.RUNNING).total()));
        }
    }

    /** What an engine or a car ran, by its id; empty where it ran nothing, or is neither. */
    public Optional<RunningTime> of(Object subject) {
        return Optional.ofNullable(running.get(subject)).filter(time -> time.millis() > 0);
    }

    /** What all engines ran. */
    public RunningTime all() {
        return all;
    }

    private static RunningTime less(long after, long before) {
        return new RunningTime(Math.max(0, after - before));
    }
}
