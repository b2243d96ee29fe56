/**
 * Sees faces of heads, gaskets and blocks, and what skims took, as of the day looked at. Open {@link
 * witnessmark.logbook.faces.SeeFaces} first.
 */
@NullMarked
package witnessmark.logbook.faces;

import org.jspecify.annotations.NullMarked;
