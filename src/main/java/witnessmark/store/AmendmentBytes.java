package witnessmark.store;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One amendment after the other as the bytes of its row. All but three columns come in one text, a {@link #SEPARATOR}
 * between them; one with a separator in what was typed falls apart into too many and is left to the longer way.
 */
final class AmendmentBytes {
    /** The unit separator of ASCII (ECMA-48, 8.3.76: US). */
    private static final byte SEPARATOR = 0x1F;

    private static final int REST = 1;
    private static final int BEFORE = 2;
    private static final int AFTER = 3;
    private static final int HASH = 4;

    private static final int CHANGE = 0;
    private static final int CLOCK_MILLIS = 1;
    private static final int CLOCK_TICK = 2;
    private static final int DEVICE = 3;
    private static final int ID = 4;
    private static final int NUMBER = 5;
    private static final int PREVIOUS_HASH = 6;
    private static final int RECORD = 7;
    private static final int SCHEMA = 8;
    private static final int TABLE = 9;
    private static final int WHO = 10;
    private static final int FIELDS = 12;

    private static final byte[] NAME_OF_AFTER = CanonicalBytes.quoted("after");
    private static final byte[] NAME_OF_BEFORE = CanonicalBytes.quoted("before");

    /** Under which names the rest stands in the text that is hashed, in their order. */
    private static final byte[][] NAMES = {
        CanonicalBytes.quoted("change_id"),
        CanonicalBytes.quoted("clock_ms"),
        CanonicalBytes.quoted("clock_tick"),
        CanonicalBytes.quoted("device"),
        CanonicalBytes.quoted("id"),
        CanonicalBytes.quoted("number"),
        CanonicalBytes.quoted("previous_hash"),
        CanonicalBytes.quoted("record_id"),
        CanonicalBytes.quoted("schema_version"),
        CanonicalBytes.quoted("table_name"),
        CanonicalBytes.quoted("who"),
        CanonicalBytes.quoted("why"),
    };

    private static final byte[] NOTHING = "{}".getBytes(StandardCharsets.US_ASCII);

    /** A long has at least as many digits. */
    private static final int DIGITS = 18;

    private static final int BASE = 10;

    private final CanonicalBytes text;
    private final int[] from = new int[FIELDS + 1];
    private byte[] rest = {};
    private byte[] before = {};
    private byte[] after = {};
    private byte[] hash = {};
    private @Nullable UUID id;
    private @Nullable UUID record;
    private long number;
    private long clockMillis;
    private long clockTick;

    /** @param text to put the text together in that is hashed */
    AmendmentBytes(CanonicalBytes text) {
        this.text = text;
    }

    /**
     * Takes a row of amendment/as_they_lie.
     *
     * @return false when something is missing in it or more than there must be
     */
    boolean read(ResultSet row) throws SQLException {
        byte @Nullable [] some = row.getBytes(REST);
        byte @Nullable [] was = row.getBytes(BEFORE);
        byte @Nullable [] became = row.getBytes(AFTER);
        byte @Nullable [] sealed = row.getBytes(HASH);
        if (some == null || was == null || became == null || sealed == null || !fallsApart(some)) {
            return false;
        }
        rest = some;
        before = was;
        after = became;
        hash = sealed;
        id = UuidBytes.read(rest, from[ID], end(ID));
        record = UuidBytes.read(rest, from[RECORD], end(RECORD));
        number = whole(NUMBER);
        clockMillis = whole(CLOCK_MILLIS);
        clockTick = whole(CLOCK_TICK);
        return number >= 0 && clockTick >= 0 && whole(SCHEMA) >= 0;
    }

    private boolean fallsApart(byte[] some) {
        int field = 0;
        for (int at = 0; at < some.length; at++) {
            if (some[at] == SEPARATOR) {
                if (++field == FIELDS) {
                    return false;
                }
                from[field] = at + 1;
            }
        }
        from[FIELDS] = some.length + 1;
        return field == FIELDS - 1;
    }

    private int end(int field) {
        return from[field + 1] - 1;
    }

    /** The whole number of a field, or the least there is when it is none that is never below 0. */
    private long whole(int field) {
        int to = end(field);
        if (to == from[field] || to - from[field] > DIGITS) {
            return Long.MIN_VALUE;
        }
        long value = 0;
        for (int at = from[field]; at < to; at++) {
            if (rest[at] < '0' || rest[at] > '9') {
                return Long.MIN_VALUE;
            }
            value = value * BASE + rest[at] - '0';
        }
        return value;
    }

    /** Whether its hash is the one over all else in it. */
    boolean isSealed() {
        text.begin();
        text.name(NAME_OF_AFTER);
        text.text(after);
        text.name(NAME_OF_BEFORE);
        text.text(before);
        for (int field = 0; field < FIELDS; field++) {
            text.name(NAMES[field]);
            if (isNumber(field)) {
                text.digits(rest, from[field], end(field));
            } else {
                text.text(rest, from[field], end(field));
            }
        }
        text.end();
        return CanonicalBytes.isHex(text.hash(), hash);
    }

    /** Whether it is one to the letter, as {@link Amendments#read} would ask. */
    boolean isReadable() {
        return id != null
                && record != null
                && UuidBytes.read(rest, from[CHANGE], end(CHANGE)) != null
                && clockMillis >= 0
                && clockTick == (int) clockTick
                && whole(SCHEMA) == (int) whole(SCHEMA)
                && (Arrays.equals(before, NOTHING) || CanonicalMerge.isCanonical(before));
    }

    @Nullable
    UUID id() {
        return id;
    }

    @Nullable
    UUID record() {
        return record;
    }

    boolean isOfDevice(byte[] name) {
        return is(DEVICE, name);
    }

    byte[] device() {
        return Arrays.copyOfRange(rest, from[DEVICE], end(DEVICE));
    }

    boolean isOfTable(byte[] name) {
        return is(TABLE, name);
    }

    byte[] table() {
        return Arrays.copyOfRange(rest, from[TABLE], end(TABLE));
    }

    boolean isBy(byte[] who) {
        return is(WHO, who);
    }

    /** Whether it names this as the hash of the one before. */
    boolean goesOnFrom(byte[] previousHash) {
        return is(PREVIOUS_HASH, previousHash);
    }

    long number() {
        return number;
    }

    long clockMillis() {
        return clockMillis;
    }

    long clockTick() {
        return clockTick;
    }

    byte[] after() {
        return after;
    }

    byte[] hash() {
        return hash;
    }

    private boolean is(int field, byte[] value) {
        return Arrays.equals(rest, from[field], end(field), value, 0, value.length);
    }

    private static boolean isNumber(int field) {
        return field == NUMBER || field == CLOCK_MILLIS || field == CLOCK_TICK || field == SCHEMA;
    }
}
