/** Tests of a season's printed pages. */
@NullMarked
package witnessmark.launch.seasonsheet;

import org.jspecify.annotations.NullMarked;
