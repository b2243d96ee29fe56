/**
 * Words a face with its skims for its printed pages. Open {@link witnessmark.launch.facesheet.FaceSheetWords} first.
 */
@NullMarked
package witnessmark.launch.facesheet;

import org.jspecify.annotations.NullMarked;
