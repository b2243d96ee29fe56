package witnessmark.cost;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Place;
import witnessmark.domain.Car;
import witnessmark.domain.Cause;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.MissedRun;
import witnessmark.domain.MissedShare;
import witnessmark.domain.Run;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.Money;

/** Which share of which car's weekend is owed to which incident. */
final class Weekends {
    private final Map<Weekend, List<Share>> shares = new HashMap<>();

    Weekends(Facts facts, AsOf asOf) {
        facts.of(MissedShare.class).inForce().map(Entry::fact).forEach(share -> {
            boolean stands = facts.of(Incident.class)
                    .find(share.incident())
                    .filter(Entry::inForce)
                    .isPresent();
            if (stands) {
                missed(facts, share, asOf)
                        .or(() -> lost(facts, share, asOf))
                        .ifPresent(weekend -> shares.computeIfAbsent(weekend, key -> new ArrayList<>())
                                .add(new Share(share.incident(), share.share(), place(facts, share))));
            }
        });
    }

    /**
     * Shares an amount of one car's weekend out among the incidents that took some of it; what nobody took is running.
     * Shares of more than the whole are taken as parts of their sum.
     */
    List<Owed> shareOut(Id<Event> event, Id<Car> car, Money amount) {
        List<Share> all = shares.getOrDefault(new Weekend(event, car), List.of());
        if (all.isEmpty()) {
            return List.of(new Owed(Place.RUNNING, null, amount));
        }
        List<Long> weights = new ArrayList<>();
        all.forEach(share -> weights.add((long) share.share()));
        long taken = weights.stream().mapToLong(Long::longValue).sum();
        weights.add(Math.max(0, Cause.WHOLE - taken));
        List<Long> each = LargestRemainder.split(amount.minor(), weights);
        List<Owed> owed = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            owed.add(new Owed(all.get(i).place(), all.get(i).incident(), new Money(each.get(i), amount.currency())));
        }
        if (taken < Cause.WHOLE) {
            owed.add(new Owed(Place.RUNNING, null, new Money(each.get(all.size()), amount.currency())));
        }
        return owed;
    }

    private static Optional<Weekend> missed(Facts facts, MissedShare share, AsOf asOf) {
        return Optional.ofNullable(share.missed())
                .flatMap(id -> facts.of(MissedRun.class).find(id))
                .filter(entry -> entry.inForce() && asOf.counts(entry.fact().at()))
                .map(entry -> new Weekend(entry.fact().event(), entry.fact().car()));
    }

    private static Optional<Weekend> lost(Facts facts, MissedShare share, AsOf asOf) {
        return Optional.ofNullable(share.run())
                .flatMap(id -> facts.of(Run.class).find(id))
                .filter(entry -> entry.inForce() && asOf.counts(entry.fact().start()))
                .map(Entry::fact)
                .filter(run -> run.event() != null && run.car() != null)
                .map(run -> new Weekend(Objects.requireNonNull(run.event()), Objects.requireNonNull(run.car())));
    }

    /** An event that was not attended is missed; one that was is spoiled. */
    private static Place place(Facts facts, MissedShare share) {
        Id<MissedRun> missed = share.missed();
        return missed != null && facts.of(MissedRun.class).get(missed).planned() == null ? Place.MISSED : Place.SPOILED;
    }

    private record Weekend(Id<Event> event, Id<Car> car) {}

    private record Share(Id<Incident> incident, int share, Place place) {}

    /**
     * What one incident took of an amount.
     *
     * @param place missed, spoiled, or running
     * @param incident which one, or null for running
     * @param amount how much
     */
    record Owed(Place place, @Nullable Id<Incident> incident, Money amount) {}
}
