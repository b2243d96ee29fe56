package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Position;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Where parts can be, and which part is where at a moment. */
final class Places {
    private static final String ENGINE = "engine:";
    private static final String CAR = "car:";

    private Places() {}

    /** An engine or a car: one of the two. */
    record Place(@Nullable Entry<Engine> engine, @Nullable Entry<Car> car) {
        boolean holds(Fitment fitment) {
            return engine != null
                    ? engine.id().equals(fitment.engine())
                    : car != null && car.id().equals(fitment.car());
        }

        boolean has(Position position) {
            @Nullable
            Id<EngineDesign> design = engine == null ? null : engine.fact().design();
            return design != null
                    ? design.equals(position.design())
                    : car != null && car.id().equals(position.car());
        }

        @Nullable
        Id<Engine> engineId() {
            return engine == null ? null : engine.id();
        }

        @Nullable
        Id<Car> carId() {
            return car == null ? null : car.id();
        }

        String name() {
            return engine != null
                    ? engine.fact().number()
                    : car != null ? car.fact().name() : "";
        }
    }

    /** What the field holds when this engine is picked. */
    static String key(Id<Engine> engine) {
        return ENGINE + engine.text();
    }

    static List<Choice> choices(SheetSight sight) {
        List<Choice> choices = new ArrayList<>();
        for (Entry<Engine> engine : sight.facts().of(Engine.class).where(e -> true)) {
            choices.add(Choice.of(ENGINE + engine.id().text(), SheetWord.ENGINE, engine.fact()));
        }
        for (Entry<Car> car : sight.facts().of(Car.class).where(c -> true)) {
            choices.add(Choice.of(CAR + car.id().text(), SheetWord.CAR, car.fact()));
        }
        return choices;
    }

    /** What the field holds when the place of this fitment is picked. */
    static String key(Fitment fitment) {
        Id<Engine> engine = fitment.engine();
        Id<Car> car = fitment.car();
        return engine != null ? ENGINE + engine.text() : car != null ? CAR + car.text() : "";
    }

    static Optional<Place> place(SheetSight sight, String key) {
        if (key.startsWith(ENGINE)) {
            return sight.find(Engine.class, key.substring(ENGINE.length())).map(engine -> new Place(engine, null));
        }
        return key.startsWith(CAR)
                ? sight.find(Car.class, key.substring(CAR.length())).map(car -> new Place(null, car))
                : Optional.empty();
    }

    /** What is picked, or null; it has to be picked, and to be there still. */
    static @Nullable Place read(ReadSheet in, SheetField field) {
        String key = in.needed(field);
        Place place = place(in.sight(), key).orElse(null);
        if (place == null && !key.isEmpty()) {
            in.wrong(field, ProblemKind.NOT_FOUND, RecordTypes.of(Engine.class), key);
        }
        return place;
    }

    /** The positions of a place, in their turn. */
    static List<Choice> positions(SheetSight sight, Place place) {
        return sight.facts().of(Position.class).where(place::has).stream()
                .sorted(Comparator.comparingInt(position -> position.fact().ordinal()))
                .map(position -> Choice.of(position.id().text(), position.fact()))
                .toList();
    }

    /** What sits in a position of a place at a moment. */
    static Optional<Entry<Fitment>> in(SheetSight sight, Place place, Id<Position> position, Moment at) {
        return fitted(
                sight, fitment -> place.holds(fitment) && fitment.position().equals(position), at);
    }

    /** What is the first to go into a position of a place at a moment or after it. */
    static Optional<Entry<Fitment>> nextIn(SheetSight sight, Place place, Id<Position> position, Moment at) {
        return sight
                .facts()
                .of(Fitment.class)
                .where(fitment -> place.holds(fitment)
                        && fitment.position().equals(position)
                        && !fitment.from().isBefore(at))
                .stream()
                .min(Comparator.comparing(fitment -> fitment.fact().from()));
    }

    /** Fitments that go on at a moment, in the order they were written. */
    static List<Entry<Fitment>> goingOn(SheetSight sight, Moment at) {
        return sight.facts().of(Fitment.class).where(fitment -> goesOn(fitment, at));
    }

    /** The place of a fitment, by its name. */
    static String name(SheetSight sight, Fitment fitment) {
        Id<Engine> engine = fitment.engine();
        Id<Car> car = fitment.car();
        return engine != null ? sight.name(Engine.class, engine) : car != null ? sight.name(Car.class, car) : "";
    }

    static Fitment ended(Fitment fitment, Moment at, String why, String condition) {
        return new Fitment(
                fitment.part(),
                fitment.engine(),
                fitment.car(),
                fitment.position(),
                fitment.from(),
                at,
                fitment.buildIn(),
                fitment.buildOut(),
                why,
                condition,
                fitment.borrowed());
    }

    private static Optional<Entry<Fitment>> fitted(SheetSight sight, Predicate<Fitment> asked, Moment at) {
        return sight.facts().of(Fitment.class).where(fitment -> asked.test(fitment) && goesOn(fitment, at)).stream()
                .findFirst();
    }

    private static boolean goesOn(Fitment fitment, Moment at) {
        Moment to = fitment.to();
        return fitment.from().isBefore(at) && (to == null || at.isBefore(to));
    }
}
