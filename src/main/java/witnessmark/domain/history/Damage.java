package witnessmark.domain.history;

import java.util.List;

/**
 * What is hit in a damaged logbook. A record lies there twice, as a row and in its history.
 *
 * @param whole how many records can be read as they were written, from their history if not from their row
 * @param hits the records whose row is not what it was
 * @param unreadable how many changes are missing in the history, at least
 */
public record Damage(int whole, List<Hit> hits, long unreadable) {
    public Damage {
        hits = List.copyOf(hits);
    }

    /**
     * A record that is hit.
     *
     * @param table what kind of record, by its table
     * @param name what people call it, as far as that can be read
     * @param left what is left of it
     */
    public record Hit(String table, String name, Left left) {}

    /** What is left of a record that is hit. */
    public enum Left {
        /** All of it, in its history. */
        IN_HISTORY,
        /** Something that may not be what was written. */
        DOUBTFUL,
        NOTHING
    }
}
