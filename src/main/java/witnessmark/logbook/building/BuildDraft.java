package witnessmark.logbook.building;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Position;
import witnessmark.ledger.result.FreePart;
import witnessmark.ledger.result.StockLevel;
import witnessmark.logbook.building.BuildField.Name;
import witnessmark.logbook.sheets.FitPart;

/**
 * What is typed on the page of a build and not yet written.
 *
 * @param engine of which engine
 * @param build which build, or null for one that is opened with it
 * @param texts what stands in its fields, as typed; nothing for a field nobody filled
 */
public record BuildDraft(Id<Engine> engine, @Nullable Id<Build> build, Map<BuildField, String> texts) {
    public BuildDraft {
        texts = Map.copyOf(texts);
    }

    /** The text without blanks round it; empty where nothing stands. */
    public String text(BuildField field) {
        return texts.getOrDefault(field, "").strip();
    }

    String text(Name name) {
        return text(BuildField.of(name));
    }

    boolean has(BuildField field) {
        return !text(field).isEmpty();
    }

    /** What {@link Name#IN} holds when this is picked. */
    public static String part(FreePart free) {
        Entry<Part> part = free.part();
        StockLevel batch = free.batch();
        return part != null
                ? part.id().text()
                : batch == null ? "" : FitPart.ofBatch(batch.batch().id());
    }

    /** The positions of which something is said, in no order that means anything. */
    List<Id<Position>> positions() {
        return rows().flatMap(row -> BuildField.position(row).stream()).toList();
    }

    /** The groups of fasteners of which something is said, by their numbers. */
    public List<Integer> joints() {
        return new TreeSet<>(
                        rows().flatMap(row -> BuildField.joint(row).stream()).toList())
                .stream().toList();
    }

    private Stream<String> rows() {
        Map<String, Boolean> rows = new TreeMap<>();
        texts.forEach((field, text) -> rows.merge(field.row(), !text.isBlank(), Boolean::logicalOr));
        return rows.entrySet().stream().filter(Map.Entry::getValue).map(Map.Entry::getKey);
    }

    /** Where what is in a position goes; empty while it stays. */
    public Optional<Goes> goes(Id<Position> position) {
        return witnessmark.domain.Coded.find(Goes.class, text(BuildField.of(position, Name.OUT)));
    }
}
