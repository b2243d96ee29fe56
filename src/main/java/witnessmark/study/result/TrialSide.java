package witnessmark.study.result;

import java.util.List;

/**
 * One side of a trial.
 *
 * @param lives every time a part of it was fitted, the longest life first
 * @param neverFitted parts of it that were never fitted
 */
public record TrialSide(List<TrialLife> lives, int neverFitted) {
    public TrialSide {
        lives = List.copyOf(lives);
    }

    /** How many ended like that. */
    public int ended(TrialLife.End end) {
        return (int) lives.stream().filter(life -> life.end() == end).count();
    }

    /** What all of them ran while they were watched, in milliseconds. */
    public long ran() {
        return lives.stream().mapToLong(TrialLife::ran).sum();
    }

    /** How many have run and stand in no comparison. */
    public int leftOut() {
        return (int)
                lives.stream().filter(life -> life.ran() > 0 && !life.counts()).count();
    }
}
