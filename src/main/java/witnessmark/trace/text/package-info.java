/** Text into samples: begin with {@link witnessmark.trace.text.Recognition} and {@link witnessmark.trace.text.TraceReader}. */
@NullMarked
package witnessmark.trace.text;

import org.jspecify.annotations.NullMarked;
