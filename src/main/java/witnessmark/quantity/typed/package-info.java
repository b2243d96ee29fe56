/**
 * What people type, read as measures. A text is read whole or not at all; what can be read in two ways is handed back
 * as two readings to ask about; what cannot be read comes with examples that can. Nothing here depends on the
 * machine's language, zone or clock: whatever varies is an argument.
 *
 * <p>The measures themselves, and the one text form each reads back exactly, are in {@link witnessmark.quantity}; how
 * they are shown is the business of {@code wording}. Open {@link witnessmark.quantity.typed.Typed} first, then
 * {@link witnessmark.quantity.typed.TypedTime}.
 */
@NullMarked
package witnessmark.quantity.typed;

import org.jspecify.annotations.NullMarked;
