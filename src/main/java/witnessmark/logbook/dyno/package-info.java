/** Reads dyno sheets as they are typed or pasted, and sees what they come to. Begin with {@link witnessmark.logbook.dyno.SeeDyno}. */
@NullMarked
package witnessmark.logbook.dyno;

import org.jspecify.annotations.NullMarked;
