package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/**
 * How much of a car's weekend money is owed to an incident: of an event it did not go to, a start it did not take, or a
 * run that was lost though it had begun.
 *
 * @param missed the event or the start that was missed, or null
 * @param run the run that was lost, or null
 * @param incident because of which incident
 * @param share of the car's money at that event, in hundredths of a percent: entered, never worked out
 * @param note anything else
 */
public record MissedShare(
        @Nullable Id<MissedRun> missed, @Nullable Id<Run> run, Id<Incident> incident, int share, String note)
        implements Fact {
    public MissedShare {
        if ((missed == null) == (run == null)) {
            throw new IllegalArgumentException("a share is of something missed, or of one run");
        }
        if (share < 1 || share > Cause.WHOLE) {
            throw new IllegalArgumentException("a share is more than nothing, up to the whole");
        }
    }
}
