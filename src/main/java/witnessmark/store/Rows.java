package witnessmark.store;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.image.Column;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.domain.image.Storage;

/**
 * The rows of the record tables. Every one has its id first, then the fact's own columns, then those that all tables
 * have: standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum.
 */
final class Rows {
    /** What a row says besides its fact; in a damaged file an empty text where there must be one. */
    record Stamp(long madeAtMillis, String madeBy, String amendedBy, long rev, String checksum) {}

    /** The columns behind an image, in the order of the queries. */
    static final List<String> STAMP = List.of("made_at_ms", "made_by", "amended_by", "rev", "checksum");

    /**
     * Reads every record.
     *
     * @throws SQLException as SQLite does when the file is damaged
     * @throws IllegalArgumentException if a row makes no possible fact
     */
    Facts facts(Database database) throws SQLException {
        List<Entry<?>> all = new ArrayList<>();
        for (RecordType<?> type : RecordTypes.all()) {
            try {
                database.each(type.name() + "/all", row -> all.add(entry(type, row)));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException("a row of " + type.name() + " holds what cannot be", e);
            }
        }
        return Facts.none().with(all);
    }

    /** The entry in a row of all columns. */
    <F extends Fact> Entry<F> entry(RecordType<F> type, ResultSet row) throws SQLException {
        List<Column> columns = type.columns();
        List<@Nullable Object> values = new ArrayList<>(columns.size());
        for (int i = 0; i < columns.size(); i++) {
            values.add(value(row, i + 2, columns.get(i).storage()));
        }
        int next = columns.size() + 2;
        return new Entry<>(
                Id.parse(Database.text(row, 1)),
                type.fact(values),
                Coded.of(Standing.class, Database.text(row, next)),
                Database.textOrNull(row, next + 1),
                row.getLong(next + 5));
    }

    /** The image in a row of all columns, as it stands there, possible fact or not. */
    Map<String, @Nullable Object> image(RecordType<?> type, ResultSet row) throws SQLException {
        Map<String, @Nullable Object> image = new TreeMap<>();
        int at = 2;
        for (Column column : type.columns()) {
            image.put(column.name(), value(row, at++, column.storage()));
        }
        image.put(EntryImage.STANDING, row.getString(at));
        image.put(EntryImage.STRUCK_BECAUSE, row.getString(at + 1));
        return image;
    }

    /** The columns of an image, in the order of the queries. */
    static List<String> imageColumns(RecordType<?> type) {
        return Stream.concat(
                        type.columns().stream().map(Column::name),
                        Stream.of(EntryImage.STANDING, EntryImage.STRUCK_BECAUSE))
                .toList();
    }

    /** Whether a checksum is that of an image, or was before its table had the columns that came later. */
    static boolean isSealed(
            RecordType<?> type, Map<String, @Nullable Object> image, String checksum, Canonical canonical) {
        if (checksum.equals(canonical.hash(canonical.text(image)))) {
            return true;
        }
        Map<String, @Nullable Object> earlier = new TreeMap<>(image);
        for (int at = type.addedLater().size() - 1; at >= 0; at--) { // the newest column stands last
            String column = type.addedLater().get(at);
            if (earlier.remove(column) != null) {
                return false;
            }
            if (checksum.equals(canonical.hash(canonical.text(earlier)))) {
                return true;
            }
        }
        return false;
    }

    Stamp stamp(RecordType<?> type, ResultSet row) throws SQLException {
        int at = type.columns().size() + 4;
        return new Stamp(row.getLong(at), text(row, at + 1), text(row, at + 2), row.getLong(at + 3), text(row, at + 4));
    }

    private static String text(ResultSet row, int at) throws SQLException {
        return Objects.requireNonNullElse(row.getString(at), "");
    }

    /** Writes a record for the first time. */
    void insert(Database database, Entry<?> entry, Amendment by, String checksum) throws SQLException {
        RecordType<?> type = RecordTypes.of(entry.fact().getClass());
        PreparedStatement insert = database.statement(type.name() + "/insert");
        insert.setString(1, entry.id().text());
        int at = bindFact(insert, 2, type, entry);
        insert.setLong(at, by.clock().millis());
        insert.setString(at + 1, by.who());
        insert.setString(at + 2, by.id().toString());
        insert.setLong(at + 3, entry.rev());
        insert.setString(at + 4, checksum);
        insert.executeUpdate();
    }

    /**
     * Writes a record again.
     *
     * @param amendedBy the amendment that does it
     * @param revBefore the revision the row must still have
     * @return whether it still had it
     */
    boolean update(Database database, Entry<?> entry, UUID amendedBy, String checksum, long revBefore)
            throws SQLException {
        RecordType<?> type = RecordTypes.of(entry.fact().getClass());
        PreparedStatement update = database.statement(type.name() + "/update");
        int at = bindFact(update, 1, type, entry);
        update.setString(at, amendedBy.toString());
        update.setLong(at + 1, entry.rev());
        update.setString(at + 2, checksum);
        update.setString(at + 3, entry.id().text());
        update.setLong(at + 4, revBefore);
        return update.executeUpdate() == 1;
    }

    private static int bindFact(PreparedStatement statement, int first, RecordType<?> type, Entry<?> entry)
            throws SQLException {
        int at = first;
        for (Object value : type.row(entry.fact())) {
            Database.bind(statement, at++, value);
        }
        statement.setString(at++, entry.standing().code());
        statement.setString(at++, entry.struckBecause());
        return at;
    }

    private static @Nullable Object value(ResultSet row, int at, Storage storage) throws SQLException {
        if (storage == Storage.TEXT) {
            return Database.textOrNull(row, at);
        }
        long number = row.getLong(at);
        return number == 0 && row.wasNull() ? null : Long.valueOf(number);
    }
}
