package witnessmark.bench;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.InterruptedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import witnessmark.desktop.task.Tasks;
import witnessmark.exchange.DiskLoggerFiles;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.tracing.BringInTrace;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.logbook.tracing.TraceAnswers;
import witnessmark.sample.FixedToday;
import witnessmark.sample.SampleBooks;
import witnessmark.sample.SampleViews;
import witnessmark.trace.Layout;
import witnessmark.trace.SampleSink;
import witnessmark.trace.Watch;
import witnessmark.trace.reduce.Reducer;
import witnessmark.trace.result.Recognised;
import witnessmark.trace.result.TraceSettings;
import witnessmark.trace.text.Recognition;
import witnessmark.trace.text.TraceReader;

/**
 * How fast a trace of 100 MB and 20 channels is read: to numbers, and with everything worked out of it, beside a bare
 * loop over FastCSV that makes texts, one that makes numbers of them, and R's {@code fread} with one thread where R and its
 * {@code data.table} are installed. Each is the median of several rounds, turn about, in time of the processor, so that other
 * work on the machine counts less. Then all of a durable import, beside the {@code .import} of sqlite3 where that is installed.
 *
 * <p>{@code java -Xmx1g -cp CLASSPATH witnessmark.bench.TraceBench [MEGABYTES]}
 */
public final class TraceBench {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int ROUNDS = 7;
    private static final int DURABLE = 7;
    private static final String HEADING = "Time [s],Engine Speed [rpm],Throttle [%],Speed [km/h],Lat G [g],Long G [g],"
            + "Oil Press [bar],Oil Temp [C],Water Temp [C],Fuel Press [bar],Lambda,Gear,Battery [V],EGT 1 [C],EGT 2 [C],"
            + "EGT 3 [C],EGT 4 [C],Lap,Steering,Crankcase Pressure [kPa]\n";

    private TraceBench() {}

    private interface Work {
        double run() throws IOException;
    }

    public static void main(String[] args) throws IOException {
        byte[] bytes = trace((args.length == 0 ? 100 : Integer.parseInt(args[0])) << 20);
        Work[] works = {
            () -> fastCsv(bytes, false), () -> fastCsv(bytes, true), () -> numbers(bytes), () -> reduced(bytes)
        };
        String[] names = {"FastCSV, texts", "FastCSV, parseDouble", "this, numbers", "this, reduced"};
        double[][] took = new double[works.length][ROUNDS];
        double kept = 0;
        List<Double> fread = new ArrayList<>();
        Path file = Files.createTempFile("trace-bench", ".csv");
        Files.write(file, bytes);
        for (int round = 0; round < ROUNDS; round++) {
            fread(file).ifPresent(fread::add);
            for (int i = 0; i < works.length; i++) {
                long start = THREADS.getCurrentThreadCpuTime();
                kept += works[i].run();
                took[i][round] = (THREADS.getCurrentThreadCpuTime() - start) / 1e9;
            }
        }
        for (int i = 0; i < works.length; i++) {
            Arrays.sort(took[i]);
            System.out.printf(Locale.ROOT, "%-22s %7.1f MB/s%n", names[i], bytes.length / 1e6 / took[i][ROUNDS / 2]);
        }
        durable(file, bytes.length);
        Files.delete(file);
        fread.sort(null);
        System.out.println(
                fread.isEmpty()
                        ? "R's fread: R or its data.table is not installed, so it is not beside these"
                        : String.format(
                                Locale.ROOT,
                                "%-22s %7.1f MB/s",
                                "R's fread, one thread",
                                bytes.length / 1e6 / fread.get(fread.size() / 2)));
        System.out.printf(
                Locale.ROOT,
                "numbers %.2f times FastCSV with parseDouble (%g)%n",
                took[1][ROUNDS / 2] / took[2][ROUNDS / 2],
                kept);
    }

    /** By the clock, as both write to the disk: all of an import of the trace, and the same rows into a table of sqlite3. */
    private static void durable(Path file, int size) throws IOException {
        Desk desk = new Desk(new MemoryLogbook(SampleViews.untraced()), new FixedToday(SampleViews.OPENING), "bench");
        try (Tasks tasks = new Tasks((thread, failure) -> failure.printStackTrace())) {
            durable(new BringInTrace(desk, SampleBooks.ids(), tasks::beside), file, size);
        }
    }

    private static void durable(BringInTrace bringIn, Path file, int size) throws IOException {
        double[] ours = new double[DURABLE];
        double[] theirs = new double[DURABLE];
        for (int round = 0; round < DURABLE; round++) {
            long start = System.nanoTime();
            imported(bringIn, file);
            long between = System.nanoTime();
            theirs[round] = sqlite(file) ? (System.nanoTime() - between) / 1e9 : Double.NaN;
            ours[round] = (between - start) / 1e9;
        }
        Arrays.sort(ours);
        Arrays.sort(theirs);
        double us = size / 1e6 / ours[DURABLE / 2];
        double them = size / 1e6 / theirs[DURABLE / 2];
        System.out.printf(Locale.ROOT, "%-22s %7.1f MB/s%n", "this, whole and synced", us);
        System.out.println(
                Double.isNaN(them)
                        ? "sqlite3 is not installed, so its .import is not beside this"
                        : String.format(
                                Locale.ROOT, "%-22s %7.1f MB/s (%.1f times)", "sqlite3 .import", them, us / them));
    }

