/** Incidents with what hangs on them, held against the ledger and the season's own tables. */
@NullMarked
package witnessmark.logbook.money;

import org.jspecify.annotations.NullMarked;
