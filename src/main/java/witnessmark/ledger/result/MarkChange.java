package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;

/**
 * What a run does to how something stands in one respect.
 *
 * @param before how it stands without the run; null when only the run brings it about
 * @param after how it stands with it
 */
public record MarkChange(@Nullable Mark before, Mark after) {
    /** Whether it is over with the run, and was not without it. */
    public boolean goesOver() {
        return after.state() == MarkState.OVER && (before == null || before.state() != MarkState.OVER);
    }

    /** Whether the run is what holds it. */
    public boolean holds() {
        return after.state() == MarkState.HELD && before == null;
    }
}
