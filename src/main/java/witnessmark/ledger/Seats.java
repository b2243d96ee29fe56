package witnessmark.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.quantity.Moment;

/** What limits may fall on, and where it sits. */
final class Seats {
    private final LifeLedger ledger;

    Seats(LifeLedger ledger) {
        this.ledger = ledger;
    }

    /** The engine and what was fitted in it at a moment. */
    List<Seat> of(Id<Engine> engine, Moment at) {
        List<Seat> seats = new ArrayList<>();
        seats.add(new Seat(null, null, null, null, engine, design(engine), car(engine, at)));
        ledger.fittedAt(engine, at)
                .values()
                .forEach(fitted -> seats.add(seat(fitted.fact().part(), fitted.fact(), at)));
        return seats;
    }

    /** The car and what was fitted to it at a moment. */
    List<Seat> ofCar(Id<Car> car, Moment at) {
        List<Seat> seats = new ArrayList<>();
        seats.add(new Seat(null, null, null, null, null, null, car));
        ledger.fittedInCar(car, at)
                .values()
                .forEach(fitted -> seats.add(seat(fitted.fact().part(), fitted.fact(), at)));
        return seats;
    }

    /** A part where it sits; on the shelf it is held against the limits of engines like the one it was in last. */
    Seat seat(Id<Part> part, @Nullable Fitment fitment, Moment at) {
        Id<PartDesign> is = ledger.facts()
                .of(Part.class)
                .find(part)
                .map(entry -> entry.fact().design())
                .orElse(null);
        Id<Engine> engine = fitment == null ? null : fitment.engine();
        Id<Engine> last = fitment == null ? lastEngine(part, at) : engine;
        return new Seat(
                part,
                is,
                kind(part),
                fitment == null ? null : fitment.position(),
                engine,
                last == null ? null : design(last),
                fitment == null ? null : engine == null ? fitment.car() : car(engine, at));
    }

    /** The engine a part on the shelf was in last, or null. */
    private @Nullable Id<Engine> lastEngine(Id<Part> part, Moment at) {
        return ledger.stays(part).stream()
                .filter(stay -> stay.from().isBefore(at))
                .map(stay -> stay.fitment().fact().engine())
                .filter(Objects::nonNull)
                .reduce((earlier, later) -> later)
                .orElse(null);
    }

    /** What kind of part it is, or null when nothing of it is written. */
    @Nullable
    PartKind kind(Id<Part> part) {
        PartDesign design = partDesign(part);
        return design == null ? null : design.kind();
    }

    /** Whether a part's failure can wreck the engine. */
    boolean canWreck(Id<Part> part) {
        PartDesign design = partDesign(part);
        return design != null && design.canWreck();
    }

    private @Nullable PartDesign partDesign(Id<Part> part) {
        return ledger.facts()
                .of(Part.class)
                .find(part)
                .flatMap(entry ->
                        ledger.facts().of(PartDesign.class).find(entry.fact().design()))
                .map(Entry::fact)
                .orElse(null);
    }

    private @Nullable Id<EngineDesign> design(Id<Engine> engine) {
        return ledger.facts()
                .of(Engine.class)
                .find(engine)
                .map(entry -> entry.fact().design())
                .orElse(null);
    }

    private @Nullable Id<Car> car(Id<Engine> engine, Moment at) {
        return ledger.carOf(engine, at).map(stay -> stay.fact().car()).orElse(null);
    }
}
