package witnessmark.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.logbook.port.Drafts.Begun;
import witnessmark.logbook.port.Drafts.Draft;

/**
 * Drafts in the data folder, one file each, for when the logbook cannot take them. What is typed in a window that can only read
 * has a place of its own: the window that can write has drafts too, of the same forms.
 */
final class DraftFiles {
    private static final Logger LOG = LoggerFactory.getLogger(DraftFiles.class);

    private final Path folder;
    private final Path logbook;
    private final Canonical canonical;

    /**
     * @param folder of one logbook's drafts, whichever of its files they were typed in; made when the first is kept
     * @param logbook the file they are typed in now
     */
    DraftFiles(Path folder, Path logbook, Canonical canonical) {
        this.folder = folder;
        this.logbook = logbook;
        this.canonical = canonical;
    }

    static DraftFiles of(Home home, String logbookId, Path logbook) {
        return new DraftFiles(home.draftFolder(logbookId), logbook, home.canonical);
    }

    /** Whose draft of a form it is. */
    enum Place {
        /** That of the window that can write. */
        WRITER(""),
        /** That of one that can only read. */
        READER("\nread only");

        private final String mark;

        Place(String mark) {
            this.mark = mark;
        }
    }

    Canonical canonical() {
        return canonical;
    }

    /** @return whether it was kept */
    boolean keep(Place place, String form, String record, Draft draft) {
        Map<String, @Nullable Object> content = new TreeMap<>();
        content.put("fields", fields(draft, canonical));
        content.put("form", form);
        content.put("kept_at_ms", draft.keptAt().toEpochMilli());
        content.put("record", record);
        content.put("typed_in", logbook.toString());
        try {
            SafeFiles.write(file(place, form, record), canonical.text(content));
            return true;
        } catch (IOException e) {
            LOG.error("a draft cannot be kept in {}", folder, e);
            return false;
        }
    }

    Optional<Draft> find(Place place, String form, String record) {
        Path file = file(place, form, record);
        try {
            if (!Files.exists(file)) {
                return Optional.empty();
            }
            Map<String, @Nullable Object> content = canonical.values(Files.readString(file, StandardCharsets.UTF_8));
            Draft draft = draft(
                    String.valueOf(content.get("fields")),
                    Long.parseLong(String.valueOf(content.get("kept_at_ms"))),
                    canonical);
            return Optional.of(new Draft(draft.fields(), draft.keptAt(), otherFile(content.get("typed_in"))));
        } catch (IOException | IllegalArgumentException e) {
            LOG.error("a draft cannot be read: {}", file, e);
            return Optional.empty();
        }
    }

    /** Every draft in the folder, in no order; one that cannot be read is left out. */
    List<Begun> begun() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Begun> all = new ArrayList<>();
        try (DirectoryStream<Path> drafts = Files.newDirectoryStream(folder, "*.json")) {
            for (Path file : drafts) {
                Map<String, @Nullable Object> content =
                        canonical.values(Files.readString(file, StandardCharsets.UTF_8));
                all.add(new Begun(
                        String.valueOf(content.get("form")),
                        String.valueOf(content.get("record")),
                        Instant.ofEpochMilli(Long.parseLong(String.valueOf(content.get("kept_at_ms"))))));
            }
        } catch (IOException | DirectoryIteratorException | IllegalArgumentException e) {
            LOG.error("drafts cannot be read: {}", folder, e);
        }
        return all;
    }

    void discard(Place place, String form, String record) {
        try {
            Files.deleteIfExists(file(place, form, record));
        } catch (IOException e) {
            LOG.error("a draft cannot be removed from {}", folder, e);
        }
    }

    private @Nullable String otherFile(@Nullable Object typedIn) {
        return typedIn == null || typedIn.equals(logbook.toString())
                ? null
                : String.valueOf(Path.of(typedIn.toString()).getFileName());
    }

    static String fields(Draft draft, Canonical canonical) {
        return canonical.text(draft.fields());
    }

    static Draft draft(String fields, long keptAtMillis, Canonical canonical) {
        Map<String, String> texts = new TreeMap<>();
        canonical.values(fields).forEach((name, text) -> texts.put(name, text == null ? "" : text.toString()));
        return new Draft(texts, Instant.ofEpochMilli(keptAtMillis));
    }

    private Path file(Place place, String form, String record) {
        return folder.resolve(canonical.hash(form + "\n" + record + place.mark).substring(0, 32) + ".json");
    }
}
