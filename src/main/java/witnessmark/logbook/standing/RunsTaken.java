package witnessmark.logbook.standing;

import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.MissedRun;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.ledger.AsOf;

/**
 * Which runs of timetables cars have behind them by a day: run, or written down as missed. A missed start that names no
 * run is the whole event.
 */
final class RunsTaken {
    /** A car, and a run or a whole event. */
    private record Taken(Id<Car> car, Id<?> what) {}

    private final Set<Taken> taken = new HashSet<>();

    RunsTaken(Facts facts, AsOf asOf) {
        facts.of(Run.class)
                .where(run -> asOf.counts(run.start()))
                .forEach(run -> add(run.fact().car(), run.fact().planned()));
        facts.of(MissedRun.class).where(missed -> asOf.counts(missed.at())).stream()
                .map(Entry::fact)
                .forEach(missed -> add(missed.car(), missed.planned() == null ? missed.event() : missed.planned()));
    }

    private void add(@Nullable Id<Car> car, @Nullable Id<?> what) {
        if (car != null && what != null) {
            taken.add(new Taken(car, what));
        }
    }

    boolean by(Id<Car> car, Entry<PlannedRun> run) {
        return taken.contains(new Taken(car, run.id()))
                || taken.contains(new Taken(car, run.fact().event()));
    }
}
