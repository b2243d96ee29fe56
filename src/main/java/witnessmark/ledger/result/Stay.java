package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.quantity.Moment;

/**
 * A time a part was fitted somewhere.
 *
 * @param fitment its own; its set's while it was not split off
 * @param from since when
 * @param to when it came off or was split off, or null when it was still there
 */
public record Stay(
        Entry<Fitment> fitment, Moment from, @Nullable Moment to) {}
