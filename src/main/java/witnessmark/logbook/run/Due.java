package witnessmark.logbook.run;

import org.jspecify.annotations.Nullable;

/**
 * The coming run by which a limit is used up, going by what the timetables expect.
 *
 * @param run its name in the timetable
 * @param event the event it belongs to, or null when that is the event of the run being logged
 */
public record Due(String run, @Nullable String event) {}
