package witnessmark.study.result;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.ledger.result.HeldBy;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * An engine's way up to a failure, as the logbook has it.
 *
 * @param incident the failure
 * @param engine on which engine
 * @param rebuilt the build from which its hours count, or null where they count from its first entry
 * @param points one for each day on which something was done, seen or broke, the earliest first, the failure last
 */
public record WayTo(
        Entry<Incident> incident,
        Entry<Engine> engine,
        @Nullable Entry<Build> rebuilt,
        List<Point> points) {
    public WayTo {
        points = List.copyOf(points);
    }

    /** The last day on which something was read and nothing of it was worse than it should be; empty where there is none. */
    public Optional<Point> lastGood() {
        return points.stream()
                .filter(point -> point.steps().stream().anyMatch(step -> step.kind() == Kind.GOOD))
                .reduce((one, next) -> next);
    }

    /**
     * A day on the way.
     *
     * @param at the first moment of it
     * @param hours what the engine had run by then, since it was rebuilt
     * @param before what it ran from then to the failure
     * @param atLeast whether some of either is not known
     * @param steps what happened, what was done first
     */
    public record Point(Moment at, RunningTime hours, RunningTime before, boolean atLeast, List<Step> steps) {
        public Point {
            steps = List.copyOf(steps);
        }
    }

    /**
     * One thing that happened.
     *
     * @param of the entries that say so, at least one
     * @param broke what the runs among them broke: each run by each rule once
     */
    public record Step(Kind kind, List<Entry<?>> of, List<HeldBy> broke) {
        public Step {
            of = List.copyOf(of);
            broke = List.copyOf(broke);
        }
    }

    /** What kind of thing it is, in the order in which a day tells it. */
    public enum Kind {
        /** Built anew: its hours count from here. */
        REBUILT,
        /** A build, parts fitted, oil, work, another car. */
        CHANGED,
        /** Everything read was as it should be. */
        GOOD,
        /** Read worse than it should be, going that way, or past what holds an engine. */
        SYMPTOM,
        /** Another incident on the way. */
        BROKE,
        FAILURE
    }
}
