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
final class TestLogbooks {
    static final long START = 1_767_225_600_000L; // 2026-01-01T00:00Z

    final Path folder;
    final AtomicLong clock = new AtomicLong(START);
    final SqliteLogbookFiles files;

    TestLogbooks(Path folder) {
        this(folder, "device-a");
    }

    TestLogbooks(Path folder, String device) {
        this.folder = folder;
        this.files = new SqliteLogbookFiles(
                folder.resolve("data-" + device),
                () -> clock.addAndGet(1_000),
                () -> device,
                new Holder("bench", "Ada"));
    }

    Path file() {
        return folder.resolve("team.witness");
    }

    Logbook create() {
        return files.create(file()).orThrow();
    }

    Logbook open() {
        return files.open(file()).orThrow();
    }

    static Outcome<Written> write(Logbook logbook, Entry<?>... entries) {
        return logbook.write(new Change("Ada", "because", List.of(entries)));
    }

    static Outcome<Written> write(Logbook logbook, List<? extends Entry<?>> entries) {
        return logbook.write(new Change("Ada", "because", entries));
    }
}
