package witnessmark.store;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;

/**
 * Proves quickly that records and history are as they were written: every row once, every amendment once, in the order
 * they lie in the file, as bytes. It says nothing of what it cannot prove: that is left to {@link Verification}, which
 * looks at it in full, so that a doubt here costs time and is never itself a fault.
 */
final class AsWritten {
    /**
     * What is not proven.
     *
     * @param tables whose rows or the amendments of them are in doubt
     * @param history whether the chains are, or amendments of tables nobody knows
     */
    record Doubts(Set<String> tables, boolean history) {
        static Doubts everything() {
            Set<String> all = new HashSet<>();
            RecordTypes.all().forEach(type -> all.add(type.name()));
            return new Doubts(all, true);
        }
    }

    /** A device's chain so far. */
    private static final class Chain {
        private long number;
        private byte[] hash = {};
    }

    private static final Logger LOG = LoggerFactory.getLogger(AsWritten.class);

    private final CanonicalBytes text = new CanonicalBytes();
    private final AmendmentBytes amendment = new AmendmentBytes(text);
    private final Map<String, RowsToProve> tables = new HashMap<>();
    private final Map<String, Chain> chains = new HashMap<>();
    private byte[] lastTable = {};
    private @Nullable RowsToProve ofLastTable;
    private byte[] lastDevice = {};
    private Chain ofLastDevice = new Chain();
    private boolean historyHolds = true;

    private AsWritten() {}

    static Doubts in(Database database) {
        try {
            return new AsWritten().read(database);
        } catch (SQLException e) {
            LOG.warn("not proven to be as it was written", e);
            return Doubts.everything(); // read again in full, it says as far as it can what is wrong
        }
    }

    private Doubts read(Database database) throws SQLException {
        Set<String> inDoubt = new HashSet<>();
        try {
            for (RecordType<?> type : RecordTypes.all()) {
                tables.put(type.name(), new RowsToProve(type, text, database));
            }
            database.each("amendment/as_they_lie", this::take);
            for (Map.Entry<String, RowsToProve> rows : tables.entrySet()) {
                if (!rows.getValue().areProven()) {
                    inDoubt.add(rows.getKey());
                }
            }
        } finally {
            for (RowsToProve rows : tables.values()) {
                rows.close();
            }
        }
        return new Doubts(inDoubt, !historyHolds);
    }

    private void take(ResultSet row) throws SQLException {
        if (!amendment.read(row)) {
            historyHolds = false;
            return;
        }
        historyHolds &= amendment.isSealed() && goesOn();
        RowsToProve rows = table();
        if (rows == null) {
            historyHolds = false;
        } else if (amendment.isReadable()) {
            rows.prove(amendment);
        } else {
            rows.doubt();
        }
    }

    /** Whether this is the next of its device. */
    private boolean goesOn() {
        if (!amendment.isOfDevice(lastDevice)) {
            lastDevice = amendment.device();
            ofLastDevice = chains.computeIfAbsent(new String(lastDevice, StandardCharsets.UTF_8), any -> new Chain());
        }
        boolean next = amendment.number() == ofLastDevice.number + 1 && amendment.goesOnFrom(ofLastDevice.hash);
        ofLastDevice.number = amendment.number();
        ofLastDevice.hash = amendment.hash();
        return next;
    }

    private @Nullable RowsToProve table() {
        if (!amendment.isOfTable(lastTable)) {
            lastTable = amendment.table();
            ofLastTable = tables.get(new String(lastTable, StandardCharsets.UTF_8));
        }
        return ofLastTable;
    }
}
