/** Samples into what an engine did, each as a state machine that sees every sample once: begin with {@link witnessmark.trace.reduce.Reducer}. */
@NullMarked
package witnessmark.trace.reduce;

import org.jspecify.annotations.NullMarked;
