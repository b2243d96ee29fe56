package witnessmark.desktop.start;

import java.nio.file.Path;
import java.util.function.Supplier;
import witnessmark.logbook.money.SeasonAsked;
import witnessmark.outcome.Outcome;

/** Writes the season that the ledger shows to a table that spreadsheets read. */
final class SeasonOut {
    private static final String ENDING = ".csv";

    private final StartContext context;
    private final Reports reports;
    private Supplier<SeasonAsked> asked = () -> SeasonAsked.USUAL;

    SeasonOut(StartContext context, Reports reports) {
        this.context = context;
        this.reports = reports;
    }

    /** Says what the ledger shows. */
    void shows(Supplier<SeasonAsked> shown) {
        asked = shown;
    }

    /** Asks where to, and writes it there as of the day looked at. */
    void writeOut() {
        String name =
                reports.texts().get("season.table.name", context.logbook().day().toString());
        context.choosing()
                .seasonTableToWrite(context.here().folder().resolve(name))
                .map(SeasonOut::ended)
                .ifPresent(this::write);
    }

    private static Path ended(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.contains(".") ? file : file.resolveSibling(name + ENDING);
    }

    private void write(Path file) {
        SeasonAsked now = asked.get();
        reports.say("season.table.writing");
        context.tasks()
                .run(
                        reports.texts().get("season.table.writing"),
                        () -> context.uses().seasonTable().write(context.logbook(), now, file),
                        written -> written(file, written),
                        reports::failed);
    }

    private void written(Path file, Outcome<Integer> written) {
        if (written.didWork()) {
            reports.say("season.table.written", written.orThrow(), file);
        } else {
            reports.refused(reports.texts().get("season.table.title"), written.problems());
        }
    }
}
