package witnessmark.logbook.photos;

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
import witnessmark.domain.Photo;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.LoggerFiles;
import witnessmark.logbook.port.Settings;

/**
 * A folder in which photos appear: a card, or where a telephone puts them. Those that are whole, are not in the logbook and were
 * not left wait to be brought in. It is looked at, never listened to, and nothing in it is written. {@link #look} blocks.
 */
public final class WatchedPhotos {
    /** A file that did not change for this long is taken to be whole, milliseconds. */
    static final long SETTLED = 3_000;

    /** So many are read in one look; the others in the next. */
    private static final int AT_ONCE = 20;

    /** So many that were left are remembered, the latest. */
    private static final int REMEMBERED = 2_000;

    private final Desk desk;
    private final Settings settings;
    private final LoggerFiles files;
    private final String key;
    private final Map<Path, Seen> seen = new HashMap<>();

    /** @param content SHA-256 of its bytes; empty for what is no photo, null while it is not known */
    private record Seen(
            LoggerFiles.Lying file, long since, @Nullable String content) {}

    /**
     * What a look came to.
     *
     * @param waiting by name
     * @param there whether the folder could be read
     */
    public record Look(List<Waiting> waiting, boolean there) {
        public Look {
            waiting = List.copyOf(waiting);
        }
    }

    /** A photo that waits, with the SHA-256 of its bytes. */
    public record Waiting(Path path, String content) {}

    public WatchedPhotos(Desk desk, Settings settings, LoggerFiles files) {
        this.desk = desk;
        this.settings = settings;
        this.files = files;
        this.key = "photos." + desk.logbook().identity();
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

    /** They are of nothing in this logbook: they wait no more, whatever they are called. */
    public void leave(List<Waiting> photos) {
        Set<String> left = new LinkedHashSet<>(left());
        photos.forEach(photo -> left.add(photo.content()));
        List<String> all = new ArrayList<>(left);
        settings.put(key + ".left", String.join(" ", all.subList(Math.max(0, all.size() - REMEMBERED), all.size())));
    }

    private List<String> left() {
        return settings.get(key + ".left")
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
            return new Look(List.of(), true);
        }
        List<LoggerFiles.Lying> lying;
        try {
            lying = files.in(folder);
        } catch (IOException e) {
            seen.clear();
            return new Look(List.of(), false);
        }
        Map<Path, Seen> next = new HashMap<>();
        int read = 0;
        for (LoggerFiles.Lying file : lying) {
            Seen before = seen.get(file.path());
            Seen each = before != null && before.file().equals(file) ? before : new Seen(file, now, null);
            if (each.content() == null && now - each.since() >= SETTLED && file.size() > 0 && read < AT_ONCE) {
                each = new Seen(file, each.since(), content(file.path()));
                read++;
            }
            next.put(file.path(), each);
        }
        seen.clear();
        seen.putAll(next);
        return new Look(waiting(lying), true);
    }

    private String content(Path file) {
        return desk.logbook().photos().look(file).fold(found -> found.bytes().sha256(), problems -> "");
    }

    private List<Waiting> waiting(List<LoggerFiles.Lying> lying) {
        Set<String> known = new LinkedHashSet<>(left());
        desk.logbook()
                .facts()
                .of(Photo.class)
                .all()
                .forEach(photo -> known.add(photo.fact().content()));
        List<Waiting> waiting = new ArrayList<>();
        for (LoggerFiles.Lying file : lying) {
            Seen each = seen.get(file.path());
            String content = each == null ? null : each.content();
            if (content != null && !content.isEmpty() && known.add(content)) {
                waiting.add(new Waiting(file.path(), content));
            }
        }
        return waiting;
    }
}
