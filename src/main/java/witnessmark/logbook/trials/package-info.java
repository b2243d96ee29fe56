/** Part designs on trial. Begin with {@link witnessmark.logbook.trials.SeeTrials}. */
@NullMarked
package witnessmark.logbook.trials;

import org.jspecify.annotations.NullMarked;
