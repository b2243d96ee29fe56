/** What lies on days to come: events, their runs, and what must be done by when. It reads; nothing here writes. */
@NullMarked
package witnessmark.logbook.calendar;

import org.jspecify.annotations.NullMarked;
