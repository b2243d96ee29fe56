/**
 * What is found when an engine is taken down: seen place by place, and written down as it is looked at. Begin with
 * {@link witnessmark.logbook.strip.SeeStrip} and {@link witnessmark.logbook.strip.WriteStrip}.
 */
@NullMarked
package witnessmark.logbook.strip;

import org.jspecify.annotations.NullMarked;
