package witnessmark.ledger;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/** What can be wrong with one run by itself. */
final class RunChecks {
    private static final long MINUTE = 60_000;
    private static final long HOUR = 60 * MINUTE;

    /** Runs outside these are queried: common practice, no source. */
    private static final RunningTime SHORTEST = new RunningTime(3 * MINUTE);

    private static final RunningTime LONGEST = new RunningTime(3 * HOUR);

    /** Nothing runs a whole day in one: it is a slip of the pen. */
    private static final RunningTime TOO_LONG = new RunningTime(24 * HOUR);

    private final AsOf today;
    private final Clashes clashes;

    RunChecks(AsOf today, Clashes clashes) {
        this.today = today;
        this.clashes = clashes;
    }

    void check(Entry<Run> entry) {
        Run run = entry.fact();
        if (run.start().isAfter(today.last())) {
            clashes.addIn(entry, "start", ProblemKind.RUN_IN_FUTURE, run.start(), today.day());
        }
        RunningTime running = run.running();
        if (running.compareTo(TOO_LONG) >= 0) {
            clashes.addIn(entry, "running", ProblemKind.RUN_TOO_LONG, running, TOO_LONG);
        } else if (running.compareTo(SHORTEST) < 0 || running.compareTo(LONGEST) > 0) {
            clashes.addIn(entry, "running", ProblemKind.RUN_LENGTH_UNUSUAL, running, SHORTEST, LONGEST);
        }
        share(entry, "track", run.track());
        share(entry, "warmUp", run.warmUp());
        share(entry, "loaded", run.loaded());
        share(entry, "highSpeed", run.highSpeed());
    }

    private void share(Entry<Run> entry, String field, @Nullable RunningTime share) {
        RunningTime running = entry.fact().running();
        if (share != null && share.compareTo(running) > 0) {
            clashes.addIn(entry, field, ProblemKind.LONGER_THAN_RUN, field, share, running);
        }
    }
}
