package witnessmark.logbook.sheets;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;

/** A sheet with what is typed on it, for something new or for something written. Nothing typed is kept in between. */
public interface TypedSheet {
    /** What it asks. */
    LogSheet sheet();

    /** The logbook as the sheet sees it now. */
    SheetSight sight();

    /** What stands in the fields before anybody types. */
    Map<SheetField, String> texts();

    /** What the typed text comes to, field by field. */
    SheetReading read(Map<SheetField, String> typed);

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
