/** Photos in the window. */
@NullMarked
package witnessmark.desktop.photos;

import org.jspecify.annotations.NullMarked;
