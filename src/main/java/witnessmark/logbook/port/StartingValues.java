package witnessmark.logbook.port;

import java.util.List;

/** The figures from which limits usually start, by class of engine. */
@FunctionalInterface
public interface StartingValues {
    /** All of them, class by class; each only ever shown beside an empty field. */
    List<StartingValue> all();
}
