/** What incidents taught, and which build sheets asked it. Begin with {@link witnessmark.logbook.lessons.SeeLessons}. */
@NullMarked
package witnessmark.logbook.lessons;

import org.jspecify.annotations.NullMarked;
