package witnessmark.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.Standing;
import witnessmark.domain.Team;
import witnessmark.ledger.BigLogbook;
import witnessmark.ledger.History;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Logbook;
import witnessmark.quantity.Counter;
import witnessmark.quantity.EngineSpeed;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;
import witnessmark.store.TimeOrderedIds;

/**
 * Twenty seasons in a file: from the file to every life, medians over warm rounds. The argument is a folder; the logbook
 * is made there when it is not there yet, and can then be opened by {@link StartBench}.
 *
 * <p>{@code java -cp CLASSPATH witnessmark.bench.FileBench FOLDER}
 */
public final class FileBench {
    private static final int ROUNDS = 25;
    private static final int TOGETHER = 4000;

    private FileBench() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        Path file = folder.resolve("twenty-seasons.witness");
        History history = BigLogbook.twentySeasons(1);
        SqliteLogbookFiles files = new SqliteLogbookFiles(
                folder.resolve("data"), System::currentTimeMillis, () -> "bench", new Holder("bench", "bench"));
        if (!Files.exists(file)) {
            make(files, file, history);
        }
        System.out.printf(Locale.ROOT, "%d kB%n", Files.size(file) / 1024);
        long[] opened = new long[ROUNDS];
        long[] all = new long[ROUNDS];
        long sum = 0;
        for (int i = 0; i < ROUNDS; i++) {
            long start = System.nanoTime();
            Logbook book = files.open(file).orThrow();
            opened[i] = System.nanoTime() - start;
            LifeLedger ledger = LifeLedger.of(book.facts(), history.asOf());
            for (Entry<Part> part : book.facts().of(Part.class).all()) {
                sum += ledger.life(part.id(), Counter.RUNNING).total();
            }
            all[i] = System.nanoTime() - start;
            book.close();
        }
        System.out.printf(
                Locale.ROOT,
                "open the file and read it: %.0f ms; and every life: %.0f ms (checksum %d)%n",
                median(opened),
                median(all),
                sum);
    }

    private static void make(SqliteLogbookFiles files, Path file, History history) {
        long start = System.nanoTime();
        try (Logbook book = files.create(file).orThrow()) {
            List<Entry<?>> entries = new ArrayList<>(history.story().entries());
            Team team = new Team(
                    "Bench",
                    ZoneId.of("Europe/London"),
                    "EUR",
                    new EngineSpeed(500),
                    new EngineSpeed(3000),
                    new EngineSpeed(7500));
            entries.add(0, new Entry<>(new TimeOrderedIds().next(), team, Standing.IN_FORCE, null, 1));
            for (int at = 0; at < entries.size(); at += TOGETHER) {
                List<Entry<?>> next = entries.subList(at, Math.min(entries.size(), at + TOGETHER));
                book.write(new Change("bench", "twenty seasons", List.copyOf(next)))
                        .orThrow();
            }
            System.out.printf(
                    Locale.ROOT,
                    "made of %d entries in %d s%n",
                    entries.size(),
                    (System.nanoTime() - start) / 1_000_000_000L);
        }
    }

    private static double median(long[] nanos) {
        long[] sorted = nanos.clone();
        java.util.Arrays.sort(sorted);
        return sorted[sorted.length / 2] / 1e6;
    }
}
