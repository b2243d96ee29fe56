package witnessmark.logbook.sheets;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;

/** A sheet with what is typed on it, for something new or for something written. Nothing typed is kept in between. */
public interface TypedSheet {
    /** What it asks. */
    LogSheet sheet();

    /** The logbook as the sheet sees it now. */
    SheetSight sight();

    /**
     * Looks at everything it asks of the logbook as it is now: how things stand, what is where. This may take a while in
     * a large logbook; until that changes, everything else but {@link #check} and {@link #save} is quick, and {@link #read}
     * where {@link #glance} says nothing.
     */
    default void look() {
        Map<SheetField, String> typed = texts();
        read(typed);
        sheet().fields().forEach(field -> sheet().choices(field, new SheetTyped(typed), sight()));
    }

    /** What stands in the fields before anybody types. */
    Map<SheetField, String> texts();

    /** What is picked at first when an engine was in view: only what can be picked. */
    default Map<SheetField, String> picksFor(Id<Engine> engine) {
        SheetTyped typed = new SheetTyped(texts());
        Map<SheetField, String> picked = new HashMap<>(sheet().picksFor(engine, sight()));
        picked.entrySet()
                .removeIf(each -> sheet().choices(each.getKey(), typed, sight()).stream()
                        .noneMatch(choice -> choice.key().equals(each.getValue())));
        return picked;
    }

    /** What the typed text comes to, field by field. */
    SheetReading read(Map<SheetField, String> typed);

    /**
     * The same where it is quick, as far as the logbook was looked at already.
     *
     * @return empty where something has to be worked out first that may take a while in a large logbook: then {@link #read}
     */
    default Optional<SheetReading> glance(Map<SheetField, String> typed) {
        return Optional.of(read(typed));
    }

    /** What in it contradicts the rest of the logbook. This may take a while in a large logbook. */
    List<FoundProblem> check(SheetReading reading);

    /**
     * Saves it; blocks. Queries do not keep it from being saved; what stops does, and then nothing is changed.
     *
     * @param why the words for the history
     * @return what was written; empty when it says what is written already
     */
    Outcome<Optional<Written>> save(Map<SheetField, String> typed, String why);
}
