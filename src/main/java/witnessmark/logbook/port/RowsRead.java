package witnessmark.logbook.port;

import java.util.UUID;
import witnessmark.outcome.Place;

/** Told about the rows of a season folder while it is read. */
public interface RowsRead {
    /** Nobody asks. */
    RowsRead NOBODY = (id, place) -> {};

    /** A row could be read, and stands there. */
    void stands(UUID id, Place place);

    /** The logbook has a row as the folder has it. */
    default void same() {}

    /** So many rows of a table were met, or are stated to be in one that could not be read. */
    default void met(int rows) {}
}
