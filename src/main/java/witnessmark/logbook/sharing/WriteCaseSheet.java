package witnessmark.logbook.sharing;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Photo;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.money.SeeIncident;
import witnessmark.logbook.photos.PhotosOf;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.port.PaperFiles;
import witnessmark.logbook.proof.SeeCase;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.quantity.Moment;

/**
 * Writes one incident as pages for somebody outside the team: what was seen, the evidence, causes with what speaks for and
 * against them, what was done and how far it is proven. Names, customers and money are not on it. Off the event thread.
 */
public final class WriteCaseSheet {
    /** Of the longer side of a photo on paper, pixels. */
    private static final int ON_PAPER = 1_000;

    private final PaperFiles files;
    private final Function<CaseSheetFacts, Paper> layOut;

    /**
     * What is wanted of it.
     *
     * @param words what people typed too, names and amounts taken out as far as the logbook knows them; only for somebody
     *     who has read them
     * @param photos its photos too, drawn anew so that they say nothing of where they were taken
     */
    public record Asked(Id<Incident> incident, boolean words, boolean photos) {}

    /** @param layOut words the incident and lays it out */
    public WriteCaseSheet(PaperFiles files, Function<CaseSheetFacts, Paper> layOut) {
        this.files = files;
        this.layOut = layOut;
    }

    /**
     * Writes it as of the day looked at.
     *
     * @return how many pages it has; worked-except with the photos that could not be drawn
     * @throws IllegalArgumentException when the day has no such incident
     */
    public Outcome<Integer> write(Desk desk, Asked asked, Path file) {
        View view = desk.view();
        List<Problem> problems = new ArrayList<>();
        List<CaseSheetFacts.Picture> photos =
                asked.photos() ? photos(desk, view, asked.incident(), problems) : List.of();
        CaseSheetFacts facts = facts(
                        view,
                        asked,
                        photos,
                        problems.size(),
                        Moment.of(desk.today().now(), view.zone()))
                .orElseThrow(
                        () -> new IllegalArgumentException("no incident " + asked.incident() + " on " + view.day()));
        return files.write(layOut.apply(facts), file).then(pages -> Outcome.of(pages, problems));
    }

    private static List<CaseSheetFacts.Picture> photos(
            Desk desk, View view, Id<Incident> incident, List<Problem> problems) {
        List<CaseSheetFacts.Picture> drawn = new ArrayList<>();
        for (Entry<Photo> photo : PhotosOf.incident(incident).in(view)) {
            Outcome<byte[]> jpeg = desk.logbook().photos().forPaper(photo.fact(), ON_PAPER);
            problems.addAll(jpeg.problems());
            if (jpeg.didWork()) {
                drawn.add(new CaseSheetFacts.Picture(photo.fact(), jpeg.orThrow()));
            }
        }
        return drawn;
    }

    /** What is worded and laid out; empty where the day has no such incident. */
    public static Optional<CaseSheetFacts> facts(
            View view, Asked asked, List<CaseSheetFacts.Picture> photos, int undrawn, Moment printed) {
        Optional<IncidentPage> page = SeeIncident.of(view, asked.incident());
        return page.map(found -> new CaseSheetFacts(
                view,
                found,
                SeeIncident.ranThen(view, found),
                SeeCase.of(view, found.incident()),
                photos,
                undrawn,
                asked.words(),
                printed));
    }
}
