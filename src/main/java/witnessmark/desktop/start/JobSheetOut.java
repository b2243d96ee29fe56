package witnessmark.desktop.start;

import java.nio.file.Path;
import witnessmark.desktop.form.Caption;
import witnessmark.outcome.Outcome;

/** Writes the job sheet to a file to be printed, and opens it with the program this computer has for it. */
final class JobSheetOut {
    private static final String ENDING = ".pdf";

    private final StartContext context;
    private final Reports reports;

    JobSheetOut(StartContext context, Reports reports) {
        this.context = context;
        this.reports = reports;
    }

    /** Asks where to, and writes it there as of the day looked at. */
    void writeOut() {
        String name =
                reports.texts().get("jobsheet.name", context.logbook().day().toString());
        context.choosing()
                .jobSheetToWrite(context.here().folder().resolve(name))
                .map(JobSheetOut::ended)
                .ifPresent(this::write);
    }

    /** Without the ending no program would open it. */
    private static Path ended(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.contains(".") ? file : file.resolveSibling(name + ENDING);
    }

    private void write(Path file) {
        reports.say("jobsheet.writing");
        context.tasks()
                .run(
                        reports.texts().get("jobsheet.writing"),
                        () -> context.uses().jobSheet().write(context.logbook(), file),
                        written -> written(file, written),
                        reports::failed);
    }

    private void written(Path file, Outcome<Integer> written) {
        if (written.didWork()) {
            context.window()
                    .say(
                            reports.texts().get("jobsheet.written", written.orThrow(), file),
                            Caption.of(reports.texts().get("paper.open")),
                            () -> open(file));
        } else {
            reports.refused(reports.texts().get("jobsheet.refused"), written.problems());
        }
    }

    private void open(Path file) {
        reports.say("paper.opening");
        context.tasks()
                .run(
                        reports.texts().get("paper.opening"),
                        () -> context.here().opens().test(file),
                        opened -> opened(file, opened),
                        reports::failed);
    }

    private void opened(Path file, boolean opened) {
        reports.say(opened ? "paper.opened" : "jobsheet.notOpened", file);
    }
}
