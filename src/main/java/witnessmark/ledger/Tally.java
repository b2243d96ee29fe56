package witnessmark.ledger;

import witnessmark.domain.PriorKind;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.ToldRunning;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;

/** Adds up one life. A sum that leaves the range of a long is refused, never wrapped. */
final class Tally {
    final Counter counter;
    long known;
    long told;
    long toldLowest;
    long toldHighest;
    long estimated;
    boolean atLeast;
    int runs;
    int runsNotRead;

    Tally(Counter counter) {
        this.counter = counter;
    }

    void add(Run run) {
        Long amount = run.of(counter);
        addRuns(1, amount == null ? 1 : 0);
        if (amount == null) {
            return;
        }
        switch (run.knownBy().of(counter)) {
            case TOLD -> addTold(amount, amount, amount);
            case ESTIMATED -> addEstimated(amount);
            case TRACE, HOUR_METER, TIMED -> addKnown(amount);
        }
    }

    /** Told running tells hours; any other counter it leaves unread. */
    void add(ToldRunning stretch) {
        boolean told = counter == Counter.RUNNING;
        addRuns(1, told ? 0 : 1);
        if (told) {
            addTold(
                    stretch.lowest().millis(),
                    stretch.likely().millis(),
                    stretch.highest().millis());
        }
    }

    void add(PriorLife prior) {
        if (prior.kind() == PriorKind.KNOWN) {
            addKnown(prior.amount());
        } else {
            addPrior(prior, prior.lowest());
        }
    }

    /** A life carried in of which nobody can say how much came after the moment asked about: none, or all of it. */
    void addPerhaps(PriorLife prior) {
        addPrior(prior, 0);
    }

    private void addPrior(PriorLife prior, long lowest) {
        atLeast |= prior.kind() == PriorKind.UNKNOWN;
        addTold(lowest, prior.amount(), highest(prior));
    }

    void addKnown(long amount) {
        known = Math.addExact(known, amount);
    }

    void addTold(long lowest, long likely, long highest) {
        toldLowest = Math.addExact(toldLowest, lowest);
        told = Math.addExact(told, likely);
        toldHighest = Math.addExact(toldHighest, highest);
    }

    void addEstimated(long amount) {
        estimated = Math.addExact(estimated, amount);
    }

    void addRuns(int all, int notRead) {
        runs += all;
        runsNotRead += notRead;
    }

    Life life() {
        return new Life(counter, known, told, toldLowest, toldHighest, estimated, atLeast, runs, runsNotRead);
    }

    /** The most a prior life can be; of an unknown one only its least is known. */
    static long highest(PriorLife prior) {
        return prior.kind() == PriorKind.UNKNOWN ? prior.amount() : prior.highest();
    }
}
