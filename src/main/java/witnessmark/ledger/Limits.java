package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.WorkKind;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LimitState;
import witnessmark.ledger.result.LimitUse;
import witnessmark.quantity.Moment;

/**
 * How near every limit is as of the ledger's day. A limit to renew is judged by the part's whole life; a limit to look
 * by what it ran since it was last looked at, crack tested or measured; an engine's limit by what it ran since its
 * bottom end was last opened and closed; a car's by all it ran. Months, uses and thickness are not counted here.
 */
public final class Limits {
    /** What counts as having looked. */
    public static final Set<WorkKind> LOOKS = Set.of(WorkKind.LOOK, WorkKind.CRACK_TEST, WorkKind.MEASURE);

    /** What a build must have opened to count as a rebuild. */
    public static final Set<Zone> REBUILD = Set.of(Zone.BOTTOM_END);

    private final LifeLedger ledger;
    private final List<Entry<Limit>> standing;

    public Limits(LifeLedger ledger) {
        this.ledger = ledger;
        this.standing =
                ledger.facts().of(Limit.class).where(limit -> ledger.asOf().stands(limit));
    }

    /** Every limit on an engine and on what is fitted in it, worst first. */
    public List<LimitUse> nearest(Id<Engine> engine) {
        return worstFirst(uses(seats(engine, ledger.asOf().last())));
    }

    /** Every limit on a car and on what is fitted to it, its engine aside, worst first. */
    public List<LimitUse> nearestInCar(Id<Car> car) {
        return worstFirst(uses(seatsInCar(car, ledger.asOf().last())));
    }

    /** Every limit on a part where it is, or on the shelf, worst first. */
    public List<LimitUse> nearestOf(Id<Part> part) {
        Moment now = ledger.asOf().last();
        Entry<Fitment> there = ledger.whereIs(part, now).orElse(null);
        Fitment fitment = there == null ? null : there.fact();
        return worstFirst(uses(List.of(seat(part, fitment, now))));
    }

    /** Every limit on every engine and car and on what is fitted in them, worst first. */
    public List<LimitUse> nearest() {
        Moment now = ledger.asOf().last();
        List<LimitUse> all = new ArrayList<>();
        ledger.facts().of(Engine.class).inForce().forEach(engine -> all.addAll(uses(seats(engine.id(), now))));
        ledger.facts().of(Car.class).inForce().forEach(car -> all.addAll(uses(seatsInCar(car.id(), now))));
        return worstFirst(all);
    }

    /** The engine and what was fitted in it at a moment. */
    List<Seat> seats(Id<Engine> engine, Moment at) {
        List<Seat> seats = new ArrayList<>();
        seats.add(new Seat(null, null, null, null, engine, design(engine), car(engine, at)));
        ledger.fittedAt(engine, at)
                .values()
                .forEach(fitted -> seats.add(seat(fitted.fact().part(), fitted.fact(), at)));
        return seats;
    }

    /** The car and what was fitted to it at a moment. */
    List<Seat> seatsInCar(Id<Car> car, Moment at) {
        List<Seat> seats = new ArrayList<>();
        seats.add(new Seat(null, null, null, null, null, null, car));
        ledger.fittedInCar(car, at)
                .values()
                .forEach(fitted -> seats.add(seat(fitted.fact().part(), fitted.fact(), at)));
        return seats;
    }

    /** How much is used of each limit that holds there. */
    List<LimitUse> uses(List<Seat> seats) {
        List<LimitUse> uses = new ArrayList<>();
        for (Seat seat : seats) {
            for (Entry<Limit> limit : LimitScope.holding(standing, seat)) {
                uses.add(use(limit, seat));
            }
        }
        return uses;
    }

    /**
     * How bad a use is: over first, and with it what is not known on parts that can wreck the engine, then what else
     * is not known, then by the share used.
     */
    Comparator<LimitUse> worst() {
        return Comparator.comparingInt(this::gravity)
                .thenComparing((one, other) -> other.compareShare(one))
                .thenComparing(use -> use.limit().id());
    }

    private List<LimitUse> worstFirst(List<LimitUse> uses) {
        return uses.stream().sorted(worst()).toList();
    }

    private int gravity(LimitUse use) {
        if (use.state() == LimitState.NOT_KNOWN && use.part() != null && canWreck(use.part())) {
            return LimitState.OVER.ordinal();
        }
        return use.state().ordinal();
    }

    private LimitUse use(Entry<Limit> limit, Seat seat) {
        Limit fact = limit.fact();
        Moment since = since(fact, seat);
        return new LimitUse(
                limit, seat.part(), seat.engine(), seat.car(), seat.position(), life(fact, seat, since), since);
    }

    private @Nullable Moment since(Limit limit, Seat seat) {
        if (seat.part() != null) {
            return limit.action() == LimitAction.RENEW
                    ? null
                    : ledger.lastWork(seat.part(), LOOKS)
                            .map(work -> work.fact().at())
                            .orElse(null);
        }
        return seat.engine() == null
                ? null
                : ledger.lastClosed(seat.engine(), REBUILD)
                        .map(build -> build.fact().closed())
                        .orElse(null);
    }

    private Life life(Limit limit, Seat seat, @Nullable Moment since) {
        if (seat.part() != null) {
            return since == null
                    ? ledger.life(seat.part(), limit.counter())
                    : ledger.since(seat.part(), limit.counter(), since);
        }
        if (seat.engine() != null) {
            return since == null
                    ? ledger.engineLife(seat.engine(), limit.counter())
                    : ledger.engineSince(seat.engine(), limit.counter(), since);
        }
        return seat.car() == null ? Life.none(limit.counter()) : ledger.carLife(seat.car(), limit.counter());
    }

    private Seat seat(Id<Part> part, @Nullable Fitment fitment, Moment at) {
        Id<PartDesign> is = ledger.facts()
                .of(Part.class)
                .find(part)
                .map(entry -> entry.fact().design())
                .orElse(null);
        PartDesign design = partDesign(part);
        Id<Engine> engine = fitment == null ? null : fitment.engine();
        return new Seat(
                part,
                is,
                design == null ? null : design.kind(),
                fitment == null ? null : fitment.position(),
                engine,
                engine == null ? null : design(engine),
                fitment == null ? null : engine == null ? fitment.car() : car(engine, at));
    }

    private boolean canWreck(Id<Part> part) {
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
