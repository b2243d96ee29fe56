package witnessmark.ledger.ahead;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.MissedRun;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.Moment;

/**
 * Which runs of timetables cars have behind them: run, or written down as missed. A missed start that names no run is the
 * whole event.
 */
public final class RunsTaken {
    /** A car, and a run or a whole event. */
    private record Taken(Id<Car> car, Id<?> what) {}

    private final Set<Taken> taken = new HashSet<>();

    private RunsTaken(Facts facts, Predicate<Moment> counts) {
        facts.of(Run.class)
                .where(run -> run.planned() != null && counts.test(run.start()))
                .forEach(run -> add(run.fact().car(), run.fact().planned()));
        facts.of(MissedRun.class).where(missed -> counts.test(missed.at())).stream()
                .map(Entry::fact)
                .forEach(missed -> add(missed.car(), missed.planned() == null ? missed.event() : missed.planned()));
    }

    /** By the end of a day. */
    public static RunsTaken by(Facts facts, AsOf asOf) {
        return new RunsTaken(facts, asOf::counts);
    }

    /** Whatever is written down, of whichever day. */
    public static RunsTaken written(Facts facts) {
        return new RunsTaken(facts, at -> true);
    }

    private void add(@Nullable Id<Car> car, @Nullable Id<?> what) {
        if (car != null && what != null) {
            taken.add(new Taken(car, what));
        }
    }

    /** Whether a car has a run of a timetable behind it, by itself or with the whole event. */
    public boolean has(Id<Car> car, Entry<PlannedRun> run) {
        return taken.contains(new Taken(car, run.id()))
                || missed(car, run.fact().event());
    }

    /** Whether a car missed an event as a whole. */
    boolean missed(Id<Car> car, Id<Event> event) {
        return taken.contains(new Taken(car, event));
    }
}
