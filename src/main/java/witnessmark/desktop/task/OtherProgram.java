package witnessmark.desktop.task;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** Asks another program of the system something, and does not wait for it for long. */
public final class OtherProgram {
    private static final int MOST = 4096;

    private OtherProgram() {}

    /**
     * What the program printed, at most 4096 bytes; nothing when there is none, it failed or took too long.
     *
     * @throws IllegalStateException on the event thread
     */
    public static Optional<String> output(List<String> line, Duration limit) {
        EventThread.refuse();
        try {
            Process process = new ProcessBuilder(line).redirectErrorStream(true).start();
            if (!process.waitFor(limit.toMillis(), TimeUnit.MILLISECONDS)) {
                process.destroyForcibly();
                return Optional.empty();
            }
            try (InputStream in = process.getInputStream()) {
                String printed = new String(in.readNBytes(MOST), StandardCharsets.UTF_8);
                return process.exitValue() == 0 ? Optional.of(printed) : Optional.empty();
            }
        } catch (IOException absent) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
