package witnessmark.logbook.engines;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.domain.MissedRun;
import witnessmark.domain.Run;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.Work;
import witnessmark.quantity.Moment;

/** One entry of the line of an engine's life. */
public sealed interface Happening {
    Entry<?> source();

    Moment from();

    /** When it was over; null while it goes on as of the day looked at, and for what has no length. */
    @Nullable
    Moment to();

    /** A build. */
    record Built(Entry<Build> source, @Nullable Moment to) implements Happening {
        @Override
        public Moment from() {
            return source.fact().opened();
        }
    }

    /**
     * A run.
     *
     * @param event the event's name, or null
     * @param car the car's name, or null on the dyno
     */
    record Ran(
            Entry<Run> source,
            @Nullable String event,
            @Nullable String car) implements Happening {
        @Override
        public Moment from() {
            return source.fact().start();
        }

        @Override
        public Moment to() {
            return source.fact().back();
        }
    }

    /** A run not taken. */
    record Missed(Entry<MissedRun> source, String event, String car) implements Happening {
        @Override
        public Moment from() {
            return source.fact().at();
        }

        @Override
        public @Nullable Moment to() {
            return null;
        }
    }

    /**
     * An incident.
     *
     * @param event the event's name, or null
     * @param car the car's name, or null
     */
    record Broke(
            Entry<Incident> source,
            @Nullable String event,
            @Nullable String car) implements Happening {
        @Override
        public Moment from() {
            return source.fact().at();
        }

        @Override
        public @Nullable Moment to() {
            return null;
        }
    }

    /**
     * Work on the engine, or on a part that is or was its own.
     *
     * @param part the part's mark, or null when done on the engine
     */
    record Worked(Entry<Work> source, @Nullable String part) implements Happening {
        @Override
        public Moment from() {
            return source.fact().at();
        }

        @Override
        public @Nullable Moment to() {
            return null;
        }
    }

    /** A time in a car. */
    record InCar(
            Entry<EngineInCar> source, String car, @Nullable Moment to) implements Happening {
        @Override
        public Moment from() {
            return source.fact().from();
        }
    }

    /** Running told of by somebody. */
    record Told(Entry<ToldRunning> source) implements Happening {
        @Override
        public Moment from() {
            return source.fact().from();
        }

        @Override
        public Moment to() {
            return source.fact().to();
        }
    }
}
