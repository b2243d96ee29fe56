package witnessmark.desktop.photos;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.incidents.IncidentsAsked;
import witnessmark.desktop.incidents.IncidentsPlace;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.exchange.DiskLoggerFiles;
import witnessmark.logbook.Desk;
import witnessmark.logbook.photos.KeepPhotos;
import witnessmark.logbook.photos.WatchedPhotos;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.proof.WeighFinding;
import witnessmark.logbook.run.SampleBook;
import witnessmark.store.TimeOrderedIds;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The place Incidents with its photos, on a real logbook; pages that photos put up are noted down. */
final class PhotosWindow implements AutoCloseable {
    /** Where a copy is to go, or null while nobody says where. */
    @Nullable
    Path copyTo;

    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final List<String> asked = new ArrayList<>();
    final Photographs photographs;
    final PhotoStrip strip;
    final IncidentsPlace place;
    final ShellPane pane;

    /** Whether nothing can be put in. */
    volatile boolean failing;

    @Nullable
    Aside aside;

    private final Ids ids = new Ids() {
        private final Ids good = new TimeOrderedIds();

        @Override
        public <F extends Fact> Id<F> next() {
            if (failing) {
                throw new IllegalStateException("asked for by the test");
            }
            return good.next();
        }
    };

    PhotosWindow(Desk desk, Look look, Texts texts) {
        MemorySettings settings = new MemorySettings();
        SheetTools tools = new SheetTools(texts, tasks, settings);
        Measures measures = new Measures(texts, Units.METRIC);
        photographs = new Photographs(new PhotosContext(
                desk,
                new KeepPhotos(desk, ids),
                window,
                tools,
                measures,
                new PhotoWatch(texts, tasks, new WatchedPhotos(desk, settings, new DiskLoggerFiles())),
                Optional::empty,
                List::of,
                name -> Optional.ofNullable(copyTo),
                new PhotosContext.Asked(
                        this::stand,
                        () -> stand(null),
                        (record, back) -> asked.add("correct"),
                        () -> asked.add("undo"))));
        strip = photographs.strip(PhotoStrip.Room.PAGE, of -> {});
        place = new IncidentsPlace(
                tools,
                measures,
                window,
                desk::view,
                new IncidentsAsked(() -> {}, sheet -> {}, record -> {}, incident -> {}),
                new WeighFinding(desk, SampleBook.ids()),
                () -> {});
        place.with(strip);
        pane = new ShellPane(
                new ShellContext(texts, tasks, settings, look, window, new AboutFacts("0.1.0", List.of()), () -> {}),
                List.of(place),
                List.of(),
                List.of());
        window.go(PlaceId.INCIDENTS);
        tasks.awaitIdle();
    }

    /** Brings files in on the incident in hand, with what is to be seen on them. */
    void bring(List<Path> files, String caption) {
        strip.take(files);
        BringInPage page = (BringInPage) aside();
        page.caption().load(caption);
        page.keep();
        tasks.awaitIdle();
    }

    /** What stood there goes, as in the window. */
    void stand(@Nullable Aside next) {
        Aside before = aside;
        aside = next;
        if (before != null && before != next) {
            before.gone();
        }
    }

    Aside aside() {
        Aside shown = aside;
        if (shown == null) {
            throw new AssertionError("no page was put up");
        }
        return shown;
    }

    JRootPane root() {
        JRootPane root = Stage.window(pane, pane::menuBar, 1366, 768);
        tasks.awaitIdle();
        return Stage.lay(root, 1366, 768);
    }

    /** The page that was put up, laid out as large as a place is. */
    JComponent page() {
        tasks.awaitIdle();
        JComponent page = aside().component();
        Stage.lay(page, 1140, 620);
        tasks.awaitIdle();
        return page;
    }

    @Override
    public void close() {
        tasks.awaitIdle();
        tasks.close();
    }
}
