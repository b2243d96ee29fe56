/**
 * What the team writes down. Each kind of entry is a record that refuses impossible states; what ties entries together
 * is an {@link witnessmark.domain.Id} of the other. An {@link witnessmark.domain.Entry} is a fact with its identity and
 * standing; {@link witnessmark.domain.Facts} is everything written so far, immutable.
 *
 * <p>{@code domain.image} turns facts into flat rows and back, for the file and for the season folder;
 * {@code domain.history} holds what was written when, and folds it. Open {@link witnessmark.domain.Run} first, then
 * {@link witnessmark.domain.Fitment}.
 */
@NullMarked
package witnessmark.domain;

import org.jspecify.annotations.NullMarked;