    /** As bringing in does it: known by its bytes, read, reduced, kept with its digest; then synced. */
    private static void imported(BringInTrace bringIn, Path file) throws IOException {
        Path kept = Files.createTempFile("trace-bench", ".kept");
        BroughtTrace trace = bringIn.read(
                        new DiskLoggerFiles().file(file),
                        TraceAnswers.none(),
                        TraceSettings.usual(),
                        true,
                        bytes -> true)
                .orThrow();
        try (FileOutputStream out = new FileOutputStream(kept.toFile())) {
            out.write(Objects.requireNonNull(trace.kept()).bytes());
            out.getFD().sync();
        }
        Files.delete(kept);
    }

    private static boolean sqlite(Path file) throws IOException {
        Path table = Files.createTempFile("trace-bench", ".sqlite");
        try {
            Process sqlite = new ProcessBuilder("sqlite3", table.toString(), ".import --csv " + file + " trace")
                    .redirectErrorStream(true)
                    .start();
            sqlite.getInputStream().readAllBytes();
            return sqlite.waitFor() == 0;
        } catch (IOException e) {
            return false; // no sqlite3
        } catch (InterruptedException e) {
            throw new InterruptedIOException();
        } finally {
            Files.delete(table);
        }
    }

    /** Seconds of the processor R takes for the file; the second reading, as the first loads what it needs. */
    private static Optional<Double> fread(Path file) throws IOException {
        String program = "library(data.table); setDTthreads(1); f <- '" + file + "'; x <- fread(f, nrows = 1000);"
                + " t <- system.time(x <- fread(f)); cat('seconds', t[['user.self']] + t[['sys.self']])";
        try {
            Process r = new ProcessBuilder("Rscript", "-e", program)
                    .redirectErrorStream(true)
                    .start();
            String said = new String(r.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            int at = said.indexOf("seconds ");
            return at < 0
                    ? Optional.empty()
                    : Optional.of(Double.valueOf(said.substring(at + 8).strip()));
        } catch (IOException e) {
            return Optional.empty(); // no R
        }
    }

    private static byte[] trace(int size) {
        StringBuilder text = new StringBuilder(size + 400).append(HEADING);
        SplittableRandom random = new SplittableRandom(17);
        for (int row = 0; text.length() < size; row++) {
            text.append(row / 50)
                    .append('.')
                    .append(String.valueOf(100 + row % 50 * 2).substring(1));
            text.append(',').append(5500 + (row / 50 % 2 == 0 ? 1 : -1) * (row % 50 * 40) + random.nextInt(40));
            decimal(text, random.nextInt(1000), 1);
            decimal(text, random.nextInt(2300), 1);
            decimal(text, random.nextInt(-160, 160), 2);
            decimal(text, random.nextInt(-160, 160), 2);
            decimal(text, 440 + random.nextInt(60), 2);
            decimal(text, 900 + row / 500 % 200 + random.nextInt(4), 1);
            decimal(text, 800 + row / 700 % 150 + random.nextInt(4), 1);
            decimal(text, 300 + random.nextInt(50), 2);
            decimal(text, 850 + random.nextInt(200), 3);
            text.append(',').append(1 + random.nextInt(5));
            decimal(text, 1300 + random.nextInt(100), 2);
            for (int i = 0; i < 4; i++) {
                decimal(text, 6000 + random.nextInt(3000), 1);
            }
            text.append(',').append(1 + row / 5000);
            decimal(text, random.nextInt(-9000, 9000), 2);
            decimal(text, random.nextInt(-2000, 200), 2);
            text.append('\n');
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static void decimal(StringBuilder text, int figure, int places) {
        text.append(',').append(java.math.BigDecimal.valueOf(figure, places).toPlainString());
    }

    private static double fastCsv(byte[] bytes, boolean parsed) throws IOException {
        double sum = 0;
        boolean heading = true;
        try (CsvReader<CsvRecord> rows = CsvReader.builder()
                .ofCsvRecord(new InputStreamReader(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8))) {
            for (CsvRecord row : rows) {
                int fields = row.getFieldCount();
                for (int i = 0; i < fields; i++) {
                    String field = row.getField(i);
                    sum += parsed && !heading ? Double.parseDouble(field) : field.length();
                }
                heading = false;
            }
        }
        return sum;
    }

    private static double numbers(byte[] bytes) {
        Sum sum = new Sum();
        read(bytes, sum);
        return sum.sum;
    }

    private static double reduced(byte[] bytes) {
        Reducer reducer = new Reducer(TraceSettings.usual());
        read(bytes, reducer);
        return reducer.parts().size();
    }

    private static void read(byte[] bytes, SampleSink sink) {
        Recognised recognised = Recognition.of(bytes, Math.min(bytes.length, Recognition.HEAD), false)
                .orThrow();
        TraceReader.read(new ByteArrayInputStream(bytes), recognised.form(), sink, Watch.none())
                .orThrow();
    }

    private static final class Sum implements SampleSink {
        private double sum;

        @Override
        public void begin(Layout layout) {
            sum = 0;
        }

        @Override
        public void sample(long micros, double[] values) {
            for (int i = 1; i < values.length; i++) { // the first is the time
                sum += values[i];
            }
        }

        @Override
        public void part() {
            sum = 0;
        }

        @Override
        public void end() {
            sum += 1;
        }
    }
}
