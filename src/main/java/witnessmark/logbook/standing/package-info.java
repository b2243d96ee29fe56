/**
 * How the team stands before it goes: the next event, what holds, what is over and what comes due there, who was last
 * out, what that moved. It differs from the rest of {@code logbook} in that it writes nothing. Open
 * {@link witnessmark.logbook.standing.SeeStanding} first.
 */
@NullMarked
package witnessmark.logbook.standing;

import org.jspecify.annotations.NullMarked;
