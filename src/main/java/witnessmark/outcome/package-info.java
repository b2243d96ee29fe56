/**
 * How a use case ended: it worked, it worked except for some rows, or it did not, because of problems from a closed
 * list. A {@link witnessmark.outcome.Problem} carries facts, never a sentence; {@code wording} turns it into one.
 * Open {@link witnessmark.outcome.Outcome} first.
 */
@NullMarked
package witnessmark.outcome;

import org.jspecify.annotations.NullMarked;
