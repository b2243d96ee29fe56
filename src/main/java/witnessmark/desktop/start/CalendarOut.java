package witnessmark.desktop.start;

import java.nio.file.Path;
import witnessmark.outcome.Outcome;

/** Writes events and reminders to a calendar file that other programs read. */
final class CalendarOut {
    private static final String NAME = "calendar.ics";

    private final StartContext context;
    private final Reports reports;

    CalendarOut(StartContext context, Reports reports) {
        this.context = context;
        this.reports = reports;
    }

    /** Asks where to, and writes it there as of the day looked at. */
    void writeOut() {
        context.choosing()
                .calendarToWrite(context.here().folder().resolve(NAME))
                .ifPresent(this::write);
    }

    private void write(Path file) {
        reports.say("beforewego.calendar.writing");
        context.tasks()
                .run(
                        reports.texts().get("beforewego.calendar.writing"),
                        () -> context.uses().calendar().write(context.logbook(), file),
                        written -> written(file, written),
                        reports::failed);
    }

    private void written(Path file, Outcome<Integer> written) {
        if (written.didWork()) {
            reports.say("beforewego.calendar.written", written.orThrow(), file);
        } else {
            reports.refused(reports.texts().get("beforewego.calendar.title"), written.problems());
        }
    }
}
