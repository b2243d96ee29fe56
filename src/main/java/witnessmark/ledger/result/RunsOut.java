package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.PlannedRun;

/**
 * Where what is left of a limit runs out.
 *
 * @param event at which event
 * @param planned in which run of its timetable, or null when it has none or a date runs out
 * @param sure by the likely running already; else only when the runs are as long as they may usually get
 * @param after it lasts through the next event, and not through one more like it
 * @param leftAfter what is left after the next event, likely, in the limit's unit; less than 0 when it does not last
 */
public record RunsOut(
        Entry<Event> event, @Nullable Entry<PlannedRun> planned, boolean sure, boolean after, long leftAfter) {}
