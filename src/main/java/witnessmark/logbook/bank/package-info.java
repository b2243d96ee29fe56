/**
 * Statements of banks and bookkeepers: how their columns are to be read, what is new in one, and which line pays which
 * cost. Begin with {@link witnessmark.logbook.bank.TakeStatement}; {@link witnessmark.logbook.bank.Reconcile} says what
 * matches what and what is left over on either side.
 */
@NullMarked
package witnessmark.logbook.bank;

import org.jspecify.annotations.NullMarked;
