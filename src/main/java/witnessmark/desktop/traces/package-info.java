/** Bringing a logger's trace in: what was understood, what the engine did, of which run it is, and what becomes the run's.
 * Begin with {@link witnessmark.desktop.traces.TracePage}.
 */
@NullMarked
package witnessmark.desktop.traces;

import org.jspecify.annotations.NullMarked;
