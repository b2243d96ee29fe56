package witnessmark.desktop.photos;

import java.awt.Window;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.shell.ClosingWait;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.logbook.photos.KeepPhotos.About;
import witnessmark.logbook.photos.PhotosOf;
import witnessmark.wording.Texts;

/** Photos in the window of one logbook: the strips on its pages, the page that brings them in, the one that shows them large. */
public final class Photographs {
    private static final Set<String> ENDINGS =
            Set.of("jpg", "jpeg", "png", "gif", "bmp", "webp", "heic", "heif", "avif", "tif", "tiff", "svg");

    private final PhotosContext context;
    private final SmallPictures pictures;
    private final List<PhotoStrip> strips = new ArrayList<>();
    private final List<BringInPage> batches = new ArrayList<>();
    private @Nullable About last;
    private @Nullable ClosingWait closing;

    public Photographs(PhotosContext context) {
        this.context = context;
        this.pictures = new SmallPictures(context);
    }

    /**
     * A strip for a page.
     *
     * @param room what there is for it
     * @param home brings that page back into view
     */
    public PhotoStrip strip(PhotoStrip.Room room, Consumer<PhotosOf> home) {
        PhotoStrip strip = new PhotoStrip(context, this, pictures, room, home);
        strips.add(strip);
        return strip;
    }

    /** What is brought in on a page is about what the page is of; on that of an incident, of its engine too; of a finding, all it is of. */
    private About about(PhotosOf of) {
        Id<Finding> finding = of.finding();
        if (finding != null) {
            return context.book()
                    .view()
                    .facts()
                    .of(Finding.class)
                    .find(finding)
                    .map(Entry::fact)
                    .map(seen -> new About(seen.incident(), finding, seen.engine(), seen.part(), seen.number(), ""))
                    .orElseGet(() -> new About(null, finding, null, null, null, ""));
        }
        Id<Incident> incident = of.incident();
        Id<Engine> engine = incident == null
                ? of.engine()
                : context.book()
                        .view()
                        .facts()
                        .of(Incident.class)
                        .find(incident)
                        .map(Entry::fact)
                        .map(Incident::engine)
                        .orElse(null);
        return new About(incident, null, engine, of.part(), null, "");
    }

    /** Takes files dropped on the window, if they are called pictures and a page with photos is in sight. */
    public boolean dropped(List<Path> files) {
        if (files.isEmpty() || !files.stream().allMatch(Photographs::isCalledPicture)) {
            return false;
        }
        for (PhotoStrip strip : strips) {
            if (strip.isShowing()) {
                strip.take(files);
                return true;
            }
        }
        return false;
    }

    private static boolean isCalledPicture(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return ENDINGS.contains(name.substring(name.lastIndexOf('.') + 1));
    }

    SmallPictures pictures() {
        return pictures;
    }

    void open(List<PhotoLine> all, PhotoLine first, Runnable back) {
        context.asked().show().accept(new PhotoAside(context, all, first, back));
    }

    /**
     * Asks once what the files are about; what was answered last for the same thing stands there.
     *
     * @param back told when somebody is done with it
     * @param over told when the files are wanted no more
     */
    void bringIn(List<Path> files, PhotosOf of, Runnable back, Runnable over) {
        About about = about(of);
        About before = last;
        About begin = before != null && of.finding() == null && sameThing(before, about)
                ? new About(
                        about.incident(),
                        before.finding(),
                        before.engine() == null ? about.engine() : before.engine(),
                        about.part() == null ? before.part() : about.part(),
                        before.number(),
                        "")
                : about;
        BringInPage.Told told = new BringInPage.Told(now -> last = now, pictures::lookAgain, back, over, this::ended);
        BringInPage page = new BringInPage(context, files, begin, told);
        batches.removeIf(each -> !each.isAtWork());
        batches.add(page);
        context.asked().show().accept(page);
    }

    /**
     * Goes on once no photo is being brought in. What takes longer than a glance is told over the window, with a way to go on
     * at once; where not all of it could be kept the program stays, and its page says why.
     *
     * @param window the one about to close
     */
    public void last(@Nullable Window window, Runnable then) {
        int files = atWork().mapToInt(page -> page.files().size()).sum();
        if (files == 0) {
            then.run();
        } else if (closing == null) {
            Texts texts = context.texts();
            ClosingWait telling = new ClosingWait(
                    texts,
                    context.tools().tasks(),
                    new ClosingWait.Words(
                            texts.get("photos.closing"),
                            texts.get("photos.closing.text", files),
                            texts.get("photos.closing.meaning")),
                    () -> {
                        atWork().forEach(BringInPage::stop);
                        then.run();
                    });
            closing = telling;
            telling.begin(window);
        }
    }

    private Stream<BringInPage> atWork() {
        return batches.stream().filter(BringInPage::isAtWork);
    }

    private void ended(boolean whole) {
        ClosingWait waits = closing;
        if (waits != null && !whole) {
            closing = null;
            waits.stay();
        } else if (waits != null && atWork().findAny().isEmpty()) {
            waits.end();
        }
    }

    private static boolean sameThing(About one, About other) {
        return Objects.equals(one.incident(), other.incident())
                && (other.incident() != null || Objects.equals(one.engine(), other.engine()))
                && (other.part() == null || Objects.equals(one.part(), other.part()));
    }
}
