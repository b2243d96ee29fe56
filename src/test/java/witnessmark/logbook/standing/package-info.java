/** How the team stands, checked on the sample season. */
@NullMarked
package witnessmark.logbook.standing;

import org.jspecify.annotations.NullMarked;
