package witnessmark.logbook.port;

import java.util.Optional;

/** What the program remembers between starts outside any logbook: window, theme, units, recent files. */
public interface Settings {
    Optional<String> get(String key);

    /** Remembers a value; a failure to write it is logged, never thrown. */
    void put(String key, String value);
}
