package witnessmark.logbook.standing;

import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.MissedRun;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.ledger.AsOf;

/** Which runs of timetables cars have behind them by a day: run, or written down as missed. */
final class RunsTaken {
    private record Taken(Id<Car> car, Id<PlannedRun> run) {}

    private final Set<Taken> taken = new HashSet<>();

    RunsTaken(Facts facts, AsOf asOf) {
        facts.of(Run.class)
                .where(run -> asOf.counts(run.start()))
                .forEach(run -> add(run.fact().car(), run.fact().planned()));
        facts.of(MissedRun.class)
                .where(missed -> asOf.counts(missed.at()))
                .forEach(missed -> add(missed.fact().car(), missed.fact().planned()));
    }

    private void add(@Nullable Id<Car> car, @Nullable Id<PlannedRun> run) {
        if (car != null && run != null) {
            taken.add(new Taken(car, run));
        }
    }

    boolean by(Id<Car> car, Id<PlannedRun> run) {
        return taken.contains(new Taken(car, run));
    }
}
