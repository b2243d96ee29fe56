package witnessmark.logbook.sheets;

import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Problem;

/**
 * What contradicts the rest of the logbook.
 *
 * @param field beside which it is shown, or null when it belongs to none
 */
public record FoundProblem(@Nullable SheetField field, Problem problem) {}
