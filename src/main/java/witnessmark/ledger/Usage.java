package witnessmark.ledger;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.Part;
import witnessmark.domain.WorkKind;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LimitUse;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** How much of a limit is used where it falls, and since when. */
final class Usage {
    private static final Set<WorkKind> CRACK_TESTS = Set.of(WorkKind.CRACK_TEST);
    private static final Set<WorkKind> SKIMS = Set.of(WorkKind.SKIM);

    private final LifeLedger ledger;
    private final RunOns runOns;
    private final TorqueCycles torqueCycles;

    Usage(LifeLedger ledger) {
        this.ledger = ledger;
        this.runOns = RunOns.of(ledger.facts(), ledger.asOf());
        this.torqueCycles = new TorqueCycles(ledger);
    }

    LimitUse of(Entry<Limit> limit, Seat seat) {
        Moment since = since(limit.fact(), seat);
        Life used;
        long amount = limit.fact().amount();
        if (limit.fact().counter() == Counter.AGE) {
            LocalDate from = since != null ? since.day() : made(seat.part());
            used = age(from == null ? bought(seat.part()) : from, from != null);
            amount = days(from == null ? ledger.asOf().day() : from, amount);
        } else if (limit.fact().counter() == Counter.USES) {
            used = uses(seat.part());
        } else if (limit.fact().counter() == Counter.TORQUE_CYCLES) {
            used = seat.part() == null ? Life.none(Counter.TORQUE_CYCLES) : torqueCycles.of(seat.part(), since);
        } else {
            used = life(limit.fact(), seat, since);
        }
        return new LimitUse(
                limit,
                seat.part(),
                seat.engine(),
                seat.car(),
                seat.position(),
                used,
                amount,
                since,
                runOns.past(limit.id(), seat));
    }

    private @Nullable Moment since(Limit limit, Seat seat) {
        if (seat.part() == null) {
            return rebuilt(seat.engine());
        }
        return switch (limit.action()) {
            case RENEW -> null;
            case REBUILD -> rebuilt(seat.engine());
            case LOOK -> worked(seat.part(), Limits.LOOKS);
            case CRACK_TEST -> worked(seat.part(), CRACK_TESTS);
            case SKIM -> worked(seat.part(), SKIMS);
        };
    }

    private @Nullable Moment rebuilt(@Nullable Id<Engine> engine) {
        return engine == null
                ? null
                : ledger.lastClosed(engine, Limits.REBUILD)
                        .map(build -> build.fact().closed())
                        .orElse(null);
    }

    private @Nullable Moment worked(Id<Part> part, Set<WorkKind> resets) {
        return ledger.lastWork(part, resets).map(work -> work.fact().at()).orElse(null);
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

    /** Days from a day to the day looked at; a least when the day it was made is not written down. */
    private Life age(@Nullable LocalDate from, boolean known) {
        long days = from == null
                ? 0
                : Math.max(0, ChronoUnit.DAYS.between(from, ledger.asOf().day()));
        return new Life(Counter.AGE, days, 0, 0, 0, 0, !known, 0, 0);
    }

    private static long days(LocalDate from, long months) {
        return ChronoUnit.DAYS.between(from, from.plusMonths(months));
    }

    /** How often it was taken off again, and before the logbook as carried in; the use it is in now is not used yet. */
    private Life uses(@Nullable Id<Part> part) {
        if (part == null) {
            return Life.none(Counter.USES);
        }
        long ended = ledger.stays(part).stream()
                .filter(stay -> stay.to() != null
                        && stay.to().equals(stay.fitment().fact().to())) // being split off ends no use
                .count();
        return ledger.carriedIn(part, Counter.USES).plus(new Life(Counter.USES, ended, 0, 0, 0, 0, false, 0, 0));
    }

    private @Nullable LocalDate made(@Nullable Id<Part> part) {
        return part == null ? null : ledger.facts().of(Part.class).get(part).madeOn();
    }

    private @Nullable LocalDate bought(@Nullable Id<Part> part) {
        return part == null ? null : ledger.facts().of(Part.class).get(part).boughtOn();
    }
}
