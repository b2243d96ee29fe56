/**
 * Faces of head, gasket and block: where low zones lie, how flat a face is, how fast what was skimmed comes back, how
 * deep a low place was by the passes that took it away. Pure. Open {@link witnessmark.fit.face.Face} first.
 */
@NullMarked
package witnessmark.fit.face;

import org.jspecify.annotations.NullMarked;
