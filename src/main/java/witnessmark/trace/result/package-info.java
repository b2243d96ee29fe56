/**
 * What is found in a trace: how it is written ({@link witnessmark.trace.result.TraceForm}), what must be asked about it
 * ({@link witnessmark.trace.result.Question}), what is wrong with it ({@link witnessmark.trace.result.Defects}) and what
 * it comes to ({@link witnessmark.trace.result.Reduction}).
 */
@NullMarked
package witnessmark.trace.result;

import org.jspecify.annotations.NullMarked;
