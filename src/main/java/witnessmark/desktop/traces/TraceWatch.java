package witnessmark.desktop.traces;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.task.Lookout;
import witnessmark.desktop.task.Tasks;
import witnessmark.domain.Run;
import witnessmark.logbook.tracing.WatchedFolder;
import witnessmark.logbook.tracing.WatchedFolder.Look;
import witnessmark.logbook.tracing.WatchedFolder.Passed;
import witnessmark.logbook.tracing.WatchedFolder.Waiting;
import witnessmark.outcome.Problem;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/**
 * Looks every few seconds at the folder that is watched, off the event thread, and tells when what waits has changed. Where
 * none is chosen nothing runs.
 */
public final class TraceWatch implements AutoCloseable {
    private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(3);
    private static final int NAMED = 3;
    private static final int TOLD = 6;

    private final Texts texts;
    private final Measures measures;
    private final Problems problems;
    private final WatchedFolder folder;
    private final Lookout<Look> lookout;

    public TraceWatch(Texts texts, Measures measures, Tasks tasks, WatchedFolder folder) {
        this.texts = texts;
        this.measures = measures;
        this.problems = new Problems(texts, measures);
        this.folder = folder;
        this.lookout = new Lookout<>(
                tasks,
                texts.get("traces.watch.looking"),
                BETWEEN_LOOKS,
                () -> folder.folder().isPresent(),
                () -> folder.look(System.nanoTime() / 1_000_000),
                Look.NOTHING);
    }

    /** Told whenever something else waits, or the folder came or went. */
    public void onChange(Runnable listener) {
        lookout.onChange(listener);
    }

    /** What waits, by name. */
    public List<Waiting> waiting() {
        return lookout.last().waiting();
    }

    /** Which folder is watched. */
    Optional<Path> folder() {
        return folder.folder();
    }

    /** Watches this one from now on, or none. */
    void watch(@Nullable Path other) {
        folder.watch(other);
        lookout.changed(Look.NOTHING);
    }

    /** A trace that waits by its path. */
    Optional<Waiting> at(@Nullable Path path) {
        return lookout.last().waiting().stream()
                .filter(each -> each.path().equals(path))
                .findFirst();
    }

    /** It is no run of this team. */
    void setAside(Waiting trace) {
        folder.setAside(trace.content());
        lookout.changed(lookout.last().without(trace));
    }

    /** {@code 3 traces wait: a.csv, b.csv and c.csv}; empty when none does. */
    public String said() {
        List<String> names =
                lookout.last().waiting().stream().map(Waiting::name).toList();
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
        Look last = lookout.last();
        if (last.gone() != null) {
            return texts.get("traces.watch.gone", watched);
        }
        return last.growing() > 0
                ? texts.get("traces.watch.growing", watched, last.growing())
                : texts.get("traces.watch.watched", watched);
    }

    /** What lies there and does not wait, a line each with why; what may have to be done about first. */
    List<String> passed() {
        List<Passed> all = lookout.last().passed();
        List<String> said = new ArrayList<>();
        all.stream().limit(TOLD).map(this::line).forEach(said::add);
        if (all.size() > TOLD) {
            said.add(texts.get("traces.watch.passed.more", all.size() - TOLD));
        }
        return said;
    }

    private String line(Passed file) {
        String key = "traces.watch.passed." + file.why().name().toLowerCase(Locale.ROOT);
        Object about = file.about();
        if (about instanceof Run run) {
            return texts.get(key, file.name(), run.name(), measures.start(run));
        }
        String more = about instanceof Problem problem ? problems.happened(problem) : String.valueOf(about);
        return texts.get(key, file.name(), more);
    }

    /** Looks now, unless a look is under way. */
    public void look() {
        lookout.look();
    }

    @Override
    public void close() {
        lookout.close();
    }
}
