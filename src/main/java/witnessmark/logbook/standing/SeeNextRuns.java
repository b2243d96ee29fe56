package witnessmark.logbook.standing;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Coded;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Look;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.UsualLook;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.ahead.RunsTaken;
import witnessmark.ledger.result.LookAt;
import witnessmark.ledger.result.RunsOut;
import witnessmark.quantity.Moment;

/** Sees what comes next for each car while an event runs. */
final class SeeNextRuns {
    private final LifeLedger ledger;
    private final Facts facts;
    private final List<MarkOn> going;
    private final RunsTaken taken;

    /** @param going marks of what is there, worst first */
    SeeNextRuns(LifeLedger ledger, List<MarkOn> going) {
        this.ledger = ledger;
        this.facts = ledger.facts();
        this.going = going;
        this.taken = RunsTaken.by(facts, ledger.asOf());
    }

    /**
     * The next run of each car, the first to go out first; none for a car whose runs are over.
     *
     * @param event the event that runs
     * @param timetable its runs in their turn
     */
    List<NextRun> of(NextEvent event, List<Entry<PlannedRun>> timetable, Collection<Id<Car>> cars) {
        Moment began =
                Moment.of(event.event().firstDay().atStartOfDay(), event.event().zone());
        List<NextRun> next = new ArrayList<>();
        for (Id<Car> car : cars) {
            next(event, timetable, car).ifPresent(planned -> next.add(next(car, planned.fact(), began)));
        }
        next.sort(Comparator.comparing((NextRun run) -> run.planned().day())
                .thenComparing(run -> run.planned().out(), Comparator.nullsLast(Comparator.<LocalTime>naturalOrder()))
                .thenComparing(run -> run.planned().ordinal())
                .thenComparing(NextRun::name));
        return next;
    }

    /** The first after the last that was run or missed; what is passed over without a word is not waited for. */
    private Optional<Entry<PlannedRun>> next(NextEvent event, List<Entry<PlannedRun>> timetable, Id<Car> car) {
        int last = timetable.stream()
                .filter(planned -> taken.has(car, planned))
                .mapToInt(planned -> planned.fact().ordinal())
                .max()
                .orElse(Integer.MIN_VALUE);
        return timetable.stream()
                .filter(planned ->
                        planned.fact().ordinal() > last && !planned.fact().day().isBefore(event.day()))
                .findFirst();
    }

    private NextRun next(Id<Car> car, PlannedRun planned, Moment began) {
        Id<Engine> engine = ledger.engineIn(car, ledger.asOf().last())
                .map(stay -> stay.fact().engine())
                .orElse(null);
        Entry<Run> last = last(car).orElse(null);
        Moment since = last == null || last.fact().back().isBefore(began)
                ? began
                : last.fact().back();
        return new NextRun(
                car,
                facts.of(Car.class).get(car).name(),
                engine == null ? null : facts.of(Engine.class).get(engine).number(),
                planned,
                planned.out() == null ? null : Moment.of(planned.day().atTime(planned.out()), began.zone()),
                last,
                looks(car, engine, last == null ? null : last.fact(), since),
                going.stream()
                        .filter(on -> isOn(on, car, engine) && (on.calls() || isBy(on.runsOut(), planned)))
                        .toList());
    }

    private Optional<Entry<Run>> last(Id<Car> car) {
        return facts.of(Run.class)
                .inForce()
                .filter(run -> car.equals(run.fact().car())
                        && run.fact().perhapsSame() == null
                        && ledger.asOf().counts(run.fact().start()))
                .max(Comparator.comparing(run -> run.fact().start()));
    }

    private List<LookAt> looks(Id<Car> car, @Nullable Id<Engine> engine, @Nullable Run last, Moment since) {
        List<Entry<Look>> seen = facts.of(Look.class)
                .inForce()
                .filter(look -> car.equals(look.fact().car())
                        || engine != null && engine.equals(look.fact().engine()))
                .filter(look -> isSince(look.fact().at(), since))
                .toList();
        List<LookAt> looks = new ArrayList<>();
        if (last != null && !last.remarks().isBlank()) {
            String out = last.engine().equals(engine)
                    ? null
                    : facts.of(Engine.class).get(last.engine()).number();
            LookAt told = look(LookAt.Reason.TOLD, last.remarks().strip(), null, seen);
            looks.add(new LookAt(told.reason(), told.what(), out, null, told.done()));
        }
        facts.of(EngineInCar.class)
                .where(stay -> stay.car().equals(car) && stay.engine().equals(engine) && isSince(stay.from(), since))
                .forEach(stay -> looks.add(look(
                        LookAt.Reason.ENGINE_WENT_IN,
                        facts.of(Engine.class).get(stay.fact().engine()).number(),
                        null,
                        seen)));
        facts.of(Fitment.class)
                .where(fitment -> isOn(fitment, car, engine) && isSince(fitment.from(), since))
                .forEach(fitment -> looks.add(wentIn(fitment.fact(), seen)));
        for (UsualLook usual : UsualLook.values()) {
            looks.add(look(LookAt.Reason.USUAL, usual.code(), usual, seen));
        }
        return looks;
    }

    private LookAt wentIn(Fitment fitment, List<Entry<Look>> seen) {
        Part part = facts.of(Part.class).get(fitment.part());
        return look(
                LookAt.Reason.WENT_IN,
                part.mark(),
                facts.of(PartDesign.class).get(part.design()).kind(),
                seen);
    }

    /** The last look at it counts. */
    private static LookAt look(LookAt.Reason reason, String what, @Nullable Coded word, List<Entry<Look>> seen) {
        Entry<Look> done = seen.stream()
                .filter(look -> look.fact().what().strip().equalsIgnoreCase(what))
                .max(Comparator.comparing(look -> look.fact().at()))
                .orElse(null);
        return new LookAt(reason, what, null, word, done);
    }

    private boolean isSince(Moment at, Moment since) {
        return !at.isBefore(since) && ledger.asOf().counts(at);
    }

    private boolean isOn(Fitment fitment, Id<Car> car, @Nullable Id<Engine> engine) {
        boolean there = car.equals(fitment.car()) || engine != null && engine.equals(fitment.engine());
        return there && (fitment.to() == null || !ledger.asOf().counts(fitment.to()));
    }

    private static boolean isOn(MarkOn on, Id<Car> car, @Nullable Id<Engine> engine) {
        return on.mark().engine() != null
                ? on.mark().engine().equals(engine)
                : Objects.equals(on.mark().car(), car);
    }

    /** Whether it runs out in this run of the timetable or one before it. */
    private static boolean isBy(@Nullable RunsOut out, PlannedRun planned) {
        Entry<PlannedRun> in = out == null || out.after() ? null : out.planned();
        return in != null
                && in.fact().event().equals(planned.event())
                && in.fact().ordinal() <= planned.ordinal();
    }
}
