/** A logger's file read and reduced. Begin with {@link witnessmark.logbook.tracing.ReduceTrace} for a file alone,
 * with {@link witnessmark.logbook.tracing.BringInTrace} for one that becomes a run's.
 */
@NullMarked
package witnessmark.logbook.tracing;

import org.jspecify.annotations.NullMarked;
