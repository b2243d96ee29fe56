/**
 * The run sheet: logging a run by keyboard, what it would do to the fitted parts, drafts, and running told by others.
 * {@link witnessmark.desktop.runsheet.RunSheetModel} is what the sheet does, without a widget;
 * {@link witnessmark.desktop.runsheet.RunSheetActions} saves and keeps drafts off the event thread;
 * {@link witnessmark.desktop.runsheet.RunSheetPlace} puts it into the window. Open the model first.
 */
@NullMarked
package witnessmark.desktop.runsheet;

import org.jspecify.annotations.NullMarked;
