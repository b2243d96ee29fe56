package witnessmark.logbook.photos;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.Photo;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.PhotoFile;
import witnessmark.logbook.port.Photos;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Puts photos in the logbook: their bytes first, one after the other, then all that is written of them in one change. */
public final class KeepPhotos {
    private final Desk desk;
    private final Ids ids;

    /**
     * What a batch is about, asked once.
     *
     * @param number cylinder or main bearing, counted from 1; null for none
     * @param caption what they show; may be empty
     */
    public record About(
            @Nullable Id<Incident> incident,
            @Nullable Id<Finding> finding,
            @Nullable Id<Engine> engine,
            @Nullable Id<Part> part,
            @Nullable Integer number,
            String caption) {}

    /**
     * What became of a batch.
     *
     * @param written the change; null where nothing was left to write
     * @param kept how many photos it put in
     * @param left how many were not looked at any more, since it was called off
     * @param problems why single files were not taken, and what is to be known of those that were
     */
    public record Kept(@Nullable Written written, int kept, int left, List<Problem> problems) {
        public Kept {
            problems = List.copyOf(problems);
        }
    }

    public KeepPhotos(Desk desk, Ids ids) {
        this.desk = desk;
        this.ids = ids;
    }

    /**
     * A batch whose bytes are there and of which nothing is written yet.
     *
     * @param files what became of each that was looked at
     * @param left how many were not, since it was called off
     */
    public record Batch(About about, List<Outcome<Photos.Taken>> files, int left) {
        public Batch {
            files = List.copyOf(files);
        }
    }

    /**
     * Takes the bytes of files in, one after the other. A file that cannot be taken leaves the others be. A card or a stick may
     * hold it up for as long as it likes: no writing ought to wait for it.
     *
     * @param goOn told how many are done before each; false calls off the rest
     */
    public Outcome<Batch> take(List<Path> files, About about, IntPredicate goOn) {
        View view = desk.view();
        if (view.readOnly()) {
            return Outcome.didNot(Problem.of(ProblemKind.AS_OF_EARLIER_DAY, view.day()));
        }
        List<Outcome<Photos.Taken>> taken = new ArrayList<>();
        while (taken.size() < files.size() && goOn.test(taken.size())) {
            taken.add(desk.logbook().photos().take(files.get(taken.size())));
        }
        return Outcome.worked(new Batch(about, taken, files.size() - taken.size()));
    }

    /**
     * Writes what there is to be said of a batch, in one change. Off the event thread.
     *
     * @param why the words for the history
     */
    public Outcome<Kept> write(Batch batch, String why) {
        View view = desk.view();
        if (view.readOnly()) {
            return Outcome.didNot(Problem.of(ProblemKind.AS_OF_EARLIER_DAY, view.day()));
        }
        Set<String> here = here(view, batch.about());
        Moment now = now(view);
        List<Entry<Photo>> photos = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Outcome<Photos.Taken> taken : batch.files()) {
            if (!taken.didWork()) {
                problems.addAll(taken.problems());
                continue;
            }
            PhotoFile file = taken.orThrow().file();
            if (here.add(file.bytes().sha256())) {
                problems.addAll(taken.problems());
                Photo photo = photo(file, batch.about(), view.zone(), now);
                photos.add(new Entry<>(ids.next(), photo, Standing.IN_FORCE, null, 1));
            } else {
                problems.add(Problem.of(
                        taken.orThrow().brought() ? ProblemKind.PHOTO_MENDED : ProblemKind.PHOTO_HERE_ALREADY,
                        file.name()));
            }
        }
        if (photos.isEmpty()) {
            return Outcome.worked(new Kept(null, 0, batch.left(), problems));
        }
        return desk.write(why, photos).map(written -> new Kept(written, photos.size(), batch.left(), problems));
    }

    /** By the clock; the end of the day taken for today where the clock is of another. */
    private Moment now(View view) {
        Moment now = Moment.of(desk.today().now(), view.zone());
        return now.day().equals(view.day()) ? now : Moment.endOf(view.day(), view.zone());
    }

    private static Set<String> here(View view, About about) {
        Set<String> here = new HashSet<>();
        view.facts()
                .of(Photo.class)
                .where(photo -> Objects.equals(photo.incident(), about.incident())
                        && Objects.equals(photo.engine(), about.engine())
                        && Objects.equals(photo.part(), about.part())
                        && Objects.equals(photo.finding(), about.finding()))
                .forEach(photo -> here.add(photo.fact().content()));
        return here;
    }

    private Photo photo(PhotoFile file, About about, ZoneId zone, Moment now) {
        LocalDateTime taken = file.taken();
        return new Photo(
                file.name(),
                file.bytes().sha256(),
                file.bytes().size(),
                file.media(),
                file.width(),
                file.height(),
                taken == null ? null : Moment.of(taken, file.offset() == null ? zone : file.offset()),
                about.incident(),
                about.finding(),
                about.engine(),
                about.part(),
                null,
                about.number(),
                about.caption(),
                now,
                desk.who());
    }

    /** Writes what a photo shows. */
    public Outcome<Written> caption(Entry<Photo> photo, String caption, String why) {
        return desk.write(
                why,
                List.of(new Entry<>(
                        photo.id(),
                        photo.fact().showing(caption),
                        photo.standing(),
                        photo.struckBecause(),
                        photo.rev() + 1)));
    }
}
