package witnessmark.store;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.history.HybridClock;

/** Writes and reads amendments and works out the hash that chains them. */
final class Amendments {
    private final Canonical canonical;

    Amendments(Canonical canonical) {
        this.canonical = canonical;
    }

    /** An amendment as its row holds it: what changed is text. */
    record Line(Amendment amendment, String before, String after) {}

    /** The same amendment with its hash, ready to be written. */
    Line sealed(Amendment open) {
        String before = canonical.text(open.before());
        String after = canonical.text(open.after());
        return new Line(
                new Amendment(
                        open.id(),
                        open.device(),
                        open.number(),
                        open.clock(),
                        open.who(),
                        open.change(),
                        open.table(),
                        open.record(),
                        open.before(),
                        open.after(),
                        open.why(),
                        open.schema(),
                        open.previousHash(),
                        hash(open, before, after)),
                before,
                after);
    }

    void insert(Database database, Line line) throws SQLException {
        Amendment amendment = line.amendment();
        PreparedStatement insert = database.statement("amendment/insert");
        insert.setString(1, amendment.id().toString());
        insert.setString(2, amendment.device());
        insert.setLong(3, amendment.number());
        insert.setLong(4, amendment.clock().millis());
        insert.setInt(5, amendment.clock().tick());
        insert.setString(6, amendment.who());
        insert.setString(7, amendment.change().toString());
        insert.setString(8, amendment.table());
        insert.setString(9, amendment.record().toString());
        insert.setString(10, line.before());
        insert.setString(11, line.after());
        insert.setString(12, amendment.why());
        insert.setInt(13, amendment.schema());
        insert.setString(14, amendment.previousHash());
        insert.setString(15, amendment.hash());
        insert.executeUpdate();
    }

    /** Reads an amendment with the very text of what changed. */
    Line line(ResultSet row) throws SQLException {
        return new Line(read(row), Database.text(row, 10), Database.text(row, 11));
    }

    /**
     * An amendment as a link of its device's chain.
     *
     * @param sealed whether its hash is the one over all else in it, to the letter
     */
    record Link(String device, long number, String previousHash, String hash, boolean sealed) {}

    /**
     * Reads a link without reading what changed: the hash holds that to the letter.
     *
     * @throws IllegalArgumentException if something is missing in it
     */
    Link link(ResultSet row) throws SQLException {
        String device = Database.text(row, 2);
        long number = row.getLong(3);
        String previous = Database.text(row, 14);
        Map<String, @Nullable Object> all = new TreeMap<>();
        all.put("id", Database.text(row, 1));
        all.put("device", device);
        all.put("number", number);
        all.put("clock_ms", row.getLong(4));
        all.put("clock_tick", row.getLong(5));
        all.put("who", Database.text(row, 6));
        all.put("change_id", Database.text(row, 7));
        all.put("table_name", Database.text(row, 8));
        all.put("record_id", Database.text(row, 9));
        all.put("before", Database.text(row, 10));
        all.put("after", Database.text(row, 11));
        all.put("why", Database.text(row, 12));
        all.put("schema_version", row.getLong(13));
        all.put("previous_hash", previous);
        String hash = Database.text(row, 15);
        return new Link(device, number, previous, hash, hash.equals(canonical.hash(canonical.text(all))));
    }

    /** Whether the hash in an amendment is the one over all else in it. */
    boolean isSealed(Line line) {
        return line.amendment().hash().equals(hash(line.amendment(), line.before(), line.after()));
    }

    /** The hash over everything but the hash itself. */
    private String hash(Amendment amendment, String before, String after) {
        Map<String, @Nullable Object> all = new TreeMap<>();
        all.put("id", amendment.id().toString());
        all.put("device", amendment.device());
        all.put("number", amendment.number());
        all.put("clock_ms", amendment.clock().millis());
        all.put("clock_tick", (long) amendment.clock().tick());
        all.put("who", amendment.who());
        all.put("change_id", amendment.change().toString());
        all.put("table_name", amendment.table());
        all.put("record_id", amendment.record().toString());
        all.put("before", before);
        all.put("after", after);
        all.put("why", amendment.why());
        all.put("schema_version", (long) amendment.schema());
        all.put("previous_hash", amendment.previousHash());
        return canonical.hash(canonical.text(all));
    }

    List<Amendment> list(Database database, String query, @Nullable Object... parameters) throws SQLException {
        List<Amendment> found = new ArrayList<>();
        database.each(query, row -> found.add(read(row)), parameters);
        return found;
    }

    /**
     * Reads an amendment from a row of all its columns.
     *
     * @throws IllegalArgumentException if it is none
     */
    Amendment read(ResultSet row) throws SQLException {
        return new Amendment(
                id(Database.text(row, 1)),
                Database.text(row, 2),
                row.getLong(3),
                new HybridClock.Time(row.getLong(4), small(row.getLong(5))),
                Database.text(row, 6),
                id(Database.text(row, 7)),
                Database.text(row, 8),
                id(Database.text(row, 9)),
                canonical.values(Database.text(row, 10)),
                canonical.values(Database.text(row, 11)),
                Database.text(row, 12),
                small(row.getLong(13)),
                Database.text(row, 14),
                Database.text(row, 15));
    }

    /** An id as we write one; other spellings of the same would not be seen in the hash. */
    private static UUID id(String text) {
        UUID id = UUID.fromString(text);
        if (!id.toString().equals(text)) {
            throw new IllegalArgumentException("an id is written in small letters: " + text);
        }
        return id;
    }

    private static int small(long number) {
        if (number != (int) number) {
            throw new IllegalArgumentException("too large a number: " + number);
        }
        return (int) number;
    }

    /** The latest time on the logbook's clock. */
    HybridClock.Time lastClock(Database database) throws SQLException {
        List<HybridClock.Time> last = new ArrayList<>();
        database.each("amendment/last_clock", row -> last.add(new HybridClock.Time(row.getLong(1), row.getInt(2))));
        return last.isEmpty() ? HybridClock.Time.ZERO : last.get(0);
    }
}
