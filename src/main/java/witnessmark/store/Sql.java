package witnessmark.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Finds a statement by noun and verb: {@code "fitment/insert"} is {@code sql/query/fitment/insert.sql}. */
final class Sql {
    /** Read once each: every opened logbook asks for some two hundred. */
    private final Map<String, String> read = new ConcurrentHashMap<>();

    /**
     * The text of a statement.
     *
     * @param name noun/verb
     * @throws IllegalArgumentException if there is no such statement
     */
    String text(String name) {
        return read.computeIfAbsent(name, Sql::onClassPath);
    }

    private static String onClassPath(String name) {
        try (InputStream in = Sql.class.getResourceAsStream("/sql/query/" + name + ".sql")) {
            if (in == null) {
                throw new IllegalArgumentException("no statement is called " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the statement " + name + " cannot be read", e);
        }
    }
}
