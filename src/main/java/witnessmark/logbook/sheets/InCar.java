package witnessmark.logbook.sheets;

import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.quantity.Moment;

/** Puts an engine into a car: what was in it comes out, and the engine leaves the car it was in, at that moment. */
final class InCar {
    private InCar() {}

    /** The stay of the engine that is in this car at that moment and comes out then. */
    static Optional<Entry<EngineInCar>> inCar(SheetSight sight, Id<Car> car, Moment at) {
        return stay(sight, in -> in.car().equals(car), at);
    }

    /** The stay of this engine in some car at that moment. */
    static Optional<Entry<EngineInCar>> ofEngine(SheetSight sight, Id<Engine> engine, Moment at) {
        return stay(sight, in -> in.engine().equals(engine), at);
    }

    /**
     * Makes the entries.
     *
     * @param engine known to the logbook, or made on the same sheet
     * @param field beside which contradictions are shown
     */
    static void make(ReadSheet in, SheetField field, Id<Engine> engine, Id<Car> car, Moment from, String note) {
        Optional<Entry<EngineInCar>> before = inCar(in.sight(), car, from);
        before.ifPresent(stay -> in.change(field, stay, ended(stay.fact(), from)));
        ofEngine(in.sight(), engine, from)
                .filter(stay -> before.isEmpty() || !before.get().id().equals(stay.id()))
                .ifPresent(stay -> in.change(field, stay, ended(stay.fact(), from)));
        in.make(field, new EngineInCar(engine, car, from, null, note));
    }

    private static EngineInCar ended(EngineInCar stay, Moment at) {
        return new EngineInCar(stay.engine(), stay.car(), stay.from(), at, stay.note());
    }

    private static Optional<Entry<EngineInCar>> stay(SheetSight sight, Predicate<EngineInCar> asked, Moment at) {
        return sight
                .facts()
                .of(EngineInCar.class)
                .where(in -> asked.test(in) && in.from().isBefore(at) && open(in.to(), at))
                .stream()
                .findFirst();
    }

    private static boolean open(@Nullable Moment to, Moment at) {
        return to == null || at.isBefore(to);
    }
}
