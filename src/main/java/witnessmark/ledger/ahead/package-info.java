/**
 * What is to come, by the timetables and the team's own record. It differs from the rest of {@code ledger} in that its
 * answers are expectations. Open {@link witnessmark.ledger.ahead.Ahead} first.
 */
@NullMarked
package witnessmark.ledger.ahead;

import org.jspecify.annotations.NullMarked;
