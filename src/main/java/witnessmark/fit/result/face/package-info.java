/** What is worked out of faces and skims: low zones and where they lie, how flat, what a skim did. */
@NullMarked
package witnessmark.fit.result.face;

import org.jspecify.annotations.NullMarked;
