/** A logger's file read and reduced. Begin with {@link witnessmark.logbook.tracing.ReduceTrace}. */
@NullMarked
package witnessmark.logbook.tracing;

import org.jspecify.annotations.NullMarked;
