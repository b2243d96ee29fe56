package witnessmark.desktop.task;

import java.awt.Desktop;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Asks another program of the system something, and does not wait for it for long. */
public final class OtherProgram {
    private static final Logger LOG = LoggerFactory.getLogger(OtherProgram.class);

    private static final int MOST = 4096;

    /** A program that still runs after so many seconds has opened the file. */
    private static final int OPENED = 3;

    private OtherProgram() {}

    /**
     * Opens a file with the program that the system has for its kind, and does not wait for that to end.
     *
     * @return whether there is such a program
     * @throws IllegalStateException on the event thread
     */
    public static boolean open(Path file) {
        EventThread.refuse();
        try {
            if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
                Desktop.getDesktop().open(file.toFile());
                return true;
            }
        } catch (IOException | IllegalArgumentException | UnsupportedOperationException none) {
            LOG.info("the system itself opens no {}", file, none);
        }
        return freedesktop(file);
    }

    /** A desktop that Java does not know has this one, by the freedesktop.org tools. */
    private static boolean freedesktop(Path file) {
        try {
            Process process = new ProcessBuilder("xdg-open", file.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return !process.waitFor(OPENED, TimeUnit.SECONDS) || process.exitValue() == 0;
        } catch (IOException absent) {
            LOG.info("nothing here opens {}", file, absent);
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

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
