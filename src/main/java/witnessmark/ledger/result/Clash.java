package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.outcome.Problem;

/**
 * Something written that contradicts something else written, or itself.
 *
 * @param entry the entry that was changed and is to be looked at
 * @param field the part of the entry that is wrong, by the name its record has for it, or null when it is the whole
 * @param problem what is wrong with it
 */
public record Clash(Entry<?> entry, @Nullable String field, Problem problem) {}
