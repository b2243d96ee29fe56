package witnessmark.logbook.money;

import java.nio.file.Path;
import java.util.function.Function;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.port.PaperFiles;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.Moment;

/** Writes a season as pages to print, every line behind a figure among them. Reads and computes; off the event thread. */
public final class WriteSeasonSheet {
    private final PaperFiles files;
    private final Function<SeasonSheetFacts, Paper> layOut;

    /** @param layOut words a season and lays it out on pages */
    public WriteSeasonSheet(PaperFiles files, Function<SeasonSheetFacts, Paper> layOut) {
        this.files = files;
        this.layOut = layOut;
    }

    /**
     * Writes the season asked about, as of the day looked at.
     *
     * @return how many pages it has
     */
    public Outcome<Integer> write(Desk desk, SeasonAsked asked, Path file) {
        View view = desk.view();
        Moment now = Moment.of(desk.today().now(), view.zone());
        return files.write(layOut.apply(SeeSeason.sheet(view, asked, desk.name(), now)), file);
    }
}
