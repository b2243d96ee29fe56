package witnessmark.cost;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Refund;
import witnessmark.domain.Car;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.Money;

/**
 * What can be asked back, and until when.
 *
 * <p>A last day that is past is a reminder only where nobody had what was paid for: an entry that the car drove on is
 * used, and one it is still entered for will be. Of what came back in part for an event that is over, the rest was kept.
 */
public final class Refunds {
    private final Facts facts;
    private final AsOf asOf;

    private Refunds(Facts facts, AsOf asOf) {
        this.facts = facts;
        this.asOf = asOf;
    }

    /** Every cost of which something is still to come back, the first last day first. */
    public static List<Refund> open(Facts facts, AsOf asOf) {
        Refunds refunds = new Refunds(facts, asOf);
        return facts
                .of(CostLine.class)
                .where(line -> line.refundBy() != null && !line.day().isAfter(asOf.day()))
                .stream()
                .map(refunds::refund)
                .filter(refund -> refund.still().minor() > 0)
                .filter(refund -> !refund.late() || refunds.waitedFor(refund))
                .sorted(Comparator.comparing(Refund::by))
                .toList();
    }

    private Refund refund(Entry<CostLine> entry) {
        CostLine line = entry.fact();
        LocalDate by = Objects.requireNonNull(line.refundBy());
        Money still = line.paid().minus(line.carried()).minus(line.recovered());
        return new Refund(
                entry,
                find(Event.class, line.event()),
                find(Car.class, line.car()),
                by,
                ChronoUnit.DAYS.between(asOf.day(), by),
                still);
    }

    private boolean waitedFor(Refund late) {
        Event event = late.event();
        if (event == null) {
            return true;
        }
        CostLine line = late.line().fact();
        return event.lastDay().isBefore(asOf.day()) ? !late.begun() && !drove(line) : !entered(line);
    }

    private boolean drove(CostLine line) {
        return facts.of(Run.class)
                .inForce()
                .map(Entry::fact)
                .anyMatch(run -> Objects.equals(run.event(), line.event())
                        && ofCar(line, run.car())
                        && asOf.counts(run.start()));
    }

    private boolean entered(CostLine line) {
        return facts.of(EventEntry.class)
                .inForce()
                .map(Entry::fact)
                .anyMatch(entry -> entry.event().equals(line.event()) && ofCar(line, entry.car()));
    }

    /** What is for no car in particular is used by any. */
    private static boolean ofCar(CostLine line, @Nullable Id<Car> car) {
        return line.car() == null || line.car().equals(car);
    }

    private <F extends Fact> @Nullable F find(Class<F> kind, @Nullable Id<F> id) {
        return Optional.ofNullable(id)
                .flatMap(known -> facts.of(kind).find(known))
                .map(Entry::fact)
                .orElse(null);
    }
}
