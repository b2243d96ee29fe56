package witnessmark.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * What the shipped program takes while nobody touches it: processor time and bytes written, over a minute, a minute and a
 * half after its start. The first argument is its data folder, the rest are the program's. Linux alone tells
 * ({@code /proc}).
 *
 * <p>{@code java -cp CLASSPATH witnessmark.bench.IdleBench DATA_FOLDER [LOGBOOK]}
 */
public final class IdleBench {
    private static final Duration SETTLED = Duration.ofSeconds(90);
    private static final Duration WATCHED = Duration.ofSeconds(60);
    /** Ticks of the processor's clock a second, as Linux shows them everywhere. */
    private static final int TICKS = 100;
    /** Of the fields behind the name in parentheses: utime and stime (proc(5)). */
    private static final int USER_TIME = 11;

    private IdleBench() {}

    public static void main(String[] args) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Dwitnessmark.data=" + args[0],
                "-cp",
                System.getProperty("java.class.path"),
                "witnessmark.launch.Main"));
        command.addAll(List.of(args).subList(1, args.length));
        Process program = new ProcessBuilder(command).inheritIO().start();
        try {
            if (program.waitFor(SETTLED.toSeconds(), TimeUnit.SECONDS)) {
                throw new IllegalStateException("the program ended by itself");
            }
            long ticks = ticks(program);
            long bytes = written(program);
            program.waitFor(WATCHED.toSeconds(), TimeUnit.SECONDS);
            System.out.printf(
                    Locale.ROOT,
                    "idle for %d s: %d ms of the processor, %d bytes written%n",
                    WATCHED.toSeconds(),
                    (ticks(program) - ticks) * 1_000 / TICKS,
                    written(program) - bytes);
        } finally {
            program.destroy();
        }
    }

    private static long ticks(Process program) throws IOException {
        String stat = Files.readString(Path.of("/proc", Long.toString(program.pid()), "stat"));
        String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ");
        return Long.parseLong(fields[USER_TIME]) + Long.parseLong(fields[USER_TIME + 1]);
    }

    /** To files and the display alike; what goes to the display is no disk's. */
    private static long written(Process program) throws IOException {
        return Files.readAllLines(Path.of("/proc", Long.toString(program.pid()), "io")).stream()
                .filter(line -> line.startsWith("write_bytes:"))
                .mapToLong(line -> Long.parseLong(line.substring(line.indexOf(' ') + 1)))
                .sum();
    }
}
