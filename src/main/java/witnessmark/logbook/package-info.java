/**
 * What people do with the logbook, one class for each verb phrase: log a run, see what it would do, take a change
 * back. Window, command line and reports call the same classes. What the use cases need from outside (the file, the
 * season folder, settings, the day) are the interfaces in {@code logbook.port}. Open
 * {@link witnessmark.logbook.LogRun} first.
 */
@NullMarked
package witnessmark.logbook;

import org.jspecify.annotations.NullMarked;
