package witnessmark.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Logbook;
import witnessmark.sample.SampleBooks;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;

/**
 * What a durable import costs: the sample season read from its folder, and written to a new logbook until it is synced. Samples of
 * traces are left out, as they are bytes that are copied.
 *
 * <p>{@code mvn -q -o test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=witnessmark.bench.ImportBench}
 */
public final class ImportBench {
    private static final int WARM_UP = 5;
    private static final int ROUNDS = 25;

    private ImportBench() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("import-bench");
        SqliteLogbookFiles files = new SqliteLogbookFiles(
                folder.resolve("data"), System::currentTimeMillis, () -> "bench", new Holder("bench", "bench"));
        double[] read = new double[ROUNDS];
        double[] written = new double[ROUNDS];
        int rows = 0;
        for (int i = -WARM_UP; i < ROUNDS; i++) {
            try (Logbook book =
                    files.create(folder.resolve("import" + i + ".witness")).orThrow()) {
                long start = System.nanoTime();
                List<Entry<?>> entries = new CsvSeasonFolders()
                        .read(SampleBooks.FOLDER, Facts.none())
                        .orThrow();
                long between = System.nanoTime();
                book.write(new Change("bench", "import", entries)).orThrow();
                long end = System.nanoTime();
                rows = entries.size();
                if (i >= 0) {
                    read[i] = (between - start) / 1e6;
                    written[i] = (end - between) / 1e6;
                }
            }
        }
        Arrays.sort(read);
        Arrays.sort(written);
        System.out.printf(
                Locale.ROOT,
                "import of %d rows, %d times: read %.0f ms, written and synced %.0f ms (medians), 95 %% %.0f and %.0f ms%n",
                rows,
                ROUNDS,
                read[ROUNDS / 2],
                written[ROUNDS / 2],
                read[ROUNDS * 95 / 100],
                written[ROUNDS * 95 / 100]);
    }
}
