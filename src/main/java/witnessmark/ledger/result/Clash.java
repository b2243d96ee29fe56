package witnessmark.ledger.result;

import witnessmark.domain.Entry;
import witnessmark.outcome.Problem;

/**
 * Something written that contradicts something else written, or itself.
 *
 * @param entry the entry that was changed and is to be looked at
 * @param problem what is wrong with it
 */
public record Clash(Entry<?> entry, Problem problem) {}
