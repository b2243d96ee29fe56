package witnessmark.ledger.ahead;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.PlannedRun;

/**
 * One run to come.
 *
 * @param event at which event
 * @param planned which run of its timetable, or null for all of an event without one
 * @param after it belongs to the event after the next
 */
public record Step(Entry<Event> event, @Nullable Entry<PlannedRun> planned, boolean after) {}
