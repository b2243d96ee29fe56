/**
 * Statements of banks in the window: what one holds before it is taken in, and what its lines pay. Begin with {@link
 * witnessmark.desktop.bank.BankStatements}.
 */
@NullMarked
package witnessmark.desktop.bank;

import org.jspecify.annotations.NullMarked;
