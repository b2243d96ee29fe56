package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Where the program keeps what belongs to no logbook: settings, log, drafts in need, backups, this machine's identity.
 *
 * @param path made when something is first kept there
 */
public record DataFolder(Path path) {
    /** System property that puts the folder elsewhere. */
    public static final String PROPERTY = "witnessmark.data";

    /** The folder on this machine: where the system property says, or where the platform keeps such things. */
    public static DataFolder ofThisMachine() {
        return locate(System::getProperty, System::getenv);
    }

    /**
     * The folder a platform means: {@code %APPDATA%\Witness Mark}, {@code ~/Library/Application Support/Witness Mark},
     * {@code $XDG_DATA_HOME/witness-mark} or {@code ~/.local/share/witness-mark} (XDG Base Directory Specification 0.8:
     * a relative XDG_DATA_HOME is ignored).
     *
     * @param property system properties; null for one that is not set
     * @param environment variables of the environment; null for one that is not set
     */
    static DataFolder locate(UnaryOperator<@Nullable String> property, UnaryOperator<@Nullable String> environment) {
        String chosen = property.apply(PROPERTY);
        if (chosen != null && !chosen.isBlank()) {
            return new DataFolder(Path.of(chosen).toAbsolutePath());
        }
        String system = filled(property.apply("os.name"), "").toLowerCase(Locale.ROOT);
        Path home = Path.of(filled(property.apply("user.home"), "."));
        if (system.startsWith("windows")) {
            String roaming = environment.apply("APPDATA");
            Path base = roaming == null || roaming.isBlank()
                    ? home.resolve("AppData").resolve("Roaming")
                    : Path.of(roaming);
            return new DataFolder(base.resolve("Witness Mark"));
        }
        if (system.startsWith("mac")) {
            return new DataFolder(
                    home.resolve("Library").resolve("Application Support").resolve("Witness Mark"));
        }
        String xdg = environment.apply("XDG_DATA_HOME");
        Path base = xdg == null || !Path.of(xdg).isAbsolute()
                ? home.resolve(".local").resolve("share")
                : Path.of(xdg);
        return new DataFolder(base.resolve("witness-mark"));
    }

    /**
     * This machine's identity in the history, made up the first time.
     *
     * @throws IOException if it can be neither read nor written
     */
    public String device() throws IOException {
        Path file = path.resolve("device");
        if (Files.exists(file)) {
            String written = Files.readString(file).strip();
            if (!written.isEmpty()) {
                return written;
            }
        }
        String made = UUID.randomUUID().toString();
        SafeFiles.write(file, made + "\n");
        return made;
    }

    /** Where the backups of all logbooks are, each in a folder of its own. */
    public Path backups() {
        return path.resolve("backups");
    }

    /**
     * Makes a folder in it, for its owner alone.
     *
     * @throws IOException if it cannot be made
     */
    public Path privateFolder(String name) throws IOException {
        Path folder = path.resolve(name);
        SafeFiles.createPrivateFolder(folder);
        return folder;
    }

    public FileSettings settings() {
        return new FileSettings(path.resolve("settings.properties"));
    }

    private static String filled(@Nullable String text, String otherwise) {
        return text == null || text.isBlank() ? otherwise : text;
    }
}
