package witnessmark.logbook.measuring;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Tool;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.port.PaperFiles;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.Moment;

/** Writes a build sheet as pages to print, for the wall and for the customer. Reads and computes; off the event thread. */
public final class WriteBuildSheet {
    private final PaperFiles files;
    private final Function<BuildSheetFacts, Paper> layOut;

    /** @param layOut words a build sheet and lays it out on pages */
    public WriteBuildSheet(PaperFiles files, Function<BuildSheetFacts, Paper> layOut) {
        this.files = files;
        this.layOut = layOut;
    }

    /**
     * Writes the sheet of a build, as of the day looked at.
     *
     * @return how many pages it has
     * @throws IllegalArgumentException when the day has no such build
     */
    public Outcome<Integer> write(Desk desk, Id<Build> build, Path file) {
        View view = desk.view();
        Moment now = Moment.of(desk.today().now(), view.zone());
        BuildSheetFacts facts = facts(view, build, desk.name(), now)
                .orElseThrow(() -> new IllegalArgumentException("no build " + build + " on " + view.day()));
        return files.write(layOut.apply(facts), file);
    }

    /** What is worded and laid out; empty where the day has no such build. */
    public static Optional<BuildSheetFacts> facts(View view, Id<Build> build, String logbook, Moment printed) {
        return SeeBuildSheet.of(view, build)
                .map(page -> new BuildSheetFacts(
                        page,
                        view.facts(),
                        SeeBuildSheet.isOpen(view, page.build().fact()),
                        tools(view),
                        logbook,
                        view.day(),
                        printed));
    }

    private static List<Entry<Tool>> tools(View view) {
        return view.facts().of(Tool.class).inForce().toList();
    }
}
