package witnessmark.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.image.Column;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.Storage;

/**
 * The rows of one table until the amendments of each have been met: a row is proven by its checksum, and by amendments
 * that come to the same text, are as many as it says, and were made by whom and when it says. What is proven is let go.
 */
final class RowsToProve {
    /** Bytes of texts that wait for later amendments of their records; beyond, a record is looked at in full. */
    private static final long MOST_WAITING = 32L << 20;

    /** A column in the order of names, with its place in a row. */
    private record Place(String name, byte[] quoted, int at, boolean isText) {}

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
    private final List<Place> places;
    private final List<String> addedLater;
    private final byte[] nullsOfLater;
    private final int stampAt;
    private final Map<UUID, Row> rows = new HashMap<>();
    private long waiting;
    private boolean doubtful;
    private byte[] lastMaker = {};

    /** @param text to put the text of a row together in */
    RowsToProve(RecordType<?> type, CanonicalBytes text) {
        this.text = text;
        this.places = places(type);
        this.addedLater = type.addedLater();
        this.stampAt = type.columns().size() + 4;
        this.nullsOfLater = nulls();
    }

    private static List<Place> places(RecordType<?> type) {
        List<Place> places = new ArrayList<>();
        int at = 2;
        for (Column column : type.columns()) {
            places.add(place(column.name(), at++, column.storage() == Storage.TEXT));
        }
        places.add(place(EntryImage.STANDING, at++, true));
        places.add(place(EntryImage.STRUCK_BECAUSE, at, true));
        places.sort(Comparator.comparing(Place::name));
        return places;
    }

    private static Place place(String name, int at, boolean isText) {
        return new Place(name, CanonicalBytes.quoted(name), at, isText);
    }

    private byte[] nulls() {
        text.begin();
        for (Place place : places) {
            if (addedLater.contains(place.name())) {
                text.name(place.quoted());
                text.nothing();
            }
        }
        text.end();
        return text.copy();
    }

    /** Takes a row of all columns. */
    void read(ResultSet row) throws SQLException {
        byte @Nullable [] id = row.getBytes(1);
        byte @Nullable [] madeBy = row.getBytes(stampAt + 1);
        byte @Nullable [] amendedBy = row.getBytes(stampAt + 2);
        byte @Nullable [] checksum = row.getBytes(stampAt + 4);
        UUID key = id == null ? null : UuidBytes.read(id);
        if (key == null || madeBy == null || amendedBy == null || checksum == null) {
            doubt();
            return;
        }
        byte[] hash = hash(row, List.of());
        byte[] sealedHash = CanonicalBytes.isHex(hash, checksum) ? hash : sealedBefore(row, checksum);
        Row read = new Row(
                hash,
                sealedHash,
                row.getLong(stampAt),
                Arrays.equals(madeBy, lastMaker) ? lastMaker : madeBy,
                UuidBytes.read(amendedBy),
                row.getLong(stampAt + 3));
        lastMaker = read.madeBy;
        if (sealedHash.length == 0 || rows.put(key, read) != null) {
            doubt();
        }
    }

    /** The hash a row was sealed with before its table had a column; the newest column stands last. */
    private byte[] sealedBefore(ResultSet row, byte[] checksum) throws SQLException {
        for (int from = addedLater.size() - 1; from >= 0; from--) {
            List<String> without = addedLater.subList(from, addedLater.size());
            if (!isNull(row, without.get(0))) {
                break;
            }
            byte[] hash = hash(row, without);
            if (CanonicalBytes.isHex(hash, checksum)) {
                return hash;
            }
        }
        return new byte[0];
    }

    private boolean isNull(ResultSet row, String column) throws SQLException {
        for (Place place : places) {
            if (place.name().equals(column)) {
                return row.getBytes(place.at()) == null;
            }
        }
        return false;
    }

    private byte[] hash(ResultSet row, List<String> without) throws SQLException {
        text.begin();
        for (Place place : places) {
            if (!without.isEmpty() && without.contains(place.name())) {
                continue;
            }
            text.name(place.quoted());
            if (place.isText()) {
                text.text(row.getBytes(place.at()));
                continue;
            }
            long number = row.getLong(place.at());
            if (number == 0 && row.wasNull()) {
                text.nothing();
            } else {
                text.number(number);
            }
        }
        text.end();
        return text.hash();
    }

    /** Something of this table cannot be proven here. */
    void doubt() {
        doubtful = true;
    }

    /** Holds the next amendment of this table against the row it belongs to. */
    void prove(AmendmentBytes next) {
        UUID record = next.record();
        Row row = record == null ? null : rows.get(record);
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
            return row.madeAtMillis == next.clockMillis() && Arrays.equals(row.madeBy, next.who());
        }
        return next.clockMillis() > row.lastMillis
                || (next.clockMillis() == row.lastMillis && next.clockTick() > row.lastTick);
    }

    /** Whether the amendments up to this one come to the row, if it is the last. */
    private boolean comesTo(Row row, AmendmentBytes next) {
        if (row.rev == 1 && Arrays.equals(text.hash(next.after()), row.sealedHash)) {
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

    /** Whether every row met all its amendments, and they each a row. */
    boolean areProven() {
        return !doubtful && rows.isEmpty();
    }
}
