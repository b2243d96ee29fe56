/**
 * What the ledger answers: lives, the entries behind them, how near a limit is. Plain records of integers in the unit of
 * their {@link witnessmark.quantity.Counter}; nothing here computes beyond adding up. Open
 * {@link witnessmark.ledger.result.Life} first, then {@link witnessmark.ledger.result.Account}.
 */
@NullMarked
package witnessmark.ledger.result;

import org.jspecify.annotations.NullMarked;
