package witnessmark.logbook.run;

import java.time.Instant;
import java.util.List;
import witnessmark.domain.Car;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** When a run went out of which somebody says only that it was before or after a change of engine: clear of other runs. */
final class BesideChange {
    private static final long MINUTE = 60_000;

    private final List<Run> runs;
    private final Moment change;

    /**
     * @param car whose engine was changed
     * @param changed the stay that began then
     */
    BesideChange(Facts facts, Id<Car> car, EngineInCar changed) {
        this.change = changed.from();
        this.runs = facts.of(Run.class).where(run -> car.equals(run.car()) && run.perhapsSame() == null).stream()
                .map(entry -> entry.fact())
                .toList();
    }

    /** The latest start by which it was back a minute before the change, and a minute before any run it would lie in. */
    Moment before(RunningTime length) {
        long start = change.epochMillis() - length.millis() - MINUTE;
        for (boolean free = false; !free; ) {
            long now = start;
            long earlier = runs.stream()
                    .filter(run -> lies(run, now, length))
                    .mapToLong(run -> run.start().epochMillis() - length.millis() - MINUTE)
                    .min()
                    .orElse(now);
            free = earlier == now;
            start = earlier;
        }
        return at(start);
    }

    /** The earliest start a minute after the change, and a minute after any run it would lie in. */
    Moment after(RunningTime length) {
        long start = change.epochMillis() + MINUTE;
        for (boolean free = false; !free; ) {
            long now = start;
            long later = runs.stream()
                    .filter(run -> lies(run, now, length))
                    .mapToLong(run -> run.back().epochMillis() + MINUTE)
                    .max()
                    .orElse(now);
            free = later == now;
            start = later;
        }
        return at(start);
    }

    private static boolean lies(Run run, long start, RunningTime length) {
        return run.start().epochMillis() < start + length.millis()
                && start < run.back().epochMillis();
    }

    private Moment at(long millis) {
        return Moment.of(Instant.ofEpochMilli(millis), change.zone());
    }
}
