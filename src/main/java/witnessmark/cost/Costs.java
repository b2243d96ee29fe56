package witnessmark.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.NoRate;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.domain.Car;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostLine;
import witnessmark.domain.CostShare;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.Money;

/**
 * Cuts every cost line into pieces, each counted in one place, so that whatever is asked for is a sum of pieces and
 * nothing is in it twice.
 *
 * <p>A line that names an incident is owed to it. One that names an event which a car missed, or spoiled, because of
 * incidents is shared among them by the shares that were entered; what is left is running. What was carried on is in no
 * total while it can still be used; once used it belongs to where it was used, and once its last day has passed unused
 * it is lost where the line belongs.
 */
public final class Costs {
    private final Facts facts;
    private final AsOf asOf;
    private final Currency home;
    private final Weekends weekends;
    private final Map<Id<CostLine>, List<CostShare>> shares = new HashMap<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final List<NoRate> noRate = new ArrayList<>();

    private Costs(Facts facts, AsOf asOf) {
        this.facts = facts;
        this.asOf = asOf;
        this.home = HomeCurrency.of(facts);
        this.weekends = new Weekends(facts, asOf);
        facts.of(CostShare.class)
                .inForce()
                .map(Entry::fact)
                .forEach(share -> shares.computeIfAbsent(share.line(), line -> new ArrayList<>())
                        .add(share));
    }

    /** All costs up to the end of a day. */
    public static CostBook asOf(Facts facts, AsOf asOf) {
        Costs costs = new Costs(facts, asOf);
        facts.of(CostLine.class)
                .inForce()
                .filter(line -> !line.fact().day().isAfter(asOf.day()))
                .forEach(costs::cut);
        return new CostBook(costs.home, costs.pieces, costs.noRate);
    }

    /**
     * An amount in the home currency.
     *
     * @param rate units of the home currency for one, or null in the home currency
     * @return empty when it is in another currency and nobody wrote down a rate
     */
    public static Optional<Money> home(Money amount, @Nullable BigDecimal rate, Currency home) {
        if (amount.currency().equals(home)) {
            return Optional.of(amount);
        }
        return rate == null ? Optional.empty() : Optional.of(amount.in(home, rate));
    }

    private void cut(Entry<CostLine> entry) {
        CostLine line = entry.fact();
        Optional<Money> paid = home(line.paid(), line.rate(), home);
        if (paid.isEmpty()) {
            noRate.add(new NoRate(entry.id(), line.paid()));
            return;
        }
        Money back = home(line.recovered(), line.rate(), home).orElseThrow();
        Money carried = home(line.carried(), line.rate(), home).orElseThrow();
        Optional<Id<Incident>> owed = owedTo(line);
        Money net = paid.get().minus(back).minus(carried);
        share(entry, new Part(net, line.day(), line.event(), owed.orElse(null), false));
        if (!carried.isNone()) {
            share(entry, carriedOn(line, carried, owed.orElse(null)));
        }
    }

    private Part carriedOn(CostLine line, Money carried, @Nullable Id<Incident> owed) {
        LocalDate used = line.carriedUsed();
        LocalDate until = line.carriedUntil();
        if (used != null && !used.isAfter(asOf.day())) {
            return new Part(carried, used, line.carriedTo(), null, false);
        }
        if (until != null && until.isBefore(asOf.day())) {
            return new Part(carried, until.plusDays(1), line.event(), owed, false);
        }
        return new Part(carried, line.day(), line.event(), owed, true);
    }

    /** The incident that brought it, as long as that stands. */
    private Optional<Id<Incident>> owedTo(CostLine line) {
        return Optional.ofNullable(line.incident())
                .filter(id ->
                        facts.of(Incident.class).find(id).filter(Entry::inForce).isPresent());
    }

    /** To the cars it is shared between, to the minor unit. */
    private void share(Entry<CostLine> entry, Part part) {
        List<CostShare> between = shares.getOrDefault(entry.id(), List.of());
        if (entry.fact().car() != null || between.isEmpty()) {
            place(entry, part, entry.fact().car(), part.amount());
            return;
        }
        List<Long> each = LargestRemainder.split(
                part.amount().minor(),
                between.stream().map(share -> (long) share.parts()).toList());
        for (int i = 0; i < each.size(); i++) {
            place(entry, part, between.get(i).car(), new Money(each.get(i), home));
        }
    }

    /** Where one car's part of it counts: once, or shared out among what spoiled the weekend. */
    private void place(Entry<CostLine> entry, Part part, @Nullable Id<Car> car, Money amount) {
        boolean valued = entry.fact().basis() == CostBasis.VALUED;
        Id<Event> event = part.event();
        if (part.kept()) {
            add(entry, part, car, amount, Place.KEPT, part.incident());
        } else if (part.incident() != null) {
            add(entry, part, car, amount, valued ? Place.LABOUR : Place.CASH, part.incident());
        } else if (valued || car == null || event == null) {
            add(entry, part, car, amount, valued ? Place.OWN_WORK : Place.RUNNING, null);
        } else {
            for (Weekends.Owed owed : weekends.shareOut(event, car, amount)) {
                add(entry, part, car, owed.amount(), owed.place(), owed.incident());
            }
        }
    }

    private void add(
            Entry<CostLine> entry,
            Part part,
            @Nullable Id<Car> car,
            Money amount,
            Place place,
            @Nullable Id<Incident> incident) {
        CostLine line = entry.fact();
        pieces.add(new Piece(
                entry.id(), place, part.day(), amount, car, part.event(), incident, line.planned(), line.allocated()));
    }

    /**
     * A part of a line before it is shared out.
     *
     * @param amount in the home currency
     * @param day the day it counts for
     * @param event for which event, or null
     * @param incident owed to which, or null
     * @param kept still to be used
     */
    private record Part(
            Money amount,
            LocalDate day,
            @Nullable Id<Event> event,
            @Nullable Id<Incident> incident,
            boolean kept) {}
}
