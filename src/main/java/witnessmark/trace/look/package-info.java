/** What is asked of a trace that is in the logbook: figures between two times, ranges of temperature, wear by speed. */
@NullMarked
package witnessmark.trace.look;

import org.jspecify.annotations.NullMarked;
