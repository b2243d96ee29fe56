package witnessmark.desktop.photos;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.task.Lookout;
import witnessmark.desktop.task.Tasks;
import witnessmark.logbook.photos.WatchedPhotos;
import witnessmark.logbook.photos.WatchedPhotos.Look;
import witnessmark.wording.Texts;

/** Looks every few seconds at the folder that is watched for photos, off the event thread. Where none is chosen nothing runs. */
public final class PhotoWatch implements AutoCloseable {
    private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(4);

    private final Texts texts;
    private final WatchedPhotos folder;
    private final Lookout<Look> lookout;

    public PhotoWatch(Texts texts, Tasks tasks, WatchedPhotos folder) {
        this.texts = texts;
        this.folder = folder;
        this.lookout = new Lookout<>(
                tasks,
                texts.get("photos.reading"),
                BETWEEN_LOOKS,
                () -> folder.folder().isPresent(),
                () -> folder.look(System.nanoTime() / 1_000_000),
                new Look(List.of(), true));
    }

    void onChange(Runnable listener) {
        lookout.onChange(listener);
    }

    /** Watches this one from now on, or none. */
    void watch(@Nullable Path other) {
        folder.watch(other);
        lookout.changed(new Look(List.of(), true));
    }

    /** What waits. */
    List<Path> waiting() {
        return lookout.last().waiting().stream()
                .map(WatchedPhotos.Waiting::path)
                .toList();
    }

    /** They are not wanted. */
    void leave() {
        folder.leave(lookout.last().waiting());
        lookout.changed(new Look(List.of(), lookout.last().there()));
    }

    /** What there is to be said of the folder; empty when none is watched. */
    String said() {
        Look last = lookout.last();
        return folder.folder()
                .map(path -> !last.there()
                        ? texts.get("photos.watch.gone", path)
                        : last.waiting().isEmpty()
                                ? texts.get("photos.watch.none", path)
                                : texts.get("photos.watch.wait", last.waiting().size(), path))
                .orElse("");
    }

    /** Looks now, unless a look is under way. */
    void look() {
        lookout.look();
    }

    @Override
    public void close() {
        lookout.close();
    }
}
