package witnessmark.exchange;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Reader;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * {@code season.json}: what the folder is and how many rows each of its files has.
 *
 * @param rows file name to number of rows, in the order of {@link RecordTypes#all()}
 * @param digests file name to what {@link Digests} gave when it was written; empty for a folder that does not say
 * @param kept SHA-256 of what is kept beside the records, in order, to its bytes
 */
record SeasonIndex(Map<String, Integer> rows, Map<String, String> digests, Map<String, Long> kept) {
    static final String FILE = "season.json";
    static final String FORMAT = "witness-mark season folder";
    static final int VERSION = 1;

    private static final long MOST_BYTES = 4 << 20;
    private static final Set<String> KEYS = Set.of("format", "version", "rows", "sha256", "kept");

    /** The text of the file. */
    String text() throws IOException {
        ObjectNode json = mapper().createObjectNode();
        json.put("format", FORMAT);
        json.put("version", VERSION);
        ObjectNode counts = json.putObject("rows");
        rows.forEach(counts::put);
        if (!digests.isEmpty()) {
            ObjectNode each = json.putObject("sha256");
            digests.forEach(each::put);
        }
        if (!kept.isEmpty()) {
            ObjectNode each = json.putObject("kept");
            kept.forEach(each::put);
        }
        Separators separators = Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        return mapper().writer(printer).writeValueAsString(json) + "\n";
    }

    /**
     * Reads the file of a folder. What it says that cannot be followed is noted; a file that is no such index, or one
     * of a newer version, is the end of the reading.
     */
    static Outcome<SeasonIndex> read(Path folder, Problems problems) {
        Path file = folder.resolve(FILE);
        try {
            if (!Files.isRegularFile(file)) {
                return not(folder, 0, null);
            }
            TextLook look = TextLook.at(file, MOST_BYTES);
            if (!look.utf8()) {
                return Outcome.didNot(Problem.of(ProblemKind.WRONG_ENCODING, FILE, "UTF-8")
                        .at(new Place(FILE, look.badLine(), null)));
            }
            if (look.bytes() > MOST_BYTES) {
                return not(folder, 0, null);
            }
            try (Reader text = TextLook.open(file)) {
                return read(folder, mapper().readTree(text), problems);
            }
        } catch (JsonProcessingException e) {
            return not(
                    folder,
                    e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr()),
                    null);
        } catch (IOException e) {
            return Outcome.didNot(Problem.of(ProblemKind.CANNOT_READ_FILE, file.toString(), SystemWords.of(e)));
        }
    }

    private static Outcome<SeasonIndex> read(Path folder, JsonNode json, Problems problems) {
        if (!json.path("format").asText().equals(FORMAT)) {
            return not(folder, 0, "format");
        }
        JsonNode version = json.path("version");
        if (!version.isIntegralNumber() || version.bigIntegerValue().signum() <= 0) {
            return not(folder, 0, "version");
        }
        if (version.bigIntegerValue().compareTo(BigInteger.valueOf(VERSION)) > 0) {
            return Outcome.didNot(
                    Problem.of(ProblemKind.SEASON_FOLDER_NEWER, version.asText(), Integer.toString(VERSION))
                            .at(new Place(FILE, 0, "version")));
        }
        if (!json.path("rows").isObject()) {
            return not(folder, 0, "rows");
        }
        problems.beginFile(FILE);
        json.properties().forEach(field -> {
            if (!KEYS.contains(field.getKey())) {
                String key = Limits.shown(field.getKey());
                problems.at(0, key, ProblemKind.COLUMN_UNKNOWN, key);
            }
        });
        return Outcome.worked(new SeasonIndex(
                rows(json.path("rows"), problems), digests(json.path("sha256")), kept(json.path("kept"))));
    }

    private static Map<String, Integer> rows(JsonNode stated, Problems problems) {
        Map<String, Integer> rows = new LinkedHashMap<>();
        List<String> files = RecordTypes.all().stream().map(RecordType::file).toList();
        stated.properties().forEach(field -> {
            String file = Limits.shown(field.getKey());
            if (!files.contains(field.getKey())) {
                problems.at(0, file, ProblemKind.FILE_UNKNOWN, file);
            } else if (!field.getValue().isInt() || field.getValue().intValue() < 0) {
                String text = Limits.shown(field.getValue().toString());
                problems.at(0, file, ProblemKind.VALUE_UNREADABLE, file, text, "90");
                rows.put(field.getKey(), 0);
            } else {
                rows.put(field.getKey(), field.getValue().intValue());
            }
        });
        return rows;
    }

    /** What cannot be followed says nothing: the tables are read all the same. */
    private static Map<String, String> digests(JsonNode stated) {
        Map<String, String> digests = new LinkedHashMap<>();
        stated.properties()
                .forEach(field -> digests.put(field.getKey(), field.getValue().asText()));
        return digests;
    }

    /** What cannot be followed says nothing: what is kept is known by what it is. */
    private static Map<String, Long> kept(JsonNode stated) {
        Map<String, Long> kept = new LinkedHashMap<>();
        stated.properties()
                .forEach(field -> kept.put(field.getKey(), field.getValue().asLong()));
        return kept;
    }

    private static Outcome<SeasonIndex> not(Path folder, long line, @Nullable String key) {
        return Outcome.didNot(Problem.of(ProblemKind.SEASON_INDEX_UNREADABLE, folder.toString())
                .at(new Place(FILE, line, key)));
    }

    private static ObjectMapper mapper() {
        return new ObjectMapper()
                .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
    }
}
