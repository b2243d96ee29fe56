package witnessmark.ledger;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.MissedRun;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.Standing;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;

/**
 * What is to come, walked run by run straight from the definition; nothing is kept and no code is shared with what it is
 * held against but the ledger's word on which engine is in which car.
 */
final class PlainAhead {
    /** Where it runs out. */
    record Walked(Id<Event> event, @Nullable Id<PlannedRun> planned, boolean sure, boolean after) {}

    private record Takes(long likely, long high) {}

    private record Step(Entry<Event> event, @Nullable Entry<PlannedRun> planned) {}

    private final Facts facts;
    private final AsOf asOf;
    private final LifeLedger ledger;

    PlainAhead(Facts facts, AsOf asOf, LifeLedger ledger) {
        this.facts = facts;
        this.asOf = asOf;
        this.ledger = ledger;
    }

    @Nullable
    Walked walk(@Nullable Id<Engine> engine, @Nullable Id<Car> car, Counter counter, long left) {
        List<List<Step>> events = engine != null ? ofEngine(engine) : car != null ? ofCar(car) : List.of();
        if (events.isEmpty()) {
            return null;
        }
        long likely = 0;
        long high = 0;
        Step sure = null;
        Step perhaps = null;
        for (Step step : events.get(0)) {
            Takes takes = takes(step, counter);
            if (takes == null) {
                return null;
            }
            likely += takes.likely();
            high += takes.high();
            if (sure == null && likely >= left) {
                sure = step;
            }
            if (perhaps == null && high >= left) {
                perhaps = step;
            }
        }
        Step at = sure != null ? sure : perhaps;
        if (at != null) {
            return new Walked(
                    at.event().id(), at.planned() == null ? null : at.planned().id(), sure != null, false);
        }
        long oneMore = likely;
        Id<Event> where = events.get(0).get(0).event().id();
        if (events.size() > 1) {
            where = events.get(1).get(0).event().id();
            long sum = 0;
            boolean all = true;
            for (Step step : events.get(1)) {
                Takes takes = takes(step, counter);
                all &= takes != null;
                sum += takes == null ? 0 : takes.likely();
            }
            oneMore = all ? sum : likely;
        }
        return high + oneMore >= left ? new Walked(where, null, false, true) : null;
    }

    private List<List<Step>> ofCar(Id<Car> car) {
        List<List<Step>> events = new ArrayList<>();
        for (Entry<Event> event : calendar()) {
            List<Step> steps = entered(event, car) ? left(event, car) : List.of();
            if (!steps.isEmpty() && events.size() < 2) {
                events.add(steps);
            }
        }
        return events;
    }

    private List<List<Step>> ofEngine(Id<Engine> engine) {
        List<List<Step>> events = new ArrayList<>();
        for (Entry<Event> event : calendar()) {
            List<Step> steps = new ArrayList<>();
            for (Entry<Car> car : inForce(Car.class)) {
                if (entered(event, car.id()) && engine.equals(engineOf(event, car.id(), engine))) {
                    steps.addAll(left(event, car.id()));
                }
            }
            if (!steps.isEmpty() && events.size() < 2) {
                events.add(steps);
            }
        }
        return events;
    }

    private @Nullable Id<Engine> engineOf(Entry<Event> event, Id<Car> car, Id<Engine> asked) {
        boolean running = !asOf.day().isBefore(event.fact().firstDay());
        for (Entry<EventEntry> entry : inForce(EventEntry.class)) {
            if (!(running && holdsOne(car))
                    && entry.fact().event().equals(event.id())
                    && entry.fact().car().equals(car)
                    && entry.fact().engine() != null) {
                return entry.fact().engine();
            }
        }
        return ledger.carOf(asked, asOf.last())
                        .filter(stay -> stay.fact().car().equals(car))
                        .isPresent()
                ? asked
                : null;
    }

    private boolean holdsOne(Id<Car> car) {
        for (Entry<Engine> engine : inForce(Engine.class)) {
            if (ledger.carOf(engine.id(), asOf.last())
                    .filter(stay -> stay.fact().car().equals(car))
                    .isPresent()) {
                return true;
            }
        }
        return false;
    }

    private List<Entry<Event>> calendar() {
        List<Entry<Event>> events = new ArrayList<>();
        for (Entry<Event> event : inForce(Event.class)) {
            if (!event.fact().lastDay().isBefore(asOf.day())) {
                events.add(event);
            }
        }
        events.sort((one, other) -> {
            int byDay = one.fact().firstDay().compareTo(other.fact().firstDay());
            return byDay != 0 ? byDay : one.id().compareTo(other.id());
        });
        return events;
    }

    private boolean entered(Entry<Event> event, Id<Car> car) {
        boolean any = false;
        for (Entry<EventEntry> entry : inForce(EventEntry.class)) {
            if (entry.fact().event().equals(event.id())) {
                any = true;
                if (entry.fact().car().equals(car)) {
                    return true;
                }
            }
        }
        return !any;
    }

    private List<Step> left(Entry<Event> event, Id<Car> car) {
        List<Entry<PlannedRun>> timetable = new ArrayList<>();
        for (Entry<PlannedRun> planned : inForce(PlannedRun.class)) {
            if (planned.fact().event().equals(event.id())) {
                timetable.add(planned);
            }
        }
        timetable.sort((one, other) -> one.fact().ordinal() - other.fact().ordinal());
        List<Step> left = new ArrayList<>();
        for (Entry<MissedRun> missed : inForce(MissedRun.class)) {
            if (missed.fact().event().equals(event.id())
                    && missed.fact().car().equals(car)
                    && missed.fact().planned() == null
                    && !missed.fact().at().isAfter(asOf.last())) {
                return left;
            }
        }
        if (timetable.isEmpty()) {
            left.add(new Step(event, null));
        }
        for (Entry<PlannedRun> planned : timetable) {
            if (!planned.fact().day().isBefore(asOf.day()) && !taken(planned.id(), car)) {
                left.add(new Step(event, planned));
            }
        }
        return left;
    }

