package witnessmark.ledger.result;

import witnessmark.quantity.Counter;

/**
 * How much something has run, by one counter, kept apart by how it is known. All figures are whole numbers of the
 * counter's unit, 0 or more.
 *
 * @param counter counted in what
 * @param known read from a trace or an hour meter, timed, or carried in as known
 * @param told by somebody's word, the likely figure
 * @param toldLowest the least that word allows
 * @param toldHighest the most that word allows
 * @param estimated estimated by the team
 * @param atLeast some life before the logbook is not known, so that every figure is a least
 * @param runs how many runs and told stretches were charged
 * @param runsNotRead how many of these do not say this counter; they add nothing and the life is not known in full
 */
public record Life(
        Counter counter,
        long known,
        long told,
        long toldLowest,
        long toldHighest,
        long estimated,
        boolean atLeast,
        int runs,
        int runsNotRead) {
    public Life {
        if (known < 0 || estimated < 0 || toldLowest < 0 || toldLowest > told || told > toldHighest) {
            throw new IllegalArgumentException("a life is 0 or more, and what is told lies in its range");
        }
        if (runsNotRead < 0 || runsNotRead > runs) {
            throw new IllegalArgumentException("of " + runs + " runs, " + runsNotRead + " cannot be unread");
        }
    }

    /** The life of what has never run. */
    public static Life none(Counter counter) {
        return new Life(counter, 0, 0, 0, 0, 0, false, 0, 0);
    }

    /** The likely figure. */
    public long total() {
        return sum(known, told, estimated);
    }

    /** The figure with told running at its low end. */
    public long lowest() {
        return sum(known, toldLowest, estimated);
    }

    /** The figure with told running at its high end: limits are judged here. */
    public long highest() {
        return sum(known, toldHighest, estimated);
    }

    /** Whether any of it is somebody's word or an estimate, so that its figures are about right and no better. */
    public boolean about() {
        return estimated > 0 || toldHighest > 0;
    }

    /** Whether every run says this counter and no life from before the logbook is missing. */
    public boolean complete() {
        return !atLeast && runsNotRead == 0;
    }

    /**
     * Both lives together.
     *
     * @throws IllegalArgumentException if the other is counted in something else
     */
    public Life plus(Life other) {
        if (other.counter != counter) {
            throw new IllegalArgumentException(counter + " and " + other.counter + " do not add up");
        }
        return new Life(
                counter,
                Math.addExact(known, other.known),
                Math.addExact(told, other.told),
                Math.addExact(toldLowest, other.toldLowest),
                Math.addExact(toldHighest, other.toldHighest),
                Math.addExact(estimated, other.estimated),
                atLeast || other.atLeast,
                Math.addExact(runs, other.runs),
                Math.addExact(runsNotRead, other.runsNotRead));
    }

    private static long sum(long known, long told, long estimated) {
        return Math.addExact(Math.addExact(known, told), estimated);
    }
}
