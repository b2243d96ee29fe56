/** The first place, on the sample season. */
@NullMarked
package witnessmark.desktop.beforewego;

import org.jspecify.annotations.NullMarked;
