/**
 * A build as a whole: what its zones brought within reach, what came out and went in, what was tightened, what is still
 * open. {@link witnessmark.logbook.building.SeeBuild} sees it, {@link witnessmark.logbook.building.WriteBuildWork} writes
 * what was done of it as one change.
 */
@NullMarked
package witnessmark.logbook.building;

import org.jspecify.annotations.NullMarked;
