package witnessmark.ledger;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.quantity.Moment;

/** Where things were: parts in engines and cars, engines in cars. Immutable. */
final class Fitted {
    private final Grouped<Part, Fitment> parts;
    private final Grouped<Engine, Fitment> inEngines;
    private final Grouped<Car, Fitment> inCars;
    private final Grouped<Engine, EngineInCar> engines;
    private final Grouped<Car, EngineInCar> cars;

    private Fitted(
            Grouped<Part, Fitment> parts,
            Grouped<Engine, Fitment> inEngines,
            Grouped<Car, Fitment> inCars,
            Grouped<Engine, EngineInCar> engines,
            Grouped<Car, EngineInCar> cars) {
        this.parts = parts;
        this.inEngines = inEngines;
        this.inCars = inCars;
        this.engines = engines;
        this.cars = cars;
    }

    static Fitted of(Facts facts, Cutoff cutoff) {
        return new Fitted(
                Grouped.of(facts.of(Fitment.class), Fitment::part, cutoff::counts),
                Grouped.of(facts.of(Fitment.class), Fitment::engine, cutoff::counts),
                Grouped.of(facts.of(Fitment.class), Fitment::car, cutoff::counts),
                Grouped.of(facts.of(EngineInCar.class), EngineInCar::engine, cutoff::counts),
                Grouped.of(facts.of(EngineInCar.class), EngineInCar::car, cutoff::counts));
    }

    /** The same once a change is in; what it does not touch is shared. */
    Fitted after(Facts older, Facts newer, Cutoff cutoff) {
        Diff<Fitment> fitments = Diff.between(older.of(Fitment.class), newer.of(Fitment.class));
        Diff<EngineInCar> stays = Diff.between(older.of(EngineInCar.class), newer.of(EngineInCar.class));
        if (fitments == null || stays == null) {
            return of(newer, cutoff);
        }
        return new Fitted(
                parts.after(fitments),
                inEngines.after(fitments),
                inCars.after(fitments),
                engines.after(stays),
                cars.after(stays));
    }

    /** Every fitment of a part, oldest first. */
    List<Entry<Fitment>> of(Id<Part> part) {
        return parts.of(part);
    }

    List<Entry<Fitment>> in(Id<Engine> engine) {
        return inEngines.of(engine);
    }

    List<Entry<Fitment>> inCar(Id<Car> car) {
        return inCars.of(car);
    }

    /** Every time an engine was in a car, oldest first. */
    List<Entry<EngineInCar>> cars(Id<Engine> engine) {
        return engines.of(engine);
    }

    /** The car an engine was in at a moment; of two that contradict each other the later one. */
    Optional<Entry<EngineInCar>> carOf(Id<Engine> engine, Moment at) {
        return at(engines.of(engine), at);
    }

    /** The engine that was in a car at a moment. */
    Optional<Entry<EngineInCar>> engineIn(Id<Car> car, Moment at) {
        return at(cars.of(car), at);
    }

    /** Whether something fitted from one moment to another, open when null, was there at a third. */
    static boolean covers(Moment from, @Nullable Moment to, Moment at) {
        return !from.isAfter(at) && (to == null || at.isBefore(to));
    }

    private static Optional<Entry<EngineInCar>> at(List<Entry<EngineInCar>> stays, Moment at) {
        for (int i = stays.size() - 1; i >= 0; i--) {
            EngineInCar stay = stays.get(i).fact();
            if (covers(stay.from(), stay.to(), at)) {
                return Optional.of(stays.get(i));
            }
        }
        return Optional.empty();
    }
}
