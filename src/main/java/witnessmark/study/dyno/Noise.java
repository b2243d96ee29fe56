package witnessmark.study.dyno;

import java.util.List;
import java.util.Optional;
import witnessmark.statistics.Repeated;

/**
 * What two sheets of one dyno may differ by with nothing changed.
 *
 * @param share of the figure
 * @param fromPulls whether repeated pulls gave it, not what dynos usually repeat by
 */
record Noise(double share, boolean fromPulls) {
    /**
     * Same dyno, another day, corrected: 1 to 1.5 % (common practice, no source). Pulls of one day cannot see what changes
     * from day to day, so less than this is never taken.
     */
    private static final double USUAL = 0.015;

    private static final double CONFIDENCE = 0.95;

    /** From how the pulls of both repeat, if they say more than is usual. */
    static Noise of(List<Optional<Repeated>> repeats, int one, int other) {
        double squares = 0;
        int freedom = 0;
        for (Optional<Repeated> each : repeats) {
            if (each.isPresent()) {
                squares += each.get().deviation()
                        * each.get().deviation()
                        * each.get().freedom();
                freedom += each.get().freedom();
            }
        }
        if (freedom == 0) {
            return new Noise(USUAL, false);
        }
        double own = new Repeated(Math.sqrt(squares / freedom), freedom).ofDifference(one, other, CONFIDENCE);
        return own > USUAL ? new Noise(own, true) : new Noise(USUAL, false);
    }
}
