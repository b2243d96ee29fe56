package witnessmark.logbook.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PlannedRun;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Marks;
import witnessmark.ledger.ahead.RunsTaken;
import witnessmark.ledger.result.Mark;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;

/** Sees how the team stands on the day looked at. Reads only. */
public final class SeeStanding {
    private final View view;
    private final Facts facts;
    private final LifeLedger ledger;
    private final Moment now;

    private SeeStanding(View view) {
        this.view = view;
        this.facts = view.facts();
        this.ledger = view.ledger();
        this.now = ledger.asOf().last();
    }

    /** How the team stands in this view. */
    public static Standing of(View view) {
        return new SeeStanding(view).standing();
    }

    private Standing standing() {
        NextEvent next = new Calendar(facts, ledger.asOf()).next().orElse(null);
        Set<Id<Car>> cars = carsGoing(next);
        Set<Id<Engine>> engines = enginesGoing(cars, next);
        List<MarkOn> going = new ArrayList<>();
        List<MarkOn> elsewhere = new ArrayList<>();
        for (Mark mark : new Marks(ledger).all()) {
            boolean goes = mark.engine() != null
                    ? engines.contains(mark.engine())
                    : mark.car() != null && cars.contains(mark.car());
            (goes ? going : elsewhere).add(MarkOn.of(facts, mark));
        }
        Outings outings = new Outings(facts, ledger);
        FittedParts parts = new FittedParts(facts, ledger, now);
        Set<Id<Part>> partsGoing = parts.in(engines, cars);
        Set<Id<Part>> others = parts.except(engines, cars);
        List<PartWithoutLimit> withoutLimit = new ArrayList<>(parts.withoutLimit(partsGoing, going));
        withoutLimit.addAll(parts.withoutLimit(others, elsewhere));
        List<Entry<PlannedRun>> timetable = next == null ? List.of() : timetable(next, cars);
        return new Standing(
                view.day(),
                next,
                timetable,
                cars.stream()
                        .map(car -> facts.of(Car.class).get(car).name())
                        .sorted()
                        .toList(),
                going,
                elsewhere,
                withoutLimit,
                withoutLimit(engines, going),
                parts.count(partsGoing, going),
                parts.count(others, elsewhere),
                outings.lastOut(),
                outings.moved(),
                next == null || !next.running() ? List.of() : new SeeNextRuns(ledger, going).of(next, timetable, cars),
                new SeeOpen(ledger, next, cars, engines).open(),
                steps(outings));
    }

    private List<EngineWithoutLimit> withoutLimit(Set<Id<Engine>> engines, List<MarkOn> going) {
        return engines.stream()
                .filter(engine ->
                        going.stream().noneMatch(on -> engine.equals(on.mark().engine())))
                .map(engine -> new EngineWithoutLimit(
                        engine,
                        facts.of(Engine.class).get(engine).number(),
                        ledger.carOf(engine, now)
                                .map(stay -> facts.of(Car.class)
                                        .get(stay.fact().car())
                                        .name())
                                .orElse(null)))
                .sorted(Comparator.comparing(EngineWithoutLimit::number))
                .toList();
    }

    /** The cars entered for the event; every car with an engine in it when none is. */
    private Set<Id<Car>> carsGoing(@Nullable NextEvent next) {
        Set<Id<Car>> cars = new HashSet<>();
        if (next != null) {
            entries(next).forEach(entry -> cars.add(entry.fact().car()));
        }
        if (cars.isEmpty()) {
            facts.of(Car.class)
                    .inForce()
                    .map(Entry::id)
                    .filter(car -> ledger.engineIn(car, now).isPresent())
                    .forEach(cars::add);
        }
        return cars;
    }

    /** The engines in these cars; for a car without one, the engine meant for it. */
    private Set<Id<Engine>> enginesGoing(Set<Id<Car>> cars, @Nullable NextEvent next) {
        Set<Id<Engine>> engines = new HashSet<>();
        Set<Id<Car>> empty = new HashSet<>();
        for (Id<Car> car : cars) {
            ledger.engineIn(car, now)
                    .ifPresentOrElse(stay -> engines.add(stay.fact().engine()), () -> empty.add(car));
        }
        if (next != null) {
            for (Entry<EventEntry> entry : entries(next)) {
                Id<Engine> meant = entry.fact().engine();
                if (meant != null && empty.contains(entry.fact().car())) {
                    engines.add(meant);
                }
            }
        }
        return engines;
    }

    private List<Entry<EventEntry>> entries(NextEvent next) {
        return facts.of(EventEntry.class).where(entry -> entry.event().equals(next.id()));
    }

    /** What of the timetable is to come for any of the cars: of today or later, and not behind all of them. */
    private List<Entry<PlannedRun>> timetable(NextEvent next, Set<Id<Car>> cars) {
        RunsTaken taken = RunsTaken.by(facts, ledger.asOf());
        return facts
                .of(PlannedRun.class)
                .where(planned ->
                        planned.event().equals(next.id()) && !planned.day().isBefore(view.day()))
                .stream()
                .filter(planned -> cars.isEmpty() || cars.stream().anyMatch(car -> !taken.has(car, planned)))
                .sorted(Comparator.comparingInt(planned -> planned.fact().ordinal()))
                .toList();
    }

    private FirstSteps steps(Outings outings) {
        return new FirstSteps(
                facts.of(Car.class).inForce().findAny().isPresent(),
                facts.of(Engine.class).inForce().findAny().isPresent(),
                outings.any());
    }
}
