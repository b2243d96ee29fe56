/**
 * What was written when, by whom and why. An {@link witnessmark.domain.history.Amendment} names the fields it changed;
 * folding the amendments of a record gives the record back exactly, whatever order they arrive in. Open
 * {@link witnessmark.domain.history.Fold} first.
 */
@NullMarked
package witnessmark.domain.history;

import org.jspecify.annotations.NullMarked;
