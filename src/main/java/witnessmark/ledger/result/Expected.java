package witnessmark.ledger.result;

import witnessmark.quantity.Counter;

/**
 * What running to come is expected to take of a counter, as a range.
 *
 * @param counter counted in what
 * @param low the lower end of the usual range
 * @param likely the middle
 * @param high the longer end of the usual range: limits are judged here
 * @param runs how many runs of the team it rests on; 0 when on none
 * @param events how many events these were at
 * @param basis what it rests on; of several runs the weakest
 */
public record Expected(Counter counter, long low, long likely, long high, int runs, int events, Basis basis) {
    /** What an expectation rests on, strongest first. */
    public enum Basis {
        /** The team's own runs of this kind at this circuit. */
        OWN_THERE,
        /** The team's own runs of this kind anywhere. */
        OWN,
        /** What the timetable states, as long as there are too few runs. */
        TIMETABLE,
        /** What is usual in the trade, as long as nothing better is known. */
        USUAL
    }

    public Expected {
        if (low < 0 || low > likely || likely > high) {
            throw new IllegalArgumentException("what is likely lies in its range, from 0 up");
        }
    }

    /**
     * Both together. Both ends add up, as if every run were long or short together: the range is wide rather than
     * narrow.
     *
     * @throws IllegalArgumentException if the other is counted in something else
     */
    public Expected plus(Expected other) {
        if (other.counter != counter) {
            throw new IllegalArgumentException(counter + " and " + other.counter + " do not add up");
        }
        return new Expected(
                counter,
                Math.addExact(low, other.low),
                Math.addExact(likely, other.likely),
                Math.addExact(high, other.high),
                Math.max(runs, other.runs),
                Math.max(events, other.events),
                basis.compareTo(other.basis) > 0 ? basis : other.basis);
    }
}
