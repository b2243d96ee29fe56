package witnessmark.desktop.traces;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.task.Ticking;
import witnessmark.logbook.tracing.WatchedFolder;
import witnessmark.logbook.tracing.WatchedFolder.Look;
import witnessmark.logbook.tracing.WatchedFolder.Waiting;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * Looks every few seconds at the folder that is watched, off the event thread, and tells when what waits has changed. Where
 * none is chosen nothing runs.
 */
public final class TraceWatch implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(TraceWatch.class);
    private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(3);
    private static final int NAMED = 3;

    private final Texts texts;
    private final Measures measures;
    private final Tasks tasks;
    private final WatchedFolder folder;
    private final List<Runnable> listeners = new ArrayList<>();
    private @Nullable Ticking ticking;
    private Look last = new Look(List.of(), 0, null);
    private boolean looking;

    public TraceWatch(Texts texts, Measures measures, Tasks tasks, WatchedFolder folder) {
        this.texts = texts;
        this.measures = measures;
        this.tasks = tasks;
        this.folder = folder;
        follow();
    }

    /** Told whenever something else waits, or the folder came or went. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** What waits, by name. */
    public List<Waiting> waiting() {
        return last.waiting();
    }

    /** Which folder is watched. */
    Optional<Path> folder() {
        return folder.folder();
    }

    /** Watches this one from now on, or none. */
    void watch(@Nullable Path other) {
        folder.watch(other);
        follow();
        look();
    }

    /** A trace that waits by its path. */
    Optional<Waiting> at(@Nullable Path path) {
        return last.waiting().stream().filter(each -> each.path().equals(path)).findFirst();
    }

    /** It is no run of this team. */
    void setAside(Waiting trace) {
        folder.setAside(trace.content());
        look();
    }

    /** {@code 3 traces wait: a.csv, b.csv and c.csv}; empty when none does. */
    public String said() {
        List<String> names = last.waiting().stream().map(Waiting::name).toList();
        if (names.isEmpty()) {
            return "";
        }
        List<String> shown = new ArrayList<>(names.subList(0, Math.min(NAMED, names.size())));
        if (names.size() > NAMED) {
            shown.add(texts.get("traces.watch.more", names.size() - NAMED));
        }
        return texts.get("traces.watch.wait", names.size(), measures.all(shown));
    }

    /** Which folder is watched and what became of it; empty when none is. */
    String state() {
        Path watched = folder.folder().orElse(null);
        if (watched == null) {
            return "";
        }
        String gone = last.gone();
        if (gone != null) {
            return texts.get("traces.watch.gone", watched);
        }
        return last.growing() > 0
                ? texts.get("traces.watch.growing", watched, last.growing())
                : texts.get("traces.watch.watched", watched);
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
    public void look() {
        if (looking || folder.folder().isEmpty() && last.waiting().isEmpty() && last.gone() == null) {
            return;
        }
        looking = true;
        tasks.apart(
                texts.get("traces.watch.looking"),
                () -> folder.look(System.nanoTime() / 1_000_000),
                this::looked,
                failure -> {
                    looking = false;
                    LOG.error("the folder of traces could not be looked at", failure);
                });
    }

    private void looked(Look now) {
        looking = false;
        if (!now.equals(last)) {
            last = now;
            List.copyOf(listeners).forEach(Runnable::run);
        }
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
