package witnessmark.logbook.standing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.PartDesign;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Whereabouts;
import witnessmark.ledger.result.Stay;
import witnessmark.ledger.result.Where;
import witnessmark.quantity.Moment;

/** Sees which fitted parts are borrowed, where each goes back to, and when it is wanted there. */
final class SeeBorrowed {
    private final LifeLedger ledger;
    private final Facts facts;
    private final Moment now;

    SeeBorrowed(LifeLedger ledger) {
        this.ledger = ledger;
        this.facts = ledger.facts();
        this.now = ledger.asOf().last();
    }

    /** Those wanted soonest first, then in the order they were borrowed. */
    List<StillOpen.ToGoBack> all() {
        if (facts.of(Fitment.class)
                .inForce()
                .noneMatch(fitment -> fitment.fact().borrowed())) {
            return List.of();
        }
        return new Whereabouts(ledger)
                .all().stream()
                        .filter(Where::borrowed)
                        .map(this::toGoBack)
                        .sorted(Comparator.comparing((StillOpen.ToGoBack each) -> each.wanted() == null
                                        ? LocalDate.MAX
                                        : each.wanted().firstDay())
                                .thenComparing(each -> each.fitment().fact().from()))
                        .toList();
    }

    private StillOpen.ToGoBack toGoBack(Where where) {
        Entry<Fitment> fitment = Objects.requireNonNull(where.fitment());
        Stay before = where.before();
        Fitment home = before == null ? null : before.fitment().fact();
        Event wanted = home == null ? null : wanted(home).orElse(null);
        return new StillOpen.ToGoBack(
                fitment,
                where.part().fact().mark(),
                facts.of(PartDesign.class).get(where.part().fact().design()).kind(),
                place(fitment.fact()),
                home == null ? "" : place(home),
                wanted,
                wanted != null && !ledger.asOf().day().isBefore(wanted.firstDay()));
    }

    private String place(Fitment fitment) {
        Id<Engine> engine = fitment.engine();
        return engine != null
                ? facts.of(Engine.class).get(engine).number()
                : facts.of(Car.class).get(Objects.requireNonNull(fitment.car())).name();
    }

    /** The first event not over for which the engine or car it came from is entered. */
    private Optional<Event> wanted(Fitment home) {
        Id<Car> car = home.engine() == null ? home.car() : carOf(home.engine());
        return facts
                .of(EventEntry.class)
                .where(entry -> entry.engine() != null
                        ? entry.engine().equals(home.engine())
                        : entry.car().equals(car))
                .stream()
                .flatMap(entry -> facts.of(Event.class).find(entry.fact().event()).stream())
                .map(Entry::fact)
                .filter(event -> !event.lastDay().isBefore(ledger.asOf().day()))
                .min(Comparator.comparing(Event::firstDay));
    }

    private @Nullable Id<Car> carOf(Id<Engine> engine) {
        return ledger.carOf(engine, now).map(stay -> stay.fact().car()).orElse(null);
    }
}
