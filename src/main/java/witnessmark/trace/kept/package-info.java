/** Samples kept without loss, read at any place, and drawn at any zoom: begin with {@link witnessmark.trace.kept.KeptWriter}. */
@NullMarked
package witnessmark.trace.kept;

import org.jspecify.annotations.NullMarked;
