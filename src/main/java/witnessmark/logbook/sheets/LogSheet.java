package witnessmark.logbook.sheets;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;

/** One sheet: what it asks, what stands there at first, what can be picked, and which entries the typed text makes. */
public interface LogSheet {
    /** Its name in the bundles. */
    String key();

    /** Its fields by heading and row. */
    List<SheetGroup> groups();

    /** What stands in the fields before anybody types. */
    Map<SheetField, String> fresh(SheetSight sight);

    /** What is picked at first when an engine was in view, by field; empty where the sheet asks for none. */
    default Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of();
    }

    /** What can be picked in a field; empty for a field that is typed. */
    List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight);

    /**
     * What somebody may look for among the choices of a field that can never be picked there, each with the reason in a
     * sentence of its own. Asked only when letters typed lead to no choice.
     */
    default Map<Choice, SheetNote> notOffered(SheetField field, SheetTyped typed, SheetSight sight) {
        return Map.of();
    }

    /**
     * What comes to stand in other fields once something else is picked in this one, as long as nobody has typed there.
     */
    default Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        return Map.of();
    }

    /** Whether a field is asked for, given what stands in the others. */
    default boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return true;
    }

    /** Reads the fields that are asked for, and makes the entries. */
    void read(ReadSheet in);

    /** What it is about, for the history and the sentence after saving: the name of what is written down. */
    List<String> about(SheetTyped typed, SheetSight sight);

    /** What has to be known straight after saving besides that it is saved; empty for nothing. */
    default Optional<SheetNote> afterSaving(SheetTyped typed, SheetSight sight) {
        return Optional.empty();
    }

    /** The fields kept for the next sheet when several are written one after the other. */
    default Set<SheetField> kept() {
        return Set.of();
    }

    /** Whether several are usually written one after the other, so that saving goes on to the next. */
    default boolean oneAfterTheOther() {
        return false;
    }

    /**
     * What stands in the fields of something written on this sheet; empty where one record does not come of its fields
     * alone.
     */
    default Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        return Optional.empty();
    }

    /** The same where the entry itself has to be known, as others belong to it. */
    default Optional<Map<SheetField, String>> written(Entry<?> entry, SheetSight sight) {
        return written(entry.fact(), sight);
    }

    /** All its fields in order. */
    default Set<SheetField> fields() {
        Set<SheetField> all = new LinkedHashSet<>();
        groups().forEach(group -> group.rows().forEach(all::addAll));
        return all;
    }
}
