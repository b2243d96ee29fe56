/** Tests of the frame around the places. */
@NullMarked
package witnessmark.desktop.shell;

import org.jspecify.annotations.NullMarked;
