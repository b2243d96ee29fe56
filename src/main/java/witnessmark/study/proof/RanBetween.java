package witnessmark.study.proof;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.study.FailedAt;
import witnessmark.study.result.UseOfRuns;

/** Running of an engine or a part between two moments, as the ledger charges it. */
final class RanBetween {
    private final LifeLedger ledger;

    RanBetween(LifeLedger ledger) {
        this.ledger = ledger;
    }

    /**
     * How much.
     *
     * @param part the part that takes its running along, or null for the engine
     * @param from since when, or null for its whole life
     * @param until up to when, or null for all that counts
     */
    RunningTime of(Id<Engine> engine, @Nullable Id<Part> part, @Nullable Moment from, @Nullable Moment until) {
        long since = life(engine, part, from).total();
        long after = until == null ? 0 : life(engine, part, until).total();
        return new RunningTime(Math.max(0, since - after));
    }

    /** Whether some of it is not known. */
    boolean atLeast(Id<Engine> engine, @Nullable Id<Part> part, @Nullable Moment from) {
        Life life = life(engine, part, from);
        return life.runsNotRead() > 0 || from == null && life.atLeast();
    }

    private Life life(Id<Engine> engine, @Nullable Id<Part> part, @Nullable Moment since) {
        if (since == null) {
            return part == null ? ledger.engineLife(engine, Counter.RUNNING) : ledger.life(part, Counter.RUNNING);
        }
        return part == null
                ? ledger.engineSince(engine, Counter.RUNNING, since)
                : ledger.since(part, Counter.RUNNING, since);
    }

    /** The moment an incident counts from. */
    Moment failedAt(Entry<Incident> incident) {
        return FailedAt.of(ledger.facts(), incident);
    }

    /** How hard an engine was used between two moments. */
    UseOfRuns use(Id<Engine> engine, @Nullable Moment from, @Nullable Moment until) {
        List<Run> runs = new ArrayList<>();
        ledger.facts().of(Run.class).inForce().map(Entry::fact).forEach(run -> {
            boolean inside = (from == null || !run.start().isBefore(from))
                    && (until == null || !run.start().isAfter(until));
            if (run.engine().equals(engine) && inside && ledger.asOf().counts(run.start())) {
                runs.add(run);
            }
        });
        EngineSpeed highest = null;
        long running = 0;
        long loaded = 0;
        for (Run run : runs) {
            EngineSpeed reached = run.highest();
            highest = reached != null && (highest == null || reached.compareTo(highest) > 0) ? reached : highest;
            if (run.loaded() != null) {
                running += run.running().millis();
                loaded += run.loaded().millis();
            }
        }
        return new UseOfRuns(runs.size(), highest, running > 0 ? (double) loaded / running : Double.NaN);
    }
}
