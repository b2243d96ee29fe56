/** A logbook made by hand, sheet by sheet, on a real file; and what a sheet refuses. */
@NullMarked
package witnessmark.logbook.sheets;

import org.jspecify.annotations.NullMarked;
