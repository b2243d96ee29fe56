package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.quantity.Moment;

/**
 * What changes when an engine goes into a car at a moment, perhaps written down later: the engine that was there comes
 * out, the engine leaves the car it was in, and it stays for as long as what was there before would have. An engine that
 * is written down in that car from another time of the same day is moved to this time.
 */
final class EngineSwap {
    private final Facts facts;
    private final Id<Engine> engine;
    private final Id<Car> car;
    private final Moment at;
    private final Optional<Entry<EngineInCar>> there;
    private final Optional<Entry<EngineInCar>> comesOut;
    private final Optional<Entry<EngineInCar>> leaves;

    EngineSwap(Facts facts, Id<Engine> engine, Id<Car> car, Moment at) {
        this.facts = facts;
        this.engine = engine;
        this.car = car;
        this.at = at;
        this.there = first(stay -> isThere(stay) && (covers(stay) || sameDay(stay)));
        this.comesOut = there.isPresent()
                ? first(stay -> stay.car().equals(car) && endsWhere(stay))
                : first(stay -> stay.car().equals(car) && covers(stay));
        this.leaves = there.isPresent()
                ? first(stay -> stay.engine().equals(engine) && !stay.car().equals(car) && endsWhere(stay))
                : first(stay -> stay.engine().equals(engine) && !stay.car().equals(car) && covers(stay));
    }

    /** The stay of the engine that comes out, or came out. */
    Optional<Entry<EngineInCar>> comesOut() {
        return comesOut;
    }

    /** The stay of the engine in the car it leaves, or left. */
    Optional<Entry<EngineInCar>> leaves() {
        return leaves;
    }

    /** The stay whose beginning is moved to this moment. */
    Optional<Entry<EngineInCar>> moved() {
        return there.filter(stay -> sameDay(stay.fact()) && !stay.fact().from().equals(at));
    }

    /** The stay of the engine in this very car, when there is nothing to change. */
    Optional<Entry<EngineInCar>> already() {
        return there.filter(stay -> moved().isEmpty());
    }

    /** Until when it stays: null for as long as nothing else is written. */
    @Nullable
    Moment until() {
        if (there.isPresent()) {
            return there.get().fact().to();
        }
        Moment end = comesOut.map(stay -> stay.fact().to()).orElse(null);
        Moment next = next().map(stay -> stay.fact().from()).orElse(null);
        return end == null || (next != null && next.isBefore(end)) ? next : end;
    }

    /** What is written down in this car, or of this engine, as beginning at this moment or after it, the first. */
    Optional<Entry<EngineInCar>> next() {
        return facts
                .of(EngineInCar.class)
                .where(stay -> (stay.car().equals(car) || stay.engine().equals(engine))
                        && !stay.from().isBefore(at))
                .stream()
                .min(Comparator.comparing(stay -> stay.fact().from()));
    }

    /** A stay that would end before it begins, if this were written. */
    Optional<Entry<EngineInCar>> cutToNothing() {
        Stream<Entry<EngineInCar>> before = Stream.of(comesOut, leaves).flatMap(Optional::stream);
        return Stream.concat(before.filter(stay -> !stay.fact().from().isBefore(at)), turnedRound())
                .findFirst();
    }

    private Stream<Entry<EngineInCar>> turnedRound() {
        Moment until = until();
        boolean none = until != null && !at.isBefore(until);
        return none ? Stream.concat(there.stream(), next().stream()) : Stream.empty();
    }

    /** Runs of the car that are written on another engine than the one that was in it by this. */
    List<Entry<Run>> runs() {
        Moment from = there.map(stay -> earlier(at, stay.fact().from())).orElse(at);
        Moment to = there.map(stay -> later(at, stay.fact().from())).orElse(until());
        Id<Engine> takes = takes();
        return facts.of(Run.class)
                .where(run -> car.equals(run.car())
                        && !run.engine().equals(takes)
                        && !run.start().isBefore(from)
                        && (to == null || run.start().isBefore(to)));
    }

    /** The engine that takes these runs: this one, or the one before it when the change is moved to a later time. */
    Id<Engine> takes() {
        boolean goesInLater =
                there.filter(stay -> stay.fact().from().isBefore(at)).isPresent();
        return goesInLater ? comesOut.map(stay -> stay.fact().engine()).orElse(engine) : engine;
    }

    /**
     * The stays as they are to stand, what ends first.
     *
     * @param note of the new stay; a moved one keeps its own where this is empty
     */
    void write(ReadSheet in, SheetField field, String note) {
        for (Entry<EngineInCar> stay : both()) {
            EngineInCar was = stay.fact();
            in.change(field, stay, new EngineInCar(was.engine(), was.car(), was.from(), at, was.note()));
        }
        Entry<EngineInCar> moved = moved().orElse(null);
        if (moved == null) {
            in.make(field, new EngineInCar(engine, car, at, until(), note));
        } else {
            String kept = note.isEmpty() ? moved.fact().note() : note;
            in.change(
                    field, moved, new EngineInCar(engine, car, at, moved.fact().to(), kept));
        }
    }

    private List<Entry<EngineInCar>> both() {
        List<Entry<EngineInCar>> both = new ArrayList<>();
        comesOut.ifPresent(both::add);
        leaves.ifPresent(both::add);
        return both;
    }

    private Optional<Entry<EngineInCar>> first(Predicate<EngineInCar> asked) {
        return facts.of(EngineInCar.class).where(asked).stream().findFirst();
    }

    private boolean isThere(EngineInCar stay) {
        return stay.engine().equals(engine) && stay.car().equals(car);
    }

    private boolean sameDay(EngineInCar stay) {
        return stay.from().day().equals(at.day());
    }

    private boolean covers(EngineInCar stay) {
        Moment to = stay.to();
        return !at.isBefore(stay.from()) && (to == null || at.isBefore(to));
    }

    /** Whether it ended when the engine, that is there already, went in. */
    private boolean endsWhere(EngineInCar stay) {
        return there.isPresent() && there.get().fact().from().equals(stay.to());
    }

    private static Moment earlier(Moment one, Moment other) {
        return one.isBefore(other) ? one : other;
    }

    private static Moment later(Moment one, Moment other) {
        return one.isBefore(other) ? other : one;
    }
}
