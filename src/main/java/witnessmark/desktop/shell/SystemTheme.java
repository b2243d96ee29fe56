package witnessmark.desktop.shell;

import com.formdev.flatlaf.util.SystemInfo;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import witnessmark.desktop.task.EventThread;

/**
 * Asks the system whether it is dark, by its own commands. Not on the event thread: it waits up to half a second. What
 * cannot be found out counts as light.
 */
public final class SystemTheme {
    private static final long LIMIT_MS = 500;

    private final Function<List<String>, Optional<String>> command;

    public SystemTheme() {
        this(SystemTheme::output);
    }

    /** @param command runs a command line and gives what it printed, or nothing when it failed */
    SystemTheme(Function<List<String>, Optional<String>> command) {
        this.command = command;
    }

    public boolean isDark() {
        if (SystemInfo.isWindows) {
            return windows();
        }
        return SystemInfo.isMacOS ? mac() : linux();
    }

    boolean windows() {
        String path = "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize";
        return command.apply(List.of("reg", "query", path, "/v", "AppsUseLightTheme"))
                .map(printed -> printed.trim().endsWith("0x0"))
                .orElse(false);
    }

    boolean mac() {
        return command.apply(List.of("defaults", "read", "-g", "AppleInterfaceStyle"))
                .map(printed -> printed.trim().equalsIgnoreCase("dark"))
                .orElse(false);
    }

    /** The desktop portal answers 1 for dark, 2 for light, 0 for no preference. */
    boolean linux() {
        List<String> portal = List.of(
                "gdbus",
                "call",
                "--session",
                "--timeout=1",
                "--dest",
                "org.freedesktop.portal.Desktop",
                "--object-path",
                "/org/freedesktop/portal/desktop",
                "--method",
                "org.freedesktop.portal.Settings.ReadOne",
                "org.freedesktop.appearance",
                "color-scheme");
        Optional<String> answer = command.apply(portal);
        if (answer.isPresent()) {
            return answer.get().contains("uint32 1");
        }
        return command.apply(List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme"))
                .map(printed -> printed.toLowerCase(Locale.ROOT).contains("dark"))
                .orElse(false);
    }

    private static Optional<String> output(List<String> line) {
        EventThread.refuse();
        try {
            Process process = new ProcessBuilder(line).redirectErrorStream(true).start();
            if (!process.waitFor(LIMIT_MS, TimeUnit.MILLISECONDS)) {
                process.destroyForcibly();
                return Optional.empty();
            }
            try (InputStream in = process.getInputStream()) {
                String printed = new String(in.readNBytes(4096), StandardCharsets.UTF_8);
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
