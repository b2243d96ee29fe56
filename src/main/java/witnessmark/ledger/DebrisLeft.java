package witnessmark.ledger;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Grade;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.ledger.result.DebrisIn;
import witnessmark.quantity.Moment;

/**
 * Coolers and lines that metal went through and that are in their car still: debris stays in them and goes into the next shells
 * (trade handbook, work after a bearing let go). A car keeps them when its engine is changed. Signing an engine clear does not
 * take it out; renewing or cleaning them does.
 */
public final class DebrisLeft {
    private static final Set<PartKind> KEEP_IT = Set.of(PartKind.OIL_COOLER, PartKind.LINES);

    private final LifeLedger ledger;
    private final Facts facts;

    public DebrisLeft(LifeLedger ledger) {
        this.ledger = ledger;
        this.facts = ledger.facts();
    }

    /** As of the ledger's day, by car. */
    public List<DebrisIn> all() {
        List<Entry<Reading>> metal = facts.of(Reading.class)
                .where(reading -> reading.kind() == ReadingKind.FILTER
                        && reading.engine() != null
                        && reading.grade() != null
                        && reading.grade().badness() >= Grade.FLAKES.badness()
                        && ledger.asOf().counts(reading.at()));
        if (metal.isEmpty()) {
            return List.of();
        }
        Moment last = ledger.asOf().last();
        return facts
                .of(Fitment.class)
                .where(fitment -> fitment.car() != null
                        && !fitment.from().isAfter(last)
                        && (fitment.to() == null || fitment.to().isAfter(last)))
                .stream()
                .flatMap(fitment -> of(fitment.fact(), metal).stream())
                .sorted(Comparator.comparing(
                                (DebrisIn each) -> each.car().fact().name())
                        .thenComparing(DebrisIn::kind))
                .toList();
    }

    private Optional<DebrisIn> of(Fitment fitment, List<Entry<Reading>> metal) {
        Entry<Part> part = facts.of(Part.class).find(fitment.part()).orElseThrow();
        PartKind kind = facts.of(PartDesign.class).get(part.fact().design()).kind();
        Id<Car> car = fitment.car();
        if (car == null || !KEEP_IT.contains(kind)) {
            return Optional.empty();
        }
        return metal.stream()
                .filter(each -> !each.fact().at().isBefore(fitment.from())
                        && ranIn(each.fact(), car)
                        && !cleaned(part.id(), each.fact().at()))
                .max(Comparator.comparing(each -> each.fact().at()))
                .flatMap(each -> Optional.ofNullable(each.fact().engine())
                        .flatMap(engine -> facts.of(Engine.class).find(engine))
                        .map(engine -> new DebrisIn(
                                part, kind, facts.of(Car.class).find(car).orElseThrow(), engine, each)));
    }

    /** Whether its engine ran last in that car: a filter is often opened when the engine is out. */
    private boolean ranIn(Reading reading, Id<Car> car) {
        return facts
                .of(EngineInCar.class)
                .where(stay ->
                        stay.engine().equals(reading.engine()) && stay.from().isBefore(reading.at()))
                .stream()
                .max(Comparator.comparing(stay -> stay.fact().from()))
                .map(stay -> stay.fact().car().equals(car))
                .orElse(false);
    }

    private boolean cleaned(Id<Part> part, Moment since) {
        return !facts.of(Work.class)
                .where(work -> part.equals(work.part())
                        && work.kind() == WorkKind.CLEAN
                        && work.result() != WorkResult.FAILED
                        && !work.at().isBefore(since)
                        && ledger.asOf().counts(work.at()))
                .isEmpty();
    }
}
