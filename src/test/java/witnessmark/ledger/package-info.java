/** Tests of the life ledger, and the seeded histories they run on. Open {@link witnessmark.ledger.Story} first. */
@NullMarked
package witnessmark.ledger;

import org.jspecify.annotations.NullMarked;
