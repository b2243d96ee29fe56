package witnessmark.domain;

import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * Running told by others: a customer's engine back after a year.
 *
 * @param engine which engine
 * @param from from when
 * @param to to when
 * @param likely the likely figure
 * @param lowest at least
 * @param highest at most; limits are judged here
 * @param toldBy by whom
 * @param howHeKnows how he knows
 */
public record ToldRunning(
        Id<Engine> engine,
        Moment from,
        Moment to,
        RunningTime likely,
        RunningTime lowest,
        RunningTime highest,
        String toldBy,
        String howHeKnows)
        implements Fact {
    public ToldRunning {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("the time told of ends after it begins");
        }
        if (lowest.compareTo(likely) > 0 || likely.compareTo(highest) > 0) {
            throw new IllegalArgumentException("likely hours lie between the lowest and the highest");
        }
    }

    @Override
    public Moment happened() {
        return from;
    }
}
