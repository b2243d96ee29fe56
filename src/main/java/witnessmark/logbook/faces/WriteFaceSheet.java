package witnessmark.logbook.faces;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FaceLook;
import witnessmark.domain.Id;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.port.PaperFiles;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.Moment;

/** Writes a face with its skims as pages to print, for the wall and for the machinist. Off the event thread. */
public final class WriteFaceSheet {
    private final PaperFiles files;
    private final Function<FaceSheetFacts, Paper> layOut;

    /** @param layOut words the page of a face and lays it out */
    public WriteFaceSheet(PaperFiles files, Function<FaceSheetFacts, Paper> layOut) {
        this.files = files;
        this.layOut = layOut;
    }

    /**
     * Writes a face as of the day looked at.
     *
     * @return how many pages it has
     * @throws IllegalArgumentException when the day has no such face
     */
    public Outcome<Integer> write(Desk desk, FaceInSight seen, Path file) {
        View view = desk.view();
        Moment now = Moment.of(desk.today().now(), view.zone());
        FaceSheetFacts facts = facts(view, seen, desk.name(), now)
                .orElseThrow(() -> new IllegalArgumentException("no face of " + seen.part() + " on " + view.day()));
        return files.write(layOut.apply(facts), file);
    }

    /** What is worded and laid out; empty where the day has no such face. */
    public static Optional<FaceSheetFacts> facts(View view, FaceInSight seen, String logbook, Moment printed) {
        List<FacePage> all = SeeFaces.all(view);
        return all.stream()
                .filter(page -> page.part().id().equals(seen.part()))
                .findFirst()
                .map(page -> new FaceSheetFacts(
                        page, look(all, seen.look()), look(all, seen.over()), logbook, view.day(), printed));
    }

    private static @Nullable LookLine look(List<FacePage> all, @Nullable Id<FaceLook> id) {
        return all.stream()
                .flatMap(page -> page.looks().stream())
                .filter(line -> line.look().id().equals(id))
                .findFirst()
                .orElse(null);
    }
}
