/**
 * Build sheets held against limits, at rest, and what would put them right. Begin with
 * {@link witnessmark.fit.Sheet}, what is known of an engine on the bench, and {@link witnessmark.fit.Checks}, all that
 * is worked out of it; at speed with {@link witnessmark.fit.speed.SpeedChecks}, faces in {@code fit.face}. Figures are whole parts of their kind's {@link witnessmark.quantity.Dimension}.
 */
@NullMarked
package witnessmark.fit;

import org.jspecify.annotations.NullMarked;
