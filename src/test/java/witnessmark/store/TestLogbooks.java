package witnessmark.store;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import witnessmark.domain.Entry;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;

/** Logbooks in a folder of one test, with a clock that moves on by a second each time it is read. */
public final class TestLogbooks {
    public static final long START = 1_767_225_600_000L; // 2026-01-01T00:00Z

    public final Path folder;
    public final AtomicLong clock = new AtomicLong(START);
    public final SqliteLogbookFiles files;

    public TestLogbooks(Path folder) {
        this(folder, "device-a");
    }

    public TestLogbooks(Path folder, String device) {
        this.folder = folder;
        this.files = new SqliteLogbookFiles(
                folder.resolve("data-" + device),
                () -> clock.addAndGet(1_000),
                () -> device,
                new Holder("bench", "Ada"));
    }

    public Path file() {
        return folder.resolve("team.witness");
    }

    public Logbook create() {
        return files.create(file()).orThrow();
    }

    public Logbook open() {
        return files.open(file()).orThrow();
    }

    public static Outcome<Written> write(Logbook logbook, Entry<?>... entries) {
        return logbook.write(new Change("Ada", "because", List.of(entries)));
    }

    public static Outcome<Written> write(Logbook logbook, List<? extends Entry<?>> entries) {
        return logbook.write(new Change("Ada", "because", entries));
    }
}
