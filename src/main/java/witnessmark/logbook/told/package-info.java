/**
 * Running told by others: an engine that was out of the team's hands, and what somebody says it ran meanwhile. It
 * differs from {@code logbook.run} in that nobody here saw it run, so that it has a lowest and a highest figure. Open
 * {@link witnessmark.logbook.told.TellRunning} first.
 */
@NullMarked
package witnessmark.logbook.told;

import org.jspecify.annotations.NullMarked;
