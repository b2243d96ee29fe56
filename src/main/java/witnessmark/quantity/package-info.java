/**
 * The measures a logbook is written in: small, final, exact. Each holds an integer in one stated unit (milliseconds,
 * metres, nanometres, millikelvin, pascal, microlitres), so that a life summed over twenty seasons carries no rounding.
 *
 * <p>How a measure is typed by people and shown to them is the business of {@code wording}; here is only the one text
 * form that reads back exactly. Open {@link witnessmark.quantity.RunningTime} first, then
 * {@link witnessmark.quantity.Counter}.
 */
@NullMarked
package witnessmark.quantity;

import org.jspecify.annotations.NullMarked;
