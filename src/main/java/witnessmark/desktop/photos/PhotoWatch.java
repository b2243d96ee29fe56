package witnessmark.desktop.photos;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.task.Ticking;
import witnessmark.logbook.photos.WatchedPhotos;
import witnessmark.logbook.photos.WatchedPhotos.Look;
import witnessmark.wording.Texts;

/** Looks every few seconds at the folder that is watched for photos, off the event thread. Where none is chosen nothing runs. */
public final class PhotoWatch implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(PhotoWatch.class);
    private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(4);

    private final Texts texts;
    private final Tasks tasks;
    private final WatchedPhotos folder;
    private final List<Runnable> listeners = new ArrayList<>();
    private @Nullable Ticking ticking;
    private Look last = new Look(List.of(), true);
    private boolean looking;
    /** What was asked for so often was changed: an answer to what was asked before is dropped. */
    private int asked;

    public PhotoWatch(Texts texts, Tasks tasks, WatchedPhotos folder) {
        this.texts = texts;
        this.tasks = tasks;
        this.folder = folder;
        follow();
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** Watches this one from now on, or none. */
    void watch(@Nullable Path other) {
        folder.watch(other);
        asked++;
        last = new Look(List.of(), true);
        follow();
        look();
        tell();
    }

    /** What waits. */
    List<Path> waiting() {
        return last.waiting().stream().map(WatchedPhotos.Waiting::path).toList();
    }

    /** They are not wanted. */
    void leave() {
        folder.leave(last.waiting());
        asked++;
        last = new Look(List.of(), last.there());
        tell();
    }

    /** What there is to be said of the folder; empty when none is watched. */
    String said() {
        return folder.folder()
                .map(path -> !last.there()
                        ? texts.get("photos.watch.gone", path)
                        : last.waiting().isEmpty()
                                ? texts.get("photos.watch.none", path)
                                : texts.get("photos.watch.wait", last.waiting().size(), path))
                .orElse("");
    }

    private void follow() {
        Ticking now = ticking;
        boolean wanted = folder.folder().isPresent();
        if (wanted && now == null) {
            ticking = tasks.every(BETWEEN_LOOKS, this::look);
        } else if (!wanted && now != null) {
            now.close();
            ticking = null;
        }
    }

    /** Looks now, unless a look is under way. */
    void look() {
        if (looking || folder.folder().isEmpty()) {
            return;
        }
        looking = true;
        int mine = asked;
        tasks.apart(
                texts.get("photos.reading"),
                () -> folder.look(System.nanoTime() / 1_000_000),
                now -> {
                    looking = false;
                    if (mine != asked) {
                        look();
                    } else if (!now.equals(last)) {
                        last = now;
                        tell();
                    }
                },
                failure -> {
                    looking = false;
                    LOG.error("the folder of photos could not be looked at", failure);
                });
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    @Override
    public void close() {
        Ticking now = ticking;
        if (now != null) {
            now.close();
            ticking = null;
        }
    }
}
