package witnessmark.logbook.engines;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Limit;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.MarkState;

/**
 * A limit that falls on an engine or on a part in it.
 *
 * @param use the limit and what was run against it
 * @param mark the part's mark, or null when it falls on the engine as a whole
 * @param position the position's name, or null when it falls on the engine as a whole
 * @param canWreck whether the part's failure can wreck the engine
 */
public record NearestLimit(
        LimitUse use, @Nullable String mark, @Nullable String position, boolean canWreck) {
    public Limit limit() {
        return use.limit().fact();
    }

    public MarkState state() {
        return use.state();
    }

    /** Whether it is past only if told running is taken at its high end. */
    public boolean perhapsOver() {
        return use.perhapsOver();
    }
}
