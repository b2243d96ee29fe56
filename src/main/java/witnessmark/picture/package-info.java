/**
 * Pictures from outside, known by what they are and not by what they are called, and read in bounded memory. Handed a
 * file; begin with {@link witnessmark.picture.Pictures}.
 */
@NullMarked
package witnessmark.picture;

import org.jspecify.annotations.NullMarked;
