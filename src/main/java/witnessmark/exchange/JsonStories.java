package witnessmark.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import witnessmark.logbook.port.Stories;
import witnessmark.logbook.port.Story;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Reads {@code story.json}: the day a season starts on, and its chapters with the folder and the day of each. */
public final class JsonStories implements Stories {
    private static final String FILE = "story.json";
    private static final ObjectMapper JSON = new ObjectMapper();

    @Override
    public Outcome<Story> read(Path folder) {
        Path file = folder.resolve(FILE);
        if (!Files.isRegularFile(file)) {
            return Outcome.didNot(Problem.of(ProblemKind.FILE_MISSING, FILE));
        }
        try {
            return Outcome.worked(story(folder, JSON.readTree(Files.readString(file))));
        } catch (JsonProcessingException | DateTimeException | IllegalArgumentException e) {
            return Outcome.didNot(Problem.of(ProblemKind.CANNOT_READ_FILE, file, String.valueOf(e.getMessage())));
        } catch (IOException e) {
            return Outcome.didNot(Problem.of(ProblemKind.CANNOT_READ_FILE, file, String.valueOf(e.getMessage())));
        }
    }

    private static Story story(Path folder, JsonNode root) {
        List<Story.Chapter> chapters = new ArrayList<>();
        for (JsonNode chapter : root.path("chapters")) {
            chapters.add(new Story.Chapter(
                    folder.resolve(text(chapter, "folder")),
                    text(chapter, "name"),
                    LocalDate.parse(text(chapter, "today"))));
        }
        return new Story(folder, LocalDate.parse(text(root, "today")), chapters);
    }

    private static String text(JsonNode node, String field) {
        JsonNode value = node.get(field);
        if (value == null || !value.isTextual()) {
            throw new IllegalArgumentException("no text under '" + field + "'");
        }
        return value.asText();
    }
}
