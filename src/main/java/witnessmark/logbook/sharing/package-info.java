/**
 * What leaves the team: an incident without names and money, tags on bagged parts. Begin with
 * {@link witnessmark.logbook.sharing.WriteCaseSheet}.
 */
@NullMarked
package witnessmark.logbook.sharing;

import org.jspecify.annotations.NullMarked;
