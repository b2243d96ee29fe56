package witnessmark.desktop.runsheet;

import java.util.Map;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.run.RunField;
import witnessmark.outcome.Outcome;

/** Something that is written with a new run, in the same change: a logger's trace it was filled from. */
public interface GoesWith {
    /** What it is called. */
    String name();

    /** How the fields are filled before anybody types. */
    Map<RunField, String> filled();

    /**
     * Writes both; blocks, off the event thread.
     *
     * @param run as it would be saved
     * @param fields as they stand on the sheet
     */
    Outcome<Written> save(Entry<Run> run, Map<RunField, String> fields, String why);

    /** Both are written. */
    void saved();
}
