/**
 * Words a build sheet for its printed pages: every figure in measuring order, then how they stand. Open
 * {@link witnessmark.launch.buildsheet.BuildSheetWords} first.
 */
@NullMarked
package witnessmark.launch.buildsheet;

import org.jspecify.annotations.NullMarked;
