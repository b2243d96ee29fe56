/**
 * The job sheet: everything to be done, put together to be printed and ticked off with a pen. It differs from
 * {@link witnessmark.logbook.standing} in what paper needs besides: what lies ready for each job, and when it was
 * printed. Open {@link witnessmark.logbook.jobsheet.WriteJobSheet} first.
 */
@NullMarked
package witnessmark.logbook.jobsheet;

import org.jspecify.annotations.NullMarked;
