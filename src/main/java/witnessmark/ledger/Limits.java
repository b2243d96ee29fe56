package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.Part;
import witnessmark.domain.WorkKind;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.MarkState;
import witnessmark.quantity.Moment;

/**
 * How near every limit is as of the ledger's day. A limit to renew is judged by the part's whole life; a limit to look
 * by what it ran since it was last looked at, crack tested or measured; one to test for cracks since it was last crack
 * tested; an engine's limit by what it ran since its bottom end was last opened and closed; a car's by all it ran. Age
 * counts from the day a part was made, uses are its fitments. Thickness is not counted here.
 */
public final class Limits {
    /** What counts as having looked. */
    public static final Set<WorkKind> LOOKS = Set.of(WorkKind.LOOK, WorkKind.CRACK_TEST, WorkKind.MEASURE);

    /** What a build must have opened to count as a rebuild. */
    public static final Set<Zone> REBUILD = Set.of(Zone.BOTTOM_END);

    private final LifeLedger ledger;
    private final List<Entry<Limit>> standing;
    private final Usage usage;
    private final Seats seats;

    public Limits(LifeLedger ledger) {
        this.ledger = ledger;
        this.usage = new Usage(ledger);
        this.seats = new Seats(ledger);
        this.standing =
                ledger.facts().of(Limit.class).where(limit -> ledger.asOf().stands(limit));
    }

    /** Every limit on an engine and on what is fitted in it, worst first. */
    public List<LimitUse> nearest(Id<Engine> engine) {
        return worstFirst(uses(seats.of(engine, ledger.asOf().last())));
    }

    /** Every limit on a car and on what is fitted to it, its engine aside, worst first. */
    public List<LimitUse> nearestInCar(Id<Car> car) {
        return worstFirst(uses(seats.ofCar(car, ledger.asOf().last())));
    }

    /** Every limit on a part where it is, or on the shelf, worst first. */
    public List<LimitUse> nearestOf(Id<Part> part) {
        Moment now = ledger.asOf().last();
        Entry<Fitment> there = ledger.whereIs(part, now).orElse(null);
        Fitment fitment = there == null ? null : there.fact();
        return worstFirst(uses(List.of(seats.seat(part, fitment, now))));
    }

    /** Every limit on every engine and car and on what is fitted in them, worst first. */
    public List<LimitUse> nearest() {
        Moment now = ledger.asOf().last();
        List<LimitUse> all = new ArrayList<>();
        ledger.facts().of(Engine.class).inForce().forEach(engine -> all.addAll(uses(seats.of(engine.id(), now))));
        ledger.facts().of(Car.class).inForce().forEach(car -> all.addAll(uses(seats.ofCar(car.id(), now))));
        return worstFirst(all);
    }

    /** What limits may fall on. */
    Seats seats() {
        return seats;
    }

    /** How much is used of each limit that holds there. */
    List<LimitUse> uses(List<Seat> there) {
        List<LimitUse> uses = new ArrayList<>();
        for (Seat seat : there) {
            for (Entry<Limit> limit : LimitScope.holding(standing, seat)) {
                uses.add(usage.of(limit, seat));
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
        if (use.state() == MarkState.NOT_KNOWN && use.part() != null && seats.canWreck(use.part())) {
            return MarkState.OVER.ordinal();
        }
        return use.state().ordinal();
    }
}
