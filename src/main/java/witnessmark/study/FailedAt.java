package witnessmark.study;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Run;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** When and on what an incident failed, where it leaves that to its run. */
public final class FailedAt {
    private FailedAt() {}

    /** The engine an incident names; where it names none, that of its run. Null where neither says one. */
    public static @Nullable Id<Engine> engine(Facts facts, Incident incident) {
        return incident.engine() != null || incident.run() == null
                ? incident.engine()
                : facts.of(Run.class).get(incident.run()).engine();
    }

    /** The moment an incident counts from: after the start of its run, so that the run is among those before the failure. */
    public static Moment of(Facts facts, Entry<Incident> incident) {
        Id<Run> run = incident.fact().run();
        Moment at = incident.fact().at();
        if (run == null) {
            return at;
        }
        Moment start = facts.of(Run.class).get(run).start();
        return start.isBefore(at) ? at : start.plus(new RunningTime(1));
    }
}
