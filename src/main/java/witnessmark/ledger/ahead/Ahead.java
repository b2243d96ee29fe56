package witnessmark.ledger.ahead;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.Expected;
import witnessmark.ledger.result.RunsOut;
import witnessmark.quantity.Counter;

/**
 * What is to come: for each car what is left from today of the event that runs or comes next, and the event after it; for each
 * engine that of the car it is meant for there, which is the car it is in where nothing else is written down. Once the event
 * runs, the engine in the car is the one that goes out, whichever was meant.
 */
public final class Ahead {
    private final Facts facts;
    private final LifeLedger ledger;
    private final OwnRecord record;
    private final List<Entry<Event>> events;
    private final Map<Id<Event>, List<Entry<PlannedRun>>> timetables = new HashMap<>();
    private final Map<Id<Event>, Map<Id<Car>, EventEntry>> entries = new HashMap<>();
    private final RunsTaken taken;

    public Ahead(LifeLedger ledger) {
        this.facts = ledger.facts();
        this.ledger = ledger;
        this.record = new OwnRecord(facts, ledger.asOf());
        this.events = facts.of(Event.class)
                .inForce()
                .filter(event -> !event.fact().lastDay().isBefore(ledger.asOf().day()))
                .sorted(Comparator.comparing(
                                (Entry<Event> event) -> event.fact().firstDay())
                        .thenComparing(Entry::id))
                .toList();
        facts.of(PlannedRun.class)
                .inForce()
                .sorted(Comparator.comparingInt(planned -> planned.fact().ordinal()))
                .forEach(planned -> timetables
                        .computeIfAbsent(planned.fact().event(), event -> new ArrayList<>())
                        .add(planned));
        facts.of(EventEntry.class)
                .inForce()
                .map(Entry::fact)
                .forEach(entry -> entries.computeIfAbsent(entry.event(), event -> new HashMap<>())
                        .put(entry.car(), entry));
        this.taken = RunsTaken.by(facts, ledger.asOf());
    }

    /** What a car is to run, in order. */
    public List<Step> ofCar(Id<Car> car) {
        List<Step> all = new ArrayList<>();
        Set<Id<Event>> met = new HashSet<>();
        for (Entry<Event> event : events) {
            if (carsAt(event.id()).contains(car)) {
                List<Step> there = left(event, car, !met.isEmpty());
                if (!there.isEmpty()) {
                    all.addAll(there);
                    met.add(event.id());
                }
            }
            if (met.size() == 2) {
                break;
            }
        }
        return all;
    }

    /** What an engine is to run, in order. */
    public List<Step> ofEngine(Id<Engine> engine) {
        List<Step> all = new ArrayList<>();
        Id<Car> in = ledger.carOf(engine, ledger.asOf().last())
                .map(Entry::fact)
                .map(EngineInCar::car)
                .orElse(null);
        Set<Id<Event>> met = new HashSet<>();
        for (Entry<Event> event : events) {
            List<Step> there = new ArrayList<>();
            for (Id<Car> car : carsAt(event.id())) {
                if (goes(event, car, engine, in)) {
                    there.addAll(left(event, car, !met.isEmpty()));
                }
            }
            if (!there.isEmpty()) {
                all.addAll(there);
                met.add(event.id());
            }
            if (met.size() == 2) {
                break;
            }
        }
        return all;
    }

    /** What is expected of a counter over these runs; empty when some run does not say, or there is none. */
    public Optional<Expected> expected(List<Step> steps, Counter counter) {
        Expected sum = null;
        for (Step step : steps) {
            Optional<Expected> one = record.of(step, counter);
            if (one.isEmpty()) {
                return one;
            }
            sum = sum == null ? one.get() : sum.plus(one.get());
        }
        return Optional.ofNullable(sum);
    }

    /**
     * Where what is left runs out, if it does by the end of the next event, or of one more like it.
     *
     * @param left what is left, in the counter's unit; more than 0
     * @param steps what is to come
     */
    public Optional<RunsOut> runsOut(Counter counter, long left, List<Step> steps) {
        List<Step> next = steps.stream().filter(step -> !step.after()).toList();
        long likely = 0;
        long high = 0;
        Step perhaps = null;
        Step sure = null;
        for (Step step : next) {
            Expected one = record.of(step, counter).orElse(null);
            if (one == null) {
                return Optional.empty();
            }
            likely = Math.addExact(likely, one.likely());
            high = Math.addExact(high, one.high());
            sure = sure == null && likely >= left ? step : sure;
            perhaps = perhaps == null && high >= left ? step : perhaps;
        }
        Step at = sure != null ? sure : perhaps;
        if (at != null) {
            return Optional.of(new RunsOut(at.event(), at.planned(), sure != null, false, left - likely));
        }
        return next.isEmpty() ? Optional.empty() : runsOutAfter(counter, left, likely, high, steps);
    }

    private Optional<RunsOut> runsOutAfter(Counter counter, long left, long likely, long high, List<Step> steps) {
        List<Step> after = steps.stream().filter(Step::after).toList();
        long one = expected(after, counter).map(Expected::likely).orElse(likely);
        return left > Math.addExact(high, one)
                ? Optional.empty()
                : Optional.of(new RunsOut(
                        (after.isEmpty() ? steps : after).get(0).event(), null, false, true, left - likely));
    }

    /** The cars entered; every car where no entry is written down. */
    private Set<Id<Car>> carsAt(Id<Event> event) {
        Map<Id<Car>, EventEntry> entered = entries.get(event);
        if (entered != null) {
            return entered.keySet();
        }
        Set<Id<Car>> all = new HashSet<>();
        facts.of(Car.class).inForce().forEach(car -> all.add(car.id()));
        return all;
    }

    /** @param in the car the engine is in */
    private boolean goes(Entry<Event> event, Id<Car> car, Id<Engine> engine, @Nullable Id<Car> in) {
        EventEntry entry = entry(event.id(), car);
        Id<Engine> meant = entry == null ? null : entry.engine();
        boolean changed = !event.fact().firstDay().isAfter(ledger.asOf().day())
                && ledger.engineIn(car, ledger.asOf().last()).isPresent();
        return meant == null || changed ? car.equals(in) : meant.equals(engine);
    }

    private @Nullable EventEntry entry(Id<Event> event, Id<Car> car) {
        Map<Id<Car>, EventEntry> entered = entries.get(event);
        return entered == null ? null : entered.get(car);
    }

    private List<Step> left(Entry<Event> event, Id<Car> car, boolean after) {
        if (taken.missed(car, event.id())) {
            return List.of();
        }
        List<Entry<PlannedRun>> timetable = timetables.get(event.id());
        if (timetable == null) {
            return List.of(new Step(event, null, after));
        }
        return timetable.stream()
                .filter(planned -> !planned.fact().day().isBefore(ledger.asOf().day()))
                .filter(planned -> !taken.has(car, planned))
                .map(planned -> new Step(event, planned, after))
                .toList();
    }
}
