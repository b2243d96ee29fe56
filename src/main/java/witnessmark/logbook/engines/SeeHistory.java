package witnessmark.logbook.engines;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Logbook;

/** Sees how an entry came to stand as it does: who changed what, when and why. Reads the file; off the event thread. */
public final class SeeHistory {
    private SeeHistory() {}

    /** The changes of an entry, the latest first. */
    public static List<Amended> of(Logbook logbook, Entry<?> entry) {
        String table = RecordTypes.of(entry.fact().getClass()).name();
        Facts facts = logbook.facts();
        List<Amended> all = new ArrayList<>();
        for (Amendment amendment : logbook.history(table, entry.id().value())) {
            all.add(0, amended(facts, amendment));
        }
        return List.copyOf(all);
    }

    private static Amended amended(Facts facts, Amendment amendment) {
        List<Amended.Field> fields = new ArrayList<>();
        if (!amendment.makes()) {
            amendment.after().forEach((name, after) -> {
                Object before = amendment.before().get(name);
                if (!Objects.equals(before, after)) {
                    fields.add(new Amended.Field(name, text(facts, before), text(facts, after)));
                }
            });
        }
        return new Amended(
                Instant.ofEpochMilli(amendment.clock().millis()),
                amendment.who(),
                amendment.why(),
                amendment.makes(),
                fields);
    }

    private static @Nullable String text(Facts facts, @Nullable Object value) {
        if (value == null) {
            return null;
        }
        String text = value.toString();
        return text.length() == 36 && value instanceof String
                ? known(facts, text).orElse(text)
                : text;
    }

    /** The word people know an entry by, when the text is an identity. */
    private static Optional<String> known(Facts facts, String text) {
        UUID id;
        try {
            id = UUID.fromString(text);
        } catch (IllegalArgumentException noIdentity) {
            return Optional.empty();
        }
        for (RecordType<?> type : RecordTypes.all()) {
            Optional<String> word = known(facts, type, id);
            if (word.isPresent()) {
                return word;
            }
        }
        return Optional.empty();
    }

    private static <F extends witnessmark.domain.Fact> Optional<String> known(
            Facts facts, RecordType<F> type, UUID id) {
        return facts.of(type.kind())
                .find(new Id<F>(id))
                .map(found -> found.fact().knownAs());
    }
}
