package witnessmark.desktop.shell;

import com.formdev.flatlaf.util.SystemInfo;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import witnessmark.desktop.task.OtherProgram;

/**
 * Asks the system whether it is dark, by its own commands. Not on the event thread: it waits up to half a second. What
 * cannot be found out counts as light.
 */
public final class SystemTheme {
    private static final Duration LIMIT = Duration.ofMillis(500);

    private final Function<List<String>, Optional<String>> command;

    public SystemTheme() {
        this(line -> OtherProgram.output(line, LIMIT));
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
                "dbus-send",
                "--print-reply=literal",
                "--reply-timeout=400",
                "--dest=org.freedesktop.portal.Desktop",
                "/org/freedesktop/portal/desktop",
                "org.freedesktop.portal.Settings.ReadOne",
                "string:org.freedesktop.appearance",
                "string:color-scheme");
        Optional<String> answer = command.apply(portal);
        if (answer.isPresent()) {
            return answer.get().strip().endsWith("uint32 1");
        }
        return command.apply(List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme"))
                .map(printed -> printed.toLowerCase(Locale.ROOT).contains("dark"))
                .orElse(false);
    }
}
