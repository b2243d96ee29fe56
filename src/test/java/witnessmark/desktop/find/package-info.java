/** Finding, tried on the sample season. */
@NullMarked
package witnessmark.desktop.find;

import org.jspecify.annotations.NullMarked;
