package witnessmark.logbook.standing;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.MarkState;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** What is fitted where, and how it stands, counted. */
final class FittedParts {
    private final Facts facts;
    private final LifeLedger ledger;
    private final Moment now;

    FittedParts(Facts facts, LifeLedger ledger, Moment now) {
        this.facts = facts;
        this.ledger = ledger;
        this.now = now;
    }

    /** Everything fitted in these engines and to these cars. */
    Set<Id<Part>> in(Set<Id<Engine>> engines, Set<Id<Car>> cars) {
        Set<Id<Part>> parts = new HashSet<>();
        engines.forEach(engine -> ledger.fittedAt(engine, now)
                .values()
                .forEach(fitted -> parts.add(fitted.fact().part())));
        cars.forEach(car -> ledger.fittedInCar(car, now)
                .values()
                .forEach(fitted -> parts.add(fitted.fact().part())));
        return parts;
    }

    /** Everything fitted in any other engine and to any other car. */
    Set<Id<Part>> except(Set<Id<Engine>> engines, Set<Id<Car>> cars) {
        Set<Id<Engine>> otherEngines = new HashSet<>();
        facts.of(Engine.class).inForce().map(Entry::id).forEach(otherEngines::add);
        otherEngines.removeAll(engines);
        Set<Id<Car>> otherCars = new HashSet<>();
        facts.of(Car.class).inForce().map(Entry::id).forEach(otherCars::add);
        otherCars.removeAll(cars);
        return in(otherEngines, otherCars);
    }

    /** Those of the parts that nothing is held against, by their marks. */
    List<PartWithoutLimit> withoutLimit(Set<Id<Part>> parts, List<MarkOn> marks) {
        Set<Id<Part>> rest = new HashSet<>(parts);
        marks.forEach(mark -> rest.remove(mark.mark().part()));
        return rest.stream()
                .map(this::plain)
                .sorted(Comparator.comparing(PartWithoutLimit::mark))
                .toList();
    }

    private PartWithoutLimit plain(Id<Part> part) {
        Part fact = facts.of(Part.class).get(part);
        Fitment there = ledger.whereIs(part, now).map(Entry::fact).orElse(null);
        Id<Engine> engine = there == null ? null : there.engine();
        Id<Car> car = there == null ? null : there.car();
        if (engine != null) {
            car = ledger.carOf(engine, now).map(stay -> stay.fact().car()).orElse(null);
        }
        return new PartWithoutLimit(
                part,
                fact.mark(),
                facts.of(PartDesign.class).get(fact.design()).kind(),
                engine == null ? null : facts.of(Engine.class).get(engine).number(),
                car == null ? null : facts.of(Car.class).get(car).name(),
                ledger.life(part, Counter.RUNNING));
    }

    /** Counts each part once, where it stands worst. */
    PartCount count(Set<Id<Part>> parts, List<MarkOn> marks) {
        Map<Id<Part>, MarkState> worst = new HashMap<>();
        for (MarkOn mark : marks) {
            Id<Part> part = mark.mark().part();
            if (part != null) {
                worst.merge(part, mark.state(), (one, other) -> one.compareTo(other) < 0 ? one : other);
            }
        }
        Map<MarkState, Integer> counts = new EnumMap<>(MarkState.class);
        worst.values().forEach(state -> counts.merge(state, 1, Integer::sum));
        Set<Id<Part>> rest = new HashSet<>(parts);
        rest.removeAll(worst.keySet());
        return new PartCount(
                counts.getOrDefault(MarkState.HELD, 0),
                counts.getOrDefault(MarkState.OVER, 0),
                counts.getOrDefault(MarkState.RUN_ON, 0),
                counts.getOrDefault(MarkState.DUE, 0),
                counts.getOrDefault(MarkState.NOT_KNOWN, 0),
                counts.getOrDefault(MarkState.WITHIN, 0),
                rest.size());
    }
}
