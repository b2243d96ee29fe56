package witnessmark.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import witnessmark.logbook.port.Logbook;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;

/**
 * The check behind every opening, on the twenty seasons that {@link FileBench} makes: the file's integrity, every
 * checksum, every history, the chain of hashes; medians over warm rounds, by the clock and by the processor, which is the
 * same on a busy machine.
 *
 * <p>{@code java -cp CLASSPATH witnessmark.bench.CheckBench FOLDER}
 */
public final class CheckBench {
    private static final int ROUNDS = Integer.getInteger("rounds", 15);
    private static final double MILLION = 1e6;

    private CheckBench() {}

    public static void main(String[] args) {
        Path folder = Path.of(args[0]);
        SqliteLogbookFiles files = new SqliteLogbookFiles(
                folder.resolve("data"), System::currentTimeMillis, () -> "bench", new Holder("bench", "bench"));
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double[] clock = new double[ROUNDS];
        double[] processor = new double[ROUNDS];
        try (Logbook book = files.open(folder.resolve("twenty-seasons.witness")).orThrow()) {
            for (int i = 0; i < ROUNDS; i++) {
                long start = System.nanoTime();
                long used = threads.getCurrentThreadCpuTime();
                int found = book.verify().size();
                clock[i] = (System.nanoTime() - start) / MILLION;
                processor[i] = (threads.getCurrentThreadCpuTime() - used) / MILLION;
                if (found > 0) {
                    throw new IllegalStateException("not as it was written");
                }
            }
        }
        System.out.printf(
                Locale.ROOT,
                "first check %.0f ms, %.0f ms of the processor; median %.0f ms, %.0f ms%n",
                clock[0],
                processor[0],
                median(clock),
                median(processor));
    }

    private static double median(double[] figures) {
        double[] sorted = figures.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
