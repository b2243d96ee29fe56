package witnessmark.logbook.strip;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import witnessmark.domain.Build;
import witnessmark.domain.Id;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.port.PaperFiles;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.Moment;

/** Writes the report of a strip as pages to print: what was found, and room to write where nobody looked yet. Off the event thread. */
public final class WriteStripSheet {
    private final PaperFiles files;
    private final Function<StripSheetFacts, Paper> layOut;

    /** @param layOut words the report of a strip and lays it out */
    public WriteStripSheet(PaperFiles files, Function<StripSheetFacts, Paper> layOut) {
        this.files = files;
        this.layOut = layOut;
    }

    /**
     * Writes it as of the day looked at.
     *
     * @return how many pages it has
     * @throws IllegalArgumentException when the day has no such build
     */
    public Outcome<Integer> write(Desk desk, Id<Build> build, Path file) {
        View view = desk.view();
        Moment now = Moment.of(desk.today().now(), view.zone());
        StripSheetFacts facts = facts(view, build, desk.name(), now)
                .orElseThrow(() -> new IllegalArgumentException("no build " + build + " on " + view.day()));
        return files.write(layOut.apply(facts), file);
    }

    /** What is worded and laid out; empty where the day has no such build. */
    public static Optional<StripSheetFacts> facts(View view, Id<Build> build, String logbook, Moment printed) {
        return SeeStrip.of(view, build)
                .map(page -> new StripSheetFacts(view.facts(), page, logbook, view.day(), printed));
    }
}
