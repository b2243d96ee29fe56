package witnessmark.desktop.sheets;

import org.jspecify.annotations.Nullable;
import witnessmark.logbook.sheets.SheetNote;
import witnessmark.outcome.Problem;

/**
 * What stands in the line under a field.
 *
 * @param note what is said when there is no problem
 * @param problem what is wrong, shown now; null when nothing is, or not yet to be said
 */
record SheetLine(SheetNote note, @Nullable Problem problem) {}
