package witnessmark.study;

import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Run;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** The moment an incident counts from: after the start of its run, so that the run is among those before the failure. */
public final class FailedAt {
    private FailedAt() {}

    /** The moment of one. */
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
