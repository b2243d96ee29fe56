package witnessmark.store;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.logbook.port.Settings;

/** Settings in a properties file, written aside and renamed, so that a crash leaves the old file or the new one. */
public final class FileSettings implements Settings {
    private static final Logger LOG = LoggerFactory.getLogger(FileSettings.class);

    private final Path file;
    private final TreeMap<String, String> values = new TreeMap<>();

    /** @param file read now if it is there; made when the first setting is put */
    public FileSettings(Path file) {
        this.file = file;
        if (Files.exists(file)) {
            read();
        }
    }

    @Override
    public synchronized Optional<String> get(String key) {
        return Optional.ofNullable(values.get(key));
    }

    @Override
    public synchronized void put(String key, String value) {
        if (value.equals(values.put(key, value))) {
            return;
        }
        try {
            SafeFiles.write(file, text());
        } catch (IOException e) {
            LOG.warn("settings cannot be written: {}", file, e);
        }
    }

    private void read() {
        Properties read = new Properties();
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            read.load(in);
            read.stringPropertyNames().forEach(key -> values.put(key, read.getProperty(key)));
        } catch (IOException | IllegalArgumentException e) {
            LOG.warn("settings cannot be read and start afresh: {}", file, e);
        }
    }

    /** Sorted, without the date that {@link Properties} writes at the top. */
    private String text() throws IOException {
        StringBuilder text = new StringBuilder();
        for (var value : values.entrySet()) {
            Properties one = new Properties();
            one.setProperty(value.getKey(), value.getValue());
            StringWriter out = new StringWriter();
            one.store(out, null);
            out.toString()
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .forEach(line -> text.append(line).append('\n'));
        }
        return text.toString();
    }
}
