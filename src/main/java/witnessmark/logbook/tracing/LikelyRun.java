package witnessmark.logbook.tracing;

import java.util.Set;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;

/**
 * A run a trace may be of.
 *
 * @param run as it is written
 * @param because what speaks for it; empty when only its length can
 * @param hasTrace whether it has one already
 * @param otherCar whether the file is by its name or its first lines of another car than it was
 */
public record LikelyRun(Entry<Run> run, Set<Because> because, boolean hasTrace, boolean otherCar) {
    public LikelyRun {
        because = Set.copyOf(because);
    }

    /** What speaks for a run. */
    public enum Because {
        /** It went out when the logger's clock says the trace begins. */
        CLOCK(8),
        /** It is of the day in the file's name, or else of the logger's clock. */
        DAY(4),
        /** Its car is in the file's name, or in its first lines. */
        CAR(2),
        /** Its own name is in the file's name. */
        NAME(1);

        private final int weight;

        Because(int weight) {
            this.weight = weight;
        }

        int weight() {
            return weight;
        }
    }

    /** From how much on a run is named without asking: its day at least. */
    static final int SURE = 4;

    private static final int TRACED = 3;
    /** More than all that can speak for it: a trace is no other car's, whatever day and clock say. */
    private static final int OTHER_CAR = 16;

    int weight() {
        int weight = because.stream().mapToInt(Because::weight).sum();
        return weight - (hasTrace ? TRACED : 0) - (otherCar ? OTHER_CAR : 0);
    }
}
