/**
 * Words what was found at a strip for its printed pages. Open {@link witnessmark.launch.stripsheet.StripSheetWords} first.
 */
@NullMarked
package witnessmark.launch.stripsheet;

import org.jspecify.annotations.NullMarked;
