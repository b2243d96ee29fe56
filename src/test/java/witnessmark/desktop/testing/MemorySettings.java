package witnessmark.desktop.testing;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import witnessmark.logbook.port.Settings;

/** Settings that last as long as the test. */
public final class MemorySettings implements Settings {
    private final Map<String, String> values = new HashMap<>();

    @Override
    public Optional<String> get(String key) {
        return Optional.ofNullable(values.get(key));
    }

    @Override
    public void put(String key, String value) {
        values.put(key, value);
    }
}