    private boolean taken(Id<PlannedRun> planned, Id<Car> car) {
        for (Entry<Run> run : inForce(Run.class)) {
            if (planned.equals(run.fact().planned())
                    && car.equals(run.fact().car())
                    && !run.fact().start().isAfter(asOf.last())) {
                return true;
            }
        }
        for (Entry<MissedRun> missed : inForce(MissedRun.class)) {
            if (planned.equals(missed.fact().planned())
                    && car.equals(missed.fact().car())
                    && !missed.fact().at().isAfter(asOf.last())) {
                return true;
            }
        }
        return false;
    }

    private @Nullable Takes takes(Step step, Counter counter) {
        if (step.planned() == null) {
            return wholeEvent(counter);
        }
        PlannedRun planned = step.planned().fact();
        for (String circuit : new String[] {step.event().fact().circuit(), null}) {
            Takes own = own(planned, circuit, counter);
            if (own != null) {
                return own;
            }
        }
        if (counter == Counter.RACE_STARTS) {
            long starts = planned.kind() == RunKind.RACE ? 1 : 0;
            return new Takes(starts, starts);
        }
        if (counter != Counter.RUNNING) {
            return null;
        }
        Long millis = planned.expected() != null
                ? Long.valueOf(planned.expected().millis())
                : planned.kind() == RunKind.PRACTICE
                        ? Long.valueOf(25 * 60_000)
                        : planned.kind() == RunKind.RACE ? Long.valueOf(28 * 60_000) : null;
        return millis == null ? null : new Takes(millis, millis);
    }

    private @Nullable Takes own(PlannedRun planned, @Nullable String circuit, Counter counter) {
        List<Double> shares = new ArrayList<>();
        List<Double> figures = new ArrayList<>();
        for (Run run : past(planned.kind(), circuit)) {
            Long figure = run.of(counter);
            if (figure != null) {
                figures.add(figure.doubleValue());
                RunningTime stated = run.planned() == null
                        ? null
                        : facts.of(PlannedRun.class).get(run.planned()).expected();
                if (stated != null) {
                    shares.add(BigDecimal.valueOf(figure)
                            .multiply(BigDecimal.valueOf(1_000_000))
                            .divide(BigDecimal.valueOf(stated.millis()), 0, RoundingMode.HALF_UP)
                            .doubleValue());
                }
            }
        }
        if (planned.expected() != null && counter != Counter.RACE_STARTS && shares.size() >= 3) {
            BigDecimal stated = BigDecimal.valueOf(planned.expected().millis());
            return new Takes(scaled(quartile(shares, 50), stated), scaled(quartile(shares, 75), stated));
        }
        return figures.size() < 3 ? null : new Takes(quartile(figures, 50), quartile(figures, 75));
    }

    private static long scaled(long share, BigDecimal stated) {
        return BigDecimal.valueOf(share)
                .multiply(stated)
                .divide(BigDecimal.valueOf(1_000_000), 0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private static long quartile(List<Double> figures, int percent) {
        double value = new Percentile()
                .withEstimationType(EstimationType.R_7)
                .evaluate(figures.stream().mapToDouble(Double::doubleValue).toArray(), percent);
        return (long) Math.floor(Math.rint(value * 8) / 8 + 0.5);
    }

    private List<Run> past(@Nullable RunKind kind, @Nullable String circuit) {
        List<Run> past = new ArrayList<>();
        for (Entry<Run> entry : inForce(Run.class)) {
            Run run = entry.fact();
            if (run.event() != null
                    && run.perhapsSame() == null
                    && (kind == null || run.kind() == kind)
                    && !run.start().isAfter(asOf.last())
                    && (circuit == null
                            || facts.of(Event.class).get(run.event()).circuit().equals(circuit))) {
                past.add(run);
            }
        }
        return past;
    }

    private @Nullable Takes wholeEvent(Counter counter) {
        List<Double> sums = new ArrayList<>();
        Set<Id<Event>> events = new HashSet<>();
        for (Run first : past(null, null)) {
            boolean read = true;
            for (Run run : past(null, null)) {
                read &= !first.event().equals(run.event()) || run.of(counter) != null;
            }
            if (!read || !events.add(first.event())) {
                continue;
            }
            for (Entry<Engine> engine : inForce(Engine.class)) {
                long sum = 0;
                boolean ran = false;
                for (Run run : past(null, null)) {
                    if (run.event().equals(first.event()) && run.engine().equals(engine.id())) {
                        sum += run.of(counter);
                        ran = true;
                    }
                }
                if (ran) {
                    sums.add((double) sum);
                }
            }
        }
        return events.size() < 3 ? null : new Takes(quartile(sums, 50), quartile(sums, 75));
    }

    private <F extends Fact> List<Entry<F>> inForce(Class<F> kind) {
        List<Entry<F>> counting = new ArrayList<>();
        for (Entry<F> entry : facts.of(kind).all()) {
            if (entry.standing() == Standing.IN_FORCE) {
                counting.add(entry);
            }
        }
        return counting;
    }
}
