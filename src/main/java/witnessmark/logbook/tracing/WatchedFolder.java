package witnessmark.logbook.tracing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.logbook.port.LoggerFiles;
import witnessmark.logbook.port.Settings;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
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
            LoggerFiles.Lying file,
            long since,
            @Nullable String content,
            @Nullable Passed passed) {}

    /**
     * What a look came to.
     *
     * @param waiting by name
     * @param growing how many are being written still
     * @param passed what lies there and does not wait, each with why
     * @param gone what the system said when the folder could not be read; null when it could
     */
    public record Look(
            List<Waiting> waiting,
            int growing,
            List<Passed> passed,
            @Nullable String gone) {
        /** Where no folder is watched. */
        public static final Look NOTHING = new Look(List.of(), 0, List.of(), null);

        /** The same when one of them waits no more. */
        public Look without(Waiting trace) {
            return new Look(waiting.stream().filter(each -> !each.equals(trace)).toList(), growing, passed, gone);
        }
    }

    /** Why a file does not wait, what somebody may have to do about first. */
    public enum Why {
        /** It could not be opened; the system says why. */
        HELD,
        /** It is no trace; a problem says why. */
        NO_TRACE,
        /** There is nothing in it. */
        EMPTY,
        /** Another that waits says the same, by its name. */
        SAME,
        /** It was brought in for a run. */
        KNOWN,
        /** Somebody said that it is no run of this team. */
        ASIDE
    }

    /**
     * A file that does not wait.
     *
     * @param about what {@link Why} says of it: a sentence of the system, a problem, a name or a run; null for nothing
     */
    public record Passed(String name, Why why, @Nullable Object about) {}

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
            return new Look(List.of(), 0, List.of(), said);
        }
        Map<Path, Seen> next = new HashMap<>();
        int growing = 0;
        for (LoggerFiles.Lying file : lying) {
            Seen each = seen(file, now);
            next.put(file.path(), each);
            growing += each.content() == null && each.passed() == null ? 1 : 0;
        }
        seen.clear();
        seen.putAll(next);
        List<Passed> passed = new ArrayList<>();
        List<Waiting> waiting = waiting(lying, passed);
        passed.sort(Comparator.comparing(Passed::why).thenComparing(Passed::name));
        return new Look(waiting, growing, List.copyOf(passed), null);
    }

    private Seen seen(LoggerFiles.Lying file, long now) {
        Seen before = seen.get(file.path());
        if (before == null || !before.file().equals(file)) {
            return new Seen(file, now, null, null);
        }
        if (before.content() != null || now - before.since() < SETTLED) {
            return before;
        }
        if (file.size() == 0) {
            return new Seen(file, before.since(), null, new Passed(file.name(), Why.EMPTY, null));
        }
        try {
            LoggerFile whole = files.file(file.path());
            Problem not = isNoTrace(whole).orElse(null);
            return not == null
                    ? new Seen(file, before.since(), Sha256.of(whole::open), null)
                    : new Seen(file, before.since(), "", new Passed(file.name(), Why.NO_TRACE, not));
        } catch (IOException e) { // it may be held by who writes it: looked at again
            String said = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            return new Seen(file, now, null, new Passed(file.name(), Why.HELD, said));
        }
    }

    /** Why it is no trace; empty where it is one, or holds some. */
    private static Optional<Problem> isNoTrace(LoggerFile file) {
        Outcome<Recognised> found = ReduceTrace.recognised(file::open, null);
        boolean several = found.problems().stream().anyMatch(problem -> problem.kind() == ProblemKind.PACKED_SEVERAL);
        return found.didWork() || several
                ? Optional.empty()
                : found.problems().stream().findFirst();
    }

    /** @param passed gets what does not wait */
    private List<Waiting> waiting(List<LoggerFiles.Lying> lying, List<Passed> passed) {
        Set<String> aside = new LinkedHashSet<>(aside());
        Map<String, Run> known = new HashMap<>();
        Facts facts = desk.view().facts();
        facts.of(Trace.class)
                .inForce()
                .map(Entry::fact)
                .forEach(trace -> known.put(trace.content(), facts.of(Run.class).get(trace.run())));
        Map<String, Waiting> waiting = new LinkedHashMap<>();
        for (LoggerFiles.Lying file : lying) {
            Seen each = seen.get(file.path());
            String content = each == null ? null : each.content();
            if (each != null && each.passed() != null) {
                passed.add(each.passed());
            } else if (content != null && known.containsKey(content)) {
                passed.add(new Passed(file.name(), Why.KNOWN, known.get(content)));
            } else if (content != null && aside.contains(content)) {
                passed.add(new Passed(file.name(), Why.ASIDE, null));
            } else if (content != null && waiting.containsKey(content)) {
                passed.add(
                        new Passed(file.name(), Why.SAME, waiting.get(content).name()));
            } else if (content != null) {
                waiting.put(content, new Waiting(file.path(), content));
            }
        }
        return List.copyOf(waiting.values());
    }
}
