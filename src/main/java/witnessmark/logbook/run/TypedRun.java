package witnessmark.logbook.run;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A run in the fields of the sheet, a new one or one that is written and may be corrected. Text in, answers out;
 * nothing that was typed is kept between calls, and any thread may ask.
 */
public interface TypedRun {
    /** What the typed text comes to. */
    RunReading read(Map<RunField, String> typed);

    /** What the run would do to the engine and to every fitted part; empty while it cannot be told. */
    Optional<RunDoes> does(RunReading reading);

    /** What changes in other fields when a person picks or types another car, event, run or date. */
    Map<RunField, String> follows(RunField changed, Map<RunField, String> typed);

    /** What can be picked in a field. */
    List<Choice> choices(RunField field, Map<RunField, String> typed);

    /**
     * The text after stepping with the arrow keys: a date by days, the time out by five minutes.
     *
     * @param by 1 for the next, -1 for the one before
     * @return the text as it is for any other field
     */
    String stepped(RunField field, Map<RunField, String> typed, int by);

    /** The time of day now, on the clocks of the event picked. */
    String clockNow(Map<RunField, String> typed);
}
