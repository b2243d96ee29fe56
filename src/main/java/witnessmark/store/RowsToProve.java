package witnessmark.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;

/**
 * The rows of one table, read on as far as amendments of them are met, and kept until all of each have been: a row is
 * proven by its checksum, and by amendments
 * that come to the same text, are as many as it says, and were made by whom and when it says. What is proven is let go.
 */
final class RowsToProve implements AutoCloseable {
    /** Bytes of texts that wait for later amendments of their records; beyond, a record is looked at in full. */
    private static final long MOST_WAITING = 32L << 20;

    /** What stands before and behind the columns of a query. */
    private static final String FIRST = "SELECT\n";

    private static final String LAST = "\nFROM ";

    private static final int IMAGE = 1;
    private static final int ID = 2;
    private static final int MADE_AT = 3;
    private static final int MADE_BY = 4;
    private static final int AMENDED_BY = 5;
    private static final int REV = 6;
    private static final int CHECKSUM = 7;

    /** What a row says, and what its amendments came to so far. */
    private static final class Row {
        private final byte[] hash;
        private final byte[] sealedHash;
        private final long madeAtMillis;
        private final byte[] madeBy;
        private final @Nullable UUID amendedBy;
        private final long rev;
        private long met;
        private long lastMillis;
        private long lastTick;
        private byte @Nullable [] fold;

        Row(byte[] hash, byte[] sealedHash, long madeAtMillis, byte[] madeBy, @Nullable UUID amendedBy, long rev) {
            this.hash = hash;
            this.sealedHash = sealedHash;
            this.madeAtMillis = madeAtMillis;
            this.madeBy = madeBy;
            this.amendedBy = amendedBy;
            this.rev = rev;
        }
    }

    private final CanonicalBytes text;
    private final List<String> addedLater;
    private final byte[] nullsOfLater;
    private final ResultSet unread;
    private final Map<UUID, Row> rows = new HashMap<>();
    private long waiting;
    private boolean doubtful;
    private boolean moreUnread = true;
    private byte[] lastMaker = {};
    private @Nullable Row last;
    private byte[] textOfLast = {};

    /**
     * @param text to put nothing but the text of a row together in
     * @param database whose rows are read as their amendments are met
     */
    RowsToProve(RecordType<?> type, CanonicalBytes text, Database database) throws SQLException {
        this.text = text;
        this.addedLater = type.addedLater();
        this.nullsOfLater = nulls();
        this.unread = database.rows(type.name() + "/all", all -> together(type, all));
    }

    /** The query for all columns, with those that are sealed put together as one text by SQLite. */
    private static String together(RecordType<?> type, String all) {
        List<String> sealed = new ArrayList<>();
        type.columns().forEach(column -> sealed.add(column.name()));
        sealed.add(EntryImage.STANDING);
        sealed.add(EntryImage.STRUCK_BECAUSE);
        String object = sealed.stream()
                .sorted()
                .map(name -> "'" + name + "', \"" + name + '"')
                .collect(Collectors.joining(", ", "json_object(", ")"));
        int columns = all.lastIndexOf(FIRST) + FIRST.length();
        return all.substring(0, columns)
                + object
                + ", id, made_at_ms, made_by, amended_by, rev, checksum"
                + all.substring(all.lastIndexOf(LAST));
    }

    private byte[] nulls() {
        text.begin();
        addedLater.stream().sorted().forEach(name -> {
            text.name(CanonicalBytes.quoted(name));
            text.nothing();
        });
        text.end();
        return text.copy();
    }

    /** Reads on until the row of a record was met. */
    private @Nullable Row row(UUID record) throws SQLException {
        Row row = rows.get(record);
        while (row == null && moreUnread) {
            moreUnread = unread.next();
            if (moreUnread) {
                take(unread);
                row = rows.get(record);
            }
        }
        return row;
    }

