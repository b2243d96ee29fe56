package witnessmark.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Team;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordType;

/** Which rows of one kind are the same, and which names among those in force are taken. */
final class Sameness<F extends Fact> {
    /** The columns that hold what a row is called. */
    static final Set<String> NAME_HEADINGS = Set.of("name", "number", "mark", "batch");

    private final RecordType<F> type;
    private final Reading reading;
    private final Set<String> claimed = new HashSet<>();
    private final Set<String> inLogbook = new HashSet<>();
    private final Set<List<String>> withoutId = new HashSet<>();
    private final Map<List<String>, Entry<F>> byContent = new HashMap<>();

    Sameness(RecordType<F> type, Reading reading) {
        this.type = type;
        this.reading = reading;
    }

    /** The name that no other entry in force may have, or null when it may. There is one team. */
    @Nullable
    String uniqueName(Fact fact) {
        return fact instanceof Team ? "team" : WholeName.of(fact, reading.soFar());
    }

    /** Takes a name for a row of the folder; false when another row has it. */
    boolean claim(String name) {
        return claimed.add(name);
    }

    /** Finds the names of the entries in force that the folder does not replace. */
    void namesTakenBesides(Set<UUID> replaced) {
        for (Entry<F> entry : reading.known().of(type.kind()).all()) {
            String name = uniqueName(entry.fact());
            if (name != null && entry.inForce() && !replaced.contains(entry.id().value())) {
                inLogbook.add(name);
            }
        }
    }

    /** Whether an entry in force that is in the logbook only has the name of this one. */
    boolean nameTaken(F fact) {
        String name = uniqueName(fact);
        return name != null && inLogbook.contains(name);
    }

    /** The column in which the name stands. */
    @Nullable
    String nameHeading() {
        return type.components().stream()
                .map(Component::heading)
                .filter(NAME_HEADINGS::contains)
                .findFirst()
                .orElse(null);
    }

    /** The entry of the logbook that a row is: that with its id, or when it gives none, that with its content. */
    @Nullable
    Entry<F> known(Entry<F> row, boolean idGiven) {
        if (idGiven) {
            return reading.known().of(type.kind()).find(row.id()).orElse(null);
        }
        if (byContent.isEmpty()) {
            for (Entry<F> entry : reading.known().of(type.kind()).all()) {
                byContent.putIfAbsent(content(entry), entry);
            }
        }
        return byContent.get(content(row));
    }

    boolean same(Entry<F> one, Entry<F> other) {
        return content(one).equals(content(other));
    }

    /** Whether no row without an id had the same content before. */
    boolean firstOfItsKind(Entry<F> row) {
        return withoutId.add(content(row));
    }

    /** All that a row says but its id, as it would be written with ids for names. */
    private List<String> content(Entry<F> entry) {
        List<String> content = new ArrayList<>();
        for (Component component : type.components()) {
            content.add(component.text(component.value(entry.fact())));
        }
        content.add(entry.standing().code());
        content.add(entry.struckBecause() == null ? "" : entry.struckBecause());
        return content;
    }
}
