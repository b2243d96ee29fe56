package witnessmark.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingLimit;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.ledger.result.ReadingUse.Broken;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * How the last readings stand to their limits. Place by place the last reading counts; it is held against the last
 * reading before it that was marked as baseline, else against the first one of that place. The age is that of the place
 * read longest ago.
 */
final class ReadingUses {
    private final LifeLedger ledger;
    private final RunOns runOns;
    private final List<Entry<ReadingLimit>> limits;
    private final Map<Id<?>, List<ReadingSeries>> byThing = new HashMap<>();

    ReadingUses(LifeLedger ledger) {
        this.ledger = ledger;
        this.runOns = RunOns.of(ledger.facts(), ledger.asOf());
        this.limits = ledger.facts()
                .of(ReadingLimit.class)
                .where(limit -> ledger.asOf().stands(limit));
        if (!limits.isEmpty()) {
            ReadingSeries.all(ledger)
                    .forEach(series -> byThing.computeIfAbsent(series.on(), id -> new ArrayList<>())
                            .add(series));
        }
    }

    /** Every limit of readings that falls on what sits there. */
    List<ReadingUse> of(Seat seat) {
        List<ReadingUse> uses = new ArrayList<>();
        for (Entry<ReadingLimit> limit : limits) {
            if (falls(limit.fact(), seat)) {
                uses.add(use(limit, seat));
            }
        }
        return uses;
    }

    private static boolean falls(ReadingLimit limit, Seat seat) {
        boolean onWhat = limit.partKind() == null
                ? seat.part() == null && seat.engine() != null
                : limit.partKind() == seat.partKind();
        return onWhat && ReadingLimits.meant(limit, seat.engine(), seat.design());
    }

    private ReadingUse use(Entry<ReadingLimit> limit, Seat seat) {
        Id<?> thing = Objects.requireNonNull(seat.part() != null ? seat.part() : seat.engine());
        Entry<Reading> worst = null;
        Entry<Reading> worstBase = null;
        Broken broken = Broken.NONE;
        Moment oldest = null;
        for (ReadingSeries place : byThing.getOrDefault(thing, List.of())) {
            if (place.kind() != limit.fact().kind()) {
                continue;
            }
            Entry<Reading> last = place.last();
            Entry<Reading> base = place.baseline();
            Broken breaks = ReadingLimits.broken(limit.fact(), last.fact(), base.fact());
            if (worst == null || worse(limit.fact(), breaks, last.fact(), broken, worst.fact())) {
                worst = last;
                worstBase = base;
                broken = breaks;
            }
            oldest = oldest == null || last.fact().at().isBefore(oldest)
                    ? last.fact().at()
                    : oldest;
        }
        return new ReadingUse(
                limit,
                seat.part(),
                seat.engine(),
                worst,
                worstBase,
                broken,
                since(seat, oldest),
                ReadingLimits.runOn(runOns, ledger, limit.id(), seat.part(), seat.engine()));
    }

    private Life since(Seat seat, @Nullable Moment read) {
        if (seat.part() != null) {
            return read == null
                    ? ledger.life(seat.part(), Counter.RUNNING)
                    : ledger.since(seat.part(), Counter.RUNNING, read);
        }
        Id<Engine> engine = Objects.requireNonNull(seat.engine());
        return read == null
                ? ledger.engineLife(engine, Counter.RUNNING)
                : ledger.engineSince(engine, Counter.RUNNING, read);
    }

    /** Whether one stands worse than another: by what it breaks, then by its grade, then by its figure. */
    private static boolean worse(ReadingLimit limit, Broken one, Reading reading, Broken other, Reading than) {
        if (one != other) {
            return one.ordinal() < other.ordinal();
        }
        if (reading.grade() != null && than.grade() != null) {
            return reading.grade().badness() > than.grade().badness();
        }
        if (reading.value() == null || than.value() == null) {
            return false;
        }
        boolean lowIsBad = limit.atLeast() != null || limit.fallAtMost() != null;
        return lowIsBad ? reading.value() < than.value() : reading.value() > than.value();
    }
}
