package witnessmark.store;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One amendment after the other as the bytes of its row, in one place that is filled anew each time. */
final class AmendmentBytes {
    private static final int ID = 1;
    private static final int DEVICE = 2;
    private static final int NUMBER = 3;
    private static final int CLOCK_MILLIS = 4;
    private static final int CLOCK_TICK = 5;
    private static final int WHO = 6;
    private static final int CHANGE = 7;
    private static final int TABLE = 8;
    private static final int RECORD = 9;
    private static final int BEFORE = 10;
    private static final int AFTER = 11;
    private static final int WHY = 12;
    private static final int SCHEMA = 13;
    private static final int PREVIOUS_HASH = 14;
    private static final int HASH = 15;

    private static final int[] NUMBERS = {NUMBER, CLOCK_MILLIS, CLOCK_TICK, SCHEMA};
    private static final int[] TEXTS = {ID, DEVICE, WHO, CHANGE, TABLE, RECORD, BEFORE, AFTER, WHY, PREVIOUS_HASH, HASH
    };

    /** A column under its name in the text that is hashed. */
    private record Named(int column, byte[] name) {
        static Named of(int column, String name) {
            return new Named(column, CanonicalBytes.quoted(name));
        }
    }

    /** In the order of the names. */
    private static final Named[] HASHED = {
        Named.of(AFTER, "after"),
        Named.of(BEFORE, "before"),
        Named.of(CHANGE, "change_id"),
        Named.of(CLOCK_MILLIS, "clock_ms"),
        Named.of(CLOCK_TICK, "clock_tick"),
        Named.of(DEVICE, "device"),
        Named.of(ID, "id"),
        Named.of(NUMBER, "number"),
        Named.of(PREVIOUS_HASH, "previous_hash"),
        Named.of(RECORD, "record_id"),
        Named.of(SCHEMA, "schema_version"),
        Named.of(TABLE, "table_name"),
        Named.of(WHO, "who"),
        Named.of(WHY, "why"),
    };

    private static final byte[] NOTHING = "{}".getBytes(StandardCharsets.US_ASCII);

    private final CanonicalBytes text;
    private final byte[][] texts = new byte[HASH + 1][0];
    private final long[] numbers = new long[HASH + 1];
    private @Nullable UUID id;
    private @Nullable UUID record;

    /** @param text to put the text together in that is hashed */
    AmendmentBytes(CanonicalBytes text) {
        this.text = text;
    }

    /**
     * Takes a row of all columns.
     *
     * @return false when something is missing in it
     */
    boolean read(ResultSet row) throws SQLException {
        for (int column : TEXTS) {
            byte @Nullable [] bytes = row.getBytes(column);
            if (bytes == null) {
                return false;
            }
            texts[column] = bytes;
        }
        for (int column : NUMBERS) {
            numbers[column] = row.getLong(column);
        }
        id = UuidBytes.read(texts[ID]);
        record = UuidBytes.read(texts[RECORD]);
        return true;
    }

    /** Whether its hash is the one over all else in it. */
    boolean isSealed() {
        text.begin();
        for (Named each : HASHED) {
            text.name(each.name());
            if (isNumber(each.column())) {
                text.number(numbers[each.column()]);
            } else {
                text.text(texts[each.column()]);
            }
        }
        text.end();
        return CanonicalBytes.isHex(text.hash(), texts[HASH]);
    }

    /** Whether it is one to the letter, as {@link Amendments#read} would ask. */
    boolean isReadable() {
        return id != null
                && record != null
                && UuidBytes.read(texts[CHANGE]) != null
                && numbers[CLOCK_TICK] == (int) numbers[CLOCK_TICK]
                && numbers[SCHEMA] == (int) numbers[SCHEMA]
                && (Arrays.equals(texts[BEFORE], NOTHING) || CanonicalMerge.isCanonical(texts[BEFORE]));
    }

    @Nullable
    UUID id() {
        return id;
    }

    @Nullable
    UUID record() {
        return record;
    }

    byte[] device() {
        return texts[DEVICE];
    }

    long number() {
        return numbers[NUMBER];
    }

    long clockMillis() {
        return numbers[CLOCK_MILLIS];
    }

    long clockTick() {
        return numbers[CLOCK_TICK];
    }

    byte[] who() {
        return texts[WHO];
    }

    byte[] table() {
        return texts[TABLE];
    }

    byte[] after() {
        return texts[AFTER];
    }

    byte[] previousHash() {
        return texts[PREVIOUS_HASH];
    }

    byte[] hash() {
        return texts[HASH];
    }

    private static boolean isNumber(int column) {
        return column == NUMBER || column == CLOCK_MILLIS || column == CLOCK_TICK || column == SCHEMA;
    }
}
