package witnessmark.logbook.port;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was typed and not yet saved, one draft for each form and record. Drafts lie outside amendments, checksums and
 * the season folder. When the logbook cannot take one it goes to a file in the data folder.
 */
public interface Drafts {
    /**
     * A draft as kept.
     *
     * @param fields field name to text exactly as typed
     * @param keptAt when it was last kept
     * @param typedIn the other file of this logbook in which it was typed, by its name: a copy that takes none itself; null
     *     when it was typed in this one
     */
    record Draft(
            Map<String, String> fields,
            Instant keptAt,
            @Nullable String typedIn) {
        public Draft {
            fields = Map.copyOf(fields);
        }

        /** A draft typed in the file that is open. */
        public Draft(Map<String, String> fields, Instant keptAt) {
            this(fields, keptAt, null);
        }
    }

    /** Where a draft went. */
    enum Kept {
        IN_LOGBOOK,
        IN_FALLBACK_FILE,
        NOT_KEPT
    }

    Kept keep(String form, String record, Draft draft);

    Optional<Draft> find(String form, String record);

    void discard(String form, String record);

    /**
     * What was begun and not saved.
     *
     * @param form of which form
     * @param record about which record
     * @param keptAt when it was last kept
     */
    record Begun(String form, String record, Instant keptAt) {}

    /** Everything that is kept, the latest first. */
    List<Begun> begun();
}
