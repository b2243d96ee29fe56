/** Builds as a whole, on the sample season and on a logbook of the test's own. */
@NullMarked
package witnessmark.logbook.building;

import org.jspecify.annotations.NullMarked;
