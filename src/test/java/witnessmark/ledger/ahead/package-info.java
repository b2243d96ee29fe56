@NullMarked
package witnessmark.ledger.ahead;

import org.jspecify.annotations.NullMarked;
