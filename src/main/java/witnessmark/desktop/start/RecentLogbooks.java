package witnessmark.desktop.start;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import witnessmark.logbook.port.Settings;

/** The logbooks opened last, the latest first. */
public final class RecentLogbooks {
    /** How many are remembered. */
    public static final int MOST = 5;

    private static final String KEY = "logbooks.recent";

    private final Settings settings;

    public RecentLogbooks(Settings settings) {
        this.settings = settings;
    }

    public List<Path> list() {
        return settings.get(KEY).stream()
                .flatMap(String::lines)
                .filter(line -> !line.isBlank())
                .flatMap(RecentLogbooks::path)
                .limit(MOST)
                .toList();
    }

    /** The path written there; nothing when the settings were edited to something that is none. */
    private static Stream<Path> path(String line) {
        try {
            return Stream.of(Path.of(line));
        } catch (InvalidPathException notAPath) {
            return Stream.empty();
        }
    }

    /** Remembers that this one was opened now. */
    public void opened(Path path) {
        Path absolute = path.toAbsolutePath().normalize();
        List<Path> next = new ArrayList<>(list());
        next.remove(absolute);
        next.add(0, absolute);
        settings.put(
                KEY,
                String.join("\n", next.stream().limit(MOST).map(Path::toString).toList()));
    }
}
