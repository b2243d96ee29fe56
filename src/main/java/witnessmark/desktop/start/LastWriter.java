package witnessmark.desktop.start;

import java.nio.file.Path;
import java.util.Optional;
import witnessmark.logbook.port.Settings;

/** Who wrote last in a logbook on this computer. */
public final class LastWriter {
    private final Settings settings;
    private final String key;

    public LastWriter(Settings settings, Path logbook) {
        this.settings = settings;
        this.key = "writing." + logbook.toAbsolutePath().normalize();
    }

    public Optional<String> name() {
        return settings.get(key).map(String::strip).filter(name -> !name.isEmpty());
    }

    public void is(String name) {
        settings.put(key, name);
    }
}
