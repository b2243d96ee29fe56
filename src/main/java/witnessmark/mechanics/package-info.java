/**
 * Published formulas of engines and joints, whichever engine they serve. Lengths in millimetres, volumes in cubic
 * centimetres, forces in newtons, unless a method says otherwise. Each names where its formula is from.
 */
@NullMarked
package witnessmark.mechanics;

import org.jspecify.annotations.NullMarked;
