/**
 * Faces of head, gasket and block: where low zones lie, how flat a face is, how fast what was skimmed comes back, how
 * deep a low place was by the passes that took it away. Pure. Open {@link witnessmark.fit.face.Zones} first; a {@link witnessmark.fit.result.face.Face} is what all of them work on.
 */
@NullMarked
package witnessmark.fit.face;

import org.jspecify.annotations.NullMarked;
