/** Bringing traces in, in the window. */
@NullMarked
package witnessmark.desktop.traces;

import org.jspecify.annotations.NullMarked;
