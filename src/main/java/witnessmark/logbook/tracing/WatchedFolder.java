package witnessmark.logbook.tracing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Trace;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.logbook.port.LoggerFiles;
import witnessmark.logbook.port.Settings;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.result.Recognised;

/**
 * A folder at the track in which traces appear. Those that are whole, of which nothing is in the logbook and that nobody has
 * set aside wait to be brought in. Which folder it is, is a setting of this computer for this logbook; nothing in it is
 * written. {@link #look} blocks and is called by one thread at a time, off the event thread.
 */
public final class WatchedFolder {
    /** A file that did not change for this long is taken to be whole, milliseconds. */
    public static final long SETTLED = 3_000;

    /** So many that were set aside are remembered, the latest. */
    private static final int REMEMBERED = 1_000;

    private final Desk desk;
    private final Settings settings;
    private final LoggerFiles files;
    private final String key;
    private final Map<Path, Seen> seen = new HashMap<>();

    /** A file as it was last looked at. */
    private record Seen(
            LoggerFiles.Lying file, long since, @Nullable String content, boolean trace) {}

    /**
     * What a look came to.
     *
     * @param waiting by name
     * @param growing how many are being written still
     * @param gone what the system said when the folder could not be read; null when it could
     */
    public record Look(
            List<Waiting> waiting, int growing, @Nullable String gone) {
        /** Where no folder is watched. */
        public static final Look NOTHING = new Look(List.of(), 0, null);

        /** The same when one of them waits no more. */
        public Look without(Waiting trace) {
            return new Look(waiting.stream().filter(each -> !each.equals(trace)).toList(), growing, gone);
        }
    }

    /**
     * A trace that waits.
     *
     * @param content SHA-256 of its bytes
     */
    public record Waiting(Path path, String content) {
        public String name() {
            return String.valueOf(path.getFileName());
        }
    }

    public WatchedFolder(Desk desk, Settings settings, LoggerFiles files) {
        this.desk = desk;
        this.settings = settings;
        this.files = files;
        this.key = "traces." + desk.logbook().identity();
    }

    /** Which folder is watched; none when empty. */
    public Optional<Path> folder() {
        return settings.get(key + ".folder").filter(path -> !path.isEmpty()).map(Path::of);
    }

    /** Watches this folder from now on, or none. */
    public void watch(@Nullable Path folder) {
        settings.put(
                key + ".folder",
                folder == null ? "" : folder.toAbsolutePath().normalize().toString());
    }

    /** It is no run of this team: it waits no more, whatever it is called. */
    public void setAside(String content) {
        Set<String> aside = new LinkedHashSet<>(aside());
        aside.add(content);
        List<String> all = new ArrayList<>(aside);
        settings.put(key + ".aside", String.join(" ", all.subList(Math.max(0, all.size() - REMEMBERED), all.size())));
    }

    private List<String> aside() {
        return settings.get(key + ".aside")
                .map(all -> Arrays.asList(all.split(" ")))
                .orElse(List.of());
    }

    /**
     * Looks at what lies there; blocks.
     *
     * @param now milliseconds of any clock that goes on
     */
    public synchronized Look look(long now) {
        Path folder = folder().orElse(null);
        if (folder == null) {
            seen.clear();
            return Look.NOTHING;
        }
        List<LoggerFiles.Lying> lying;
        try {
            lying = files.in(folder);
        } catch (IOException e) {
            seen.clear();
            String said = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            return new Look(List.of(), 0, said);
        }
        Map<Path, Seen> next = new HashMap<>();
        int growing = 0;
        for (LoggerFiles.Lying file : lying) {
            Seen each = seen(file, now);
            next.put(file.path(), each);
            growing += each.content() == null ? 1 : 0;
        }
        seen.clear();
        seen.putAll(next);
        return new Look(waiting(lying), growing, null);
    }

    private Seen seen(LoggerFiles.Lying file, long now) {
        Seen before = seen.get(file.path());
        if (before == null || !before.file().equals(file)) {
            return new Seen(file, now, null, false);
        }
        if (before.content() != null || now - before.since() < SETTLED || file.size() == 0) {
            return before;
        }
        try {
            LoggerFile whole = files.file(file.path());
            boolean trace = isTrace(whole);
            return new Seen(file, before.since(), trace ? Sha256.of(whole::open) : "", trace);
        } catch (IOException e) { // it may be held by who writes it: looked at again
            return new Seen(file, now, null, false);
        }
    }

    private static boolean isTrace(LoggerFile file) {
        Outcome<Recognised> found = ReduceTrace.recognised(file::open, null);
        return found.didWork()
                || found.problems().stream().anyMatch(problem -> problem.kind() == ProblemKind.PACKED_SEVERAL);
    }

    private List<Waiting> waiting(List<LoggerFiles.Lying> lying) {
        Set<String> known = new LinkedHashSet<>(aside());
        desk.view().facts().of(Trace.class).inForce().map(Entry::fact).forEach(trace -> known.add(trace.content()));
        List<Waiting> waiting = new ArrayList<>();
        for (LoggerFiles.Lying file : lying) {
            Seen each = seen.get(file.path());
            String content = each == null ? null : each.content();
            if (each != null && each.trace() && content != null && known.add(content)) {
                waiting.add(new Waiting(file.path(), content));
            }
        }
        return waiting;
    }
}
