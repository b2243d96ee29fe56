/** The printed page of a face, read back. */
@NullMarked
package witnessmark.launch.facesheet;

import org.jspecify.annotations.NullMarked;