    private void take(ResultSet row) throws SQLException {
        byte @Nullable [] image = row.getBytes(IMAGE);
        byte @Nullable [] id = row.getBytes(ID);
        byte @Nullable [] madeBy = row.getBytes(MADE_BY);
        byte @Nullable [] amendedBy = row.getBytes(AMENDED_BY);
        byte @Nullable [] checksum = row.getBytes(CHECKSUM);
        UUID key = id == null ? null : UuidBytes.read(id);
        if (image == null || key == null || madeBy == null || amendedBy == null || checksum == null) {
            doubt();
            return;
        }
        byte[] hash = text.hash(image);
        byte[] sealedHash = CanonicalBytes.isHex(hash, checksum) ? hash : sealedBefore(image, checksum);
        Row read = new Row(
                hash,
                sealedHash,
                row.getLong(MADE_AT),
                Arrays.equals(madeBy, lastMaker) ? lastMaker : madeBy,
                UuidBytes.read(amendedBy),
                row.getLong(REV));
        lastMaker = read.madeBy;
        last = read;
        textOfLast = image;
        if (sealedHash.length == 0 || rows.put(key, read) != null) {
            doubt();
        }
    }

    /** The hash a row was sealed with before its table had a column; the newest column stands last. */
    private byte[] sealedBefore(byte[] image, byte[] checksum) {
        for (int from = addedLater.size() - 1; from >= 0; from--) {
            byte @Nullable [] without = CanonicalMerge.without(image, addedLater.subList(from, addedLater.size()));
            if (without == null) {
                break;
            }
            byte[] hash = text.hash(without);
            if (CanonicalBytes.isHex(hash, checksum)) {
                return hash;
            }
        }
        return new byte[0];
    }

    /** Something of this table cannot be proven here. */
    void doubt() {
        doubtful = true;
    }

    /** Holds the next amendment of this table against the row it belongs to. */
    void prove(AmendmentBytes next) throws SQLException {
        UUID record = next.record();
        Row row = record == null ? null : row(record);
        if (row == null || !follows(row, next) || !comesTo(row, next)) {
            doubt();
            return;
        }
        row.met++;
        row.lastMillis = next.clockMillis();
        row.lastTick = next.clockTick();
        if (row.met == row.rev) {
            rows.remove(record);
            if (!Objects.equals(next.id(), row.amendedBy)) {
                doubt();
            }
        }
    }

    /** Whether the amendments of the record come in their own order, the first by whom and when the row says. */
    private static boolean follows(Row row, AmendmentBytes next) {
        if (row.met == 0) {
            return row.madeAtMillis == next.clockMillis() && next.isBy(row.madeBy);
        }
        return next.clockMillis() > row.lastMillis
                || (next.clockMillis() == row.lastMillis && next.clockTick() > row.lastTick);
    }

    /** Whether the amendments up to this one come to the row, if it is the last. */
    private boolean comesTo(Row row, AmendmentBytes next) {
        if (row.rev == 1 && isSame(row, next.after())) {
            return true;
        }
        byte[] before = row.fold == null ? nullsOfLater : row.fold;
        byte @Nullable [] fold = CanonicalMerge.of(before, next.after());
        if (fold == null) {
            return false;
        }
        if (row.met + 1 == row.rev) {
            waiting -= row.fold == null ? 0 : row.fold.length;
            return Arrays.equals(text.hash(fold), row.hash);
        }
        waiting += fold.length - (row.fold == null ? 0 : row.fold.length);
        row.fold = fold;
        return waiting <= MOST_WAITING;
    }

    /** Whether a text is the one the row was sealed with; of the row read last it is at hand. */
    private boolean isSame(Row row, byte[] after) {
        return (row == last && row.hash == row.sealedHash && Arrays.equals(after, textOfLast))
                || Arrays.equals(text.hash(after), row.sealedHash);
    }

    /** Whether every row met all its amendments, and they each a row; asked when all amendments were met. */
    boolean areProven() throws SQLException {
        return !doubtful && rows.isEmpty() && (!moreUnread || !unread.next());
    }

    @Override
    public void close() throws SQLException {
        unread.close();
    }
}
