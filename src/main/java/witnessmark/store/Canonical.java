package witnessmark.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Column values as JSON text, always the same text for the same values: one object, keys in order of their UTF-16
 * units, no white space, whole numbers and strings and null. And the SHA-256 of such a text.
 */
final class Canonical {
    private final JsonFactory json = new JsonFactory();

    /** @param values whole numbers, text or null by name */
    String text(Map<String, ? extends @Nullable Object> values) {
        StringWriter out = new StringWriter(512);
        try (JsonGenerator generator = json.createGenerator(out)) {
            generator.writeStartObject();
            for (Map.Entry<String, ? extends @Nullable Object> value :
                    sorted(values).entrySet()) {
                generator.writeFieldName(value.getKey());
                write(generator, value.getValue());
            }
            generator.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("text cannot be written to memory", e);
        }
        return out.toString();
    }

    /**
     * Reads such a text back.
     *
     * @throws IllegalArgumentException if it is no such text
     */
    Map<String, @Nullable Object> values(String text) {
        Map<String, @Nullable Object> values = new TreeMap<>();
        try (JsonParser parser = json.createParser(text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new IllegalArgumentException("column values are one JSON object");
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                values.put(name, value(parser));
            }
        } catch (IOException e) {
            throw new IllegalArgumentException("column values cannot be read: " + e.getMessage(), e);
        }
        return values;
    }

    /** SHA-256 of the UTF-8 bytes, 64 hexadecimal digits (FIPS 180-4). */
    String hash(String text) {
        MessageDigest digest = Sha256.begun();
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        return Sha256.text(digest);
    }

    private static <V extends @Nullable Object> Map<String, V> sorted(Map<String, V> values) {
        return values instanceof SortedMap<String, V> already && already.comparator() == null
                ? already
                : new TreeMap<>(values);
    }

    private static void write(JsonGenerator generator, @Nullable Object value) throws IOException {
        if (value == null) {
            generator.writeNull();
        } else if (value instanceof Number number) {
            generator.writeNumber(number.longValue());
        } else {
            generator.writeString((String) value);
        }
    }

    private static @Nullable Object value(JsonParser parser) throws IOException {
        JsonToken token = parser.nextToken();
        return switch (token) {
            case VALUE_NULL -> null;
            case VALUE_NUMBER_INT -> Long.valueOf(parser.getLongValue());
            case VALUE_STRING -> parser.getText();
            default -> throw new IllegalArgumentException("a column value is a whole number, text or nothing");
        };
    }
}
