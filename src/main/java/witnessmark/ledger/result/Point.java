package witnessmark.ledger.result;

import witnessmark.domain.Entry;
import witnessmark.quantity.Moment;

/**
 * How much had run once an entry was over, for a line over time.
 *
 * @param at when it was over: a run, when it came back
 * @param lowest with told running at its low end, in the counter's unit
 * @param likely the likely figure
 * @param highest with told running at its high end
 * @param source the entry that brought it there
 */
public record Point(Moment at, long lowest, long likely, long highest, Entry<?> source) {}
