package witnessmark.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.TreeMap;

/**
 * The steps from nothing to the newest schema, and what the schema of each version reads like.
 *
 * @param folder where the steps lie on the class path
 * @param names step 1, 2 … without the ending .sql
 * @param digests version to SHA-256 of the schema's text, for every version that a logbook may have
 */
record SchemaSteps(String folder, List<String> names, Map<Integer, String> digests) {
    private static final String FILE = "schema.properties";
    private static final String DIGEST = "sha256.";

    SchemaSteps {
        names = List.copyOf(names);
        digests = Map.copyOf(digests);
    }

    /** Those of this program. */
    static SchemaSteps ours() {
        Properties read = new Properties();
        try (InputStream in = SchemaSteps.class.getResourceAsStream(FILE)) {
            read.load(new InputStreamReader(Objects.requireNonNull(in, FILE), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(FILE + " cannot be read", e);
        }
        TreeMap<Integer, String> names = new TreeMap<>();
        TreeMap<Integer, String> digests = new TreeMap<>();
        for (String key : read.stringPropertyNames()) {
            TreeMap<Integer, String> into = key.startsWith(DIGEST) ? digests : names;
            into.put(Integer.valueOf(key.substring(key.indexOf('.') + 1)), read.getProperty(key));
        }
        return new SchemaSteps("sql/schema", List.copyOf(names.values()), digests);
    }

    /** The newest version: the number of steps. */
    int version() {
        return names.size();
    }

    /** The text of a step, counted from 1. */
    String text(int step) {
        String path = "/" + folder + "/" + names.get(step - 1) + ".sql";
        try (InputStream in = SchemaSteps.class.getResourceAsStream(path)) {
            return new String(Objects.requireNonNull(in, path).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(path + " cannot be read", e);
        }
    }
}
