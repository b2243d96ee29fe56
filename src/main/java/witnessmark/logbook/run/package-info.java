/**
 * The run sheet: what is filled in before anybody types, what the typed text means, what of it is unlike this engine,
 * what the run would do to every fitted part, and saving it. Open {@link witnessmark.logbook.run.RunSheet} first.
 */
@NullMarked
package witnessmark.logbook.run;

import org.jspecify.annotations.NullMarked;
