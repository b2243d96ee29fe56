package witnessmark.logbook.port;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/**
 * Copies of one logbook in a second place: a stick, a card, a shared folder. Each call takes as long as that place does.
 * It never delays a saving, and nothing there is touched that was not put there by the same logbook on the same computer.
 */
public interface SecondPlace {
    /**
     * A copy made.
     *
     * @param file where it is
     * @param holds names the last change in it; what was written later is not
     */
    record Made(Path file, String holds) {}

    /** Whether the place is there with what was begun in it: a mount point without its stick is an empty folder. */
    boolean isThere(Path place);

    /** When the newest good copy there was made; empty when there is none. */
    Optional<Instant> newest(Path place);

    /**
     * Makes room for copies in a place, and the first copy.
     *
     * @return did-not when it is gone, full, or not to be written to
     */
    Outcome<Made> begin(Path place);

    /** What people ought to know of a place that is there: that it lies on the disk of the logbook, what else lies in it. */
    List<Problem> known(Path place);

    /**
     * Makes one more copy where copies were begun: beside the older ones, brought to the disk, read back, opened and
     * checked, and only then named.
     *
     * @return worked-except when the logbook is not as it was written: then the copy lies beside the good ones
     */
    Outcome<Made> write(Path place);

    /**
     * When something was first written that a copy does not hold; empty when it holds all.
     *
     * @param holds of the copy; empty for none. That of a copy newer than the logbook counts as none: the logbook was
     *     restored since
     */
    Optional<Instant> firstWrittenAfter(String holds);
}
