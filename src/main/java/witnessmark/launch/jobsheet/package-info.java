/**
 * The words of the job sheet, for window and command line alike: how the team stands becomes rows to tick. It is here
 * because it is the one thing that sees both the use cases and the page. Open
 * {@link witnessmark.launch.jobsheet.JobSheetPaper} first.
 */
@NullMarked
package witnessmark.launch.jobsheet;

import org.jspecify.annotations.NullMarked;
