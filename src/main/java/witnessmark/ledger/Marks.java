package witnessmark.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.ledger.ahead.Ahead;
import witnessmark.ledger.ahead.Step;
import witnessmark.ledger.result.Expected;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.JointDoubt;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkReason;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.PrintedDate;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.ledger.result.RunsOut;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * How everything stands as of the ledger's day: held, over, run on, due, not known, within; each with its reason. A mark
 * is due when what is left, told running at its high end, runs out within the longer of the usual range of the next
 * event, or within one event's likely running after it.
 */
public final class Marks {
    private static final Comparator<Mark> ALIKE = Comparator.comparing(
                    Mark::part, Comparator.<Id<Part>>nullsLast(Comparator.naturalOrder()))
            .thenComparing(Mark::engine, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(mark -> mark.reason().against());

    /** What a mark is ordered by, worked out once for each. */
    private record Ranked(Mark mark, int weight, double share) implements Comparable<Ranked> {
        Ranked(Mark mark) {
            this(mark, mark.weight(), Marks.share(mark));
        }

        @Override
        public int compareTo(Ranked other) {
            if (weight != other.weight) {
                return Integer.compare(weight, other.weight);
            }
            int more = Double.compare(other.share, share);
            return more != 0 ? more : ALIKE.compare(mark, other.mark);
        }
    }

    private final LifeLedger ledger;
    private final Limits limits;
    private final Seats seats;
    private final ReadingUses readings;
    private final UnprovenBuilds unproven;
    private final JointDoubts doubts;
    private final Ahead ahead;
    private final Map<Id<?>, List<HeldBy>> held = new HashMap<>();
    private final Map<Id<?>, List<Step>> coming = new HashMap<>();
    private final Map<Goes, Optional<Expected>> expected = new HashMap<>();

    /** What the next event takes of a counter is the same for all that an engine, or a car, takes along. */
    private record Goes(Id<?> what, Counter counter) {}

    public Marks(LifeLedger ledger) {
        this(ledger, new Limits(ledger), new Holds(ledger), new Ahead(ledger));
    }

    /** The same from parts made already. */
    public Marks(LifeLedger ledger, Limits limits, Holds holds, Ahead ahead) {
        this.ledger = ledger;
        this.limits = limits;
        this.seats = limits.seats();
        this.readings = new ReadingUses(ledger);
        this.unproven = new UnprovenBuilds(ledger);
        this.doubts = new JointDoubts(ledger);
        this.ahead = ahead;
        for (HeldBy by : holds.open()) {
            Id<?> what = by.part() != null ? by.part() : by.engine();
            if (what != null) {
                held.computeIfAbsent(what, id -> new ArrayList<>()).add(by);
            }
        }
    }

    /** Worst first: by state, then by the share of the limit used. */
    public static Comparator<Mark> worst() {
        return (one, other) -> new Ranked(one).compareTo(new Ranked(other));
    }

    /** Every mark of an engine and of what is fitted in it, worst first. */
    public List<Mark> ofEngine(Id<Engine> engine) {
        return marks(seats.of(engine, ledger.asOf().last()));
    }

    /** Every mark of a car and of what is fitted to it, its engine aside, worst first. */
    public List<Mark> ofCar(Id<Car> car) {
        return marks(seats.ofCar(car, ledger.asOf().last()));
    }

    /** Every mark of a part where it is, or on the shelf, worst first. */
    public List<Mark> ofPart(Id<Part> part) {
        Moment now = ledger.asOf().last();
        Fitment there = ledger.whereIs(part, now).map(Entry::fact).orElse(null);
        return marks(List.of(seats.seat(part, there, now)));
    }

    /** The same of a part on the shelf, held against the limits of the engines it is to go into. */
    public List<Mark> ofPart(Id<Part> part, Id<EngineDesign> into) {
        Seat seat = seats.seat(part, null, ledger.asOf().last());
        return marks(List.of(new Seat(part, seat.partDesign(), seat.partKind(), null, null, into, null)));
    }

    /** Every mark of every engine and car and of what is fitted in them, worst first. */
    public List<Mark> all() {
        Moment now = ledger.asOf().last();
        List<Seat> all = new ArrayList<>();
        ledger.facts().of(Engine.class).inForce().forEach(engine -> all.addAll(seats.of(engine.id(), now)));
        ledger.facts().of(Car.class).inForce().forEach(car -> all.addAll(seats.ofCar(car.id(), now)));
        return marks(all);
    }

    private List<Mark> marks(List<Seat> there) {
        List<Mark> marks = new ArrayList<>();
        for (Seat seat : there) {
            held(seat).forEach(by -> marks.add(mark(seat, by, null)));
            limits.uses(List.of(seat)).forEach(use -> marks.add(mark(seat, use, runsOut(seat, use))));
            readings.of(seat).forEach(use -> marks.add(mark(seat, use, runsOut(seat, use))));
            printedDate(marks, seat);
            work(marks, seat);
        }
        return marks.stream().map(Ranked::new).sorted().map(Ranked::mark).toList();
    }

    /** What stands under doubt of the work on it; it is on the engine as a whole. */
    private void work(List<Mark> marks, Seat seat) {
        Id<Engine> engine = seat.part() == null ? seat.engine() : null;
        if (engine != null) {
            unproven.of(engine).forEach(build -> marks.add(mark(seat, build, null)));
            doubts.of(engine).forEach(doubt -> marks.add(mark(seat, doubt, null)));
        }
    }

    private List<HeldBy> held(Seat seat) {
        Id<?> what = seat.part() != null ? seat.part() : seat.engine();
        return what == null ? List.of() : held.getOrDefault(what, List.of());
    }

    private Mark mark(Seat seat, MarkReason reason, @Nullable RunsOut runsOut) {
        MarkState alone = reason.state();
        boolean due = runsOut != null && (alone == MarkState.WITHIN || alone == MarkState.NOT_KNOWN);
        return new Mark(
                due ? MarkState.DUE : alone,
                reason,
                seat.part(),
                seat.engine(),
                seat.car(),
                seat.position(),
                canWreck(seat, reason),
                runsOut,
                expected(seat, reason));
    }

    /** An engine not read, not measured after a repair or not known tight may be wrecked as well as by a part not known. */
    private boolean canWreck(Seat seat, MarkReason reason) {
        return seat.part() != null
                ? seats.canWreck(seat.part())
                : reason instanceof ReadingUse || reason instanceof UnprovenBuild || reason instanceof JointDoubt;
    }

    private @Nullable Expected expected(Seat seat, MarkReason reason) {
        Counter counter = reason.fold(
                by -> null,
                use -> use.used().counter(),
                use -> use.limit().fact().every() == null ? null : Counter.RUNNING,
                date -> null,
                build -> null,
                doubt -> null);
        if (counter == null) {
            return null;
        }
        Id<?> goes = seat.engine() != null ? seat.engine() : seat.car();
        return goes == null
                ? null
                : expected.computeIfAbsent(new Goes(goes, counter), asked -> expected(coming(seat), counter))
                        .orElse(null);
    }

    private Optional<Expected> expected(List<Step> coming, Counter counter) {
        return ahead.expected(coming.stream().filter(step -> !step.after()).toList(), counter);
    }

    /** Where a limit runs out; with a run-on, where that does. */
    private @Nullable RunsOut runsOut(Seat seat, LimitUse use) {
        MarkState alone = use.state();
        long left = alone == MarkState.RUN_ON && use.runOn() != null
                ? use.runOn().fact().upTo() - use.used().highest()
                : use.left();
        if (left <= 0) {
            return null;
        }
        Counter counter = use.used().counter();
        return counter == Counter.AGE
                ? runsOutOn(seat, ledger.asOf().day().plusDays(left), left)
                : ahead.runsOut(counter, left, coming(seat)).orElse(null);
    }

    private @Nullable RunsOut runsOut(Seat seat, ReadingUse use) {
        RunningTime every = use.limit().fact().every();
        if (use.state() != MarkState.WITHIN || every == null) {
            return null;
        }
        return ahead.runsOut(Counter.RUNNING, every.millis() - use.since().highest(), coming(seat))
                .filter(out -> !out.after()) // what is read at each event is not due before the event after
                .orElse(null);
    }

    private void printedDate(List<Mark> marks, Seat seat) {
        if (seat.part() == null) {
            return;
        }
        LocalDate useBy = ledger.facts()
                .of(Part.class)
                .find(seat.part())
                .map(part -> part.fact().useBy())
                .orElse(null);
        if (useBy != null) {
            PrintedDate date = new PrintedDate(seat.part(), useBy, ledger.asOf().day());
            marks.add(mark(
                    seat,
                    date,
                    date.state() == MarkState.OVER ? null : runsOutOn(seat, useBy.plusDays(1), date.daysLeft() + 1)));
        }
    }

    /** The next event or the one after it, if a day comes before it is over. */
    private @Nullable RunsOut runsOutOn(Seat seat, LocalDate day, long daysLeft) {
        for (Step step : coming(seat)) {
            if (!day.isAfter(step.event().fact().lastDay())) {
                return new RunsOut(step.event(), null, true, step.after(), daysLeft);
            }
        }
        return null;
    }

    private List<Step> coming(Seat seat) {
        Id<Engine> engine = seat.engine();
        if (engine != null) {
            return coming.computeIfAbsent(engine, id -> ahead.ofEngine(engine));
        }
        Id<Car> car = seat.car();
        return car == null ? List.of() : coming.computeIfAbsent(car, id -> ahead.ofCar(car));
    }

    /** The share used of a limit on running; of anything else none is known. */
    private static double share(Mark mark) {
        return mark.reason()
                .fold(
                        by -> Double.MAX_VALUE,
                        use -> (double) use.used().highest() / use.amount(),
                        use -> use.broken() == ReadingUse.Broken.NONE ? 0.0 : 1.0,
                        date -> date.daysLeft() < 0 ? Double.MAX_VALUE : 1.0 / (1 + date.daysLeft()),
                        build -> 1.0,
                        doubt -> 1.0);
    }
}
