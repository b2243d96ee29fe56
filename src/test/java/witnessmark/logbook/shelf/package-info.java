/** Where parts are and what stock there is, on a small shelf of its own. */
@NullMarked
package witnessmark.logbook.shelf;

import org.jspecify.annotations.NullMarked;
