package witnessmark.store;

import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Trace;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.history.Fold;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Checks that a logbook is as it was written: the file, every reference, every row against its checksum and against the
 * fold of its amendments, and every device's chain of hashes. Neither check alone finds every flipped bit.
 *
 * <p>What {@link AsWritten} proves is left at that; the rest is read in full here, and named where it is wrong.
 */
final class Verification {
    /** More than these are not told. */
    private static final int MOST = 100;

    /** What a row was found to be, and whether its checksum is that of what stands in it. */
    private record Found(String imageHash, Rows.Stamp stamp, boolean sealed) {}

    private static final Logger LOG = LoggerFactory.getLogger(Verification.class);

    private final Path path;
    private final Canonical canonical;
    private final Amendments amendments;
    private final Rows rows = new Rows();
    private final List<Problem> problems = new ArrayList<>();

    Verification(Path path, Canonical canonical) {
        this.path = path;
        this.canonical = canonical;
        this.amendments = new Amendments(canonical);
    }

    /** What is wrong, while others may write: what is saved during the check is in all of it or in none. */
    List<Problem> ofOneMoment(Database database, Facts facts) {
        try {
            return database.still(() -> of(database, facts));
        } catch (SQLException e) {
            return List.of(Faults.reading(path, e));
        }
    }

    /**
     * What is wrong; empty when nothing is.
     *
     * @param facts to name records by
     */
    List<Problem> of(Database database, Facts facts) {
        try {
            file(database);
            AsWritten.Doubts doubts = AsWritten.in(database);
            Names names = new Names(facts);
            for (RecordType<?> type : RecordTypes.all()) {
                if (doubts.tables().contains(type.name())) {
                    table(database, type, facts, names);
                }
            }
            if (doubts.history()) {
                strangers(database);
                chains(database);
            }
            kept(database, facts);
        } catch (SQLException e) {
            add(Faults.reading(path, e));
        } catch (IllegalArgumentException e) {
            add(Problem.of(ProblemKind.LOGBOOK_DAMAGED, path, String.valueOf(e.getMessage())));
        }
        return List.copyOf(problems);
    }

    /** What traces name as kept may be missing, as after an import; what is there is what was written. */
    private void kept(Database database, Facts facts) throws SQLException {
        for (String sha256 : KeptPieces.names(database)) {
            try {
                KeptPieces.of(database, sha256);
            } catch (KeptPieces.Changed e) {
                LOG.warn("in {}: {}", path, e.getMessage());
                List<Entry<Trace>> naming = facts.of(Trace.class).where(trace -> sha256.equals(trace.kept()));
                String whose = naming.isEmpty() ? "" : naming.get(0).fact().name();
                add(Problem.of(ProblemKind.SAMPLES_CHANGED, whose));
            }
        }
    }

    private void file(Database database) throws SQLException {
        boolean[] torn = {false};
        database.each("file/integrity_check", row -> {
            if (!"ok".equals(row.getString(1))) {
                LOG.warn("a logbook is damaged: {} {}", path, row.getString(1));
                torn[0] = true;
            }
        });
        if (torn[0]) {
            add(Problem.of(ProblemKind.LOGBOOK_DAMAGED, path, Faults.TORN));
        }
        database.each(
                "file/foreign_key_check",
                row -> add(Problem.of(
                        ProblemKind.LOGBOOK_DAMAGED,
                        path,
                        row.getString(1) + " row " + row.getLong(2) + " refers to nothing in " + row.getString(3))));
    }

    private <F extends Fact> void table(Database database, RecordType<F> type, Facts facts, Names names)
            throws SQLException {
        Map<String, Found> found = new HashMap<>();
        database.each(type.name() + "/all", row -> {
            found.put(String.valueOf(row.getString(1)), found(type, rows.image(type, row), rows.stamp(type, row)));
        });
        List<Amendment> ofOne = new ArrayList<>();
        database.each(
                "amendment/of_table",
                row -> {
                    Amendment next = readable(row);
                    if (next == null) {
                        return;
                    }
                    if (!ofOne.isEmpty() && !ofOne.get(0).record().equals(next.record())) {
                        compare(type, ofOne, found, facts, names);
                        ofOne.clear();
                    }
                    ofOne.add(next);
                },
                type.name());
        if (!ofOne.isEmpty()) {
            compare(type, ofOne, found, facts, names);
        }
        for (String neverWritten : found.keySet()) {
            notAsWritten(type, neverWritten, facts, names);
        }
    }

    private Found found(RecordType<?> type, Map<String, @Nullable Object> image, Rows.Stamp stamp) {
        return new Found(
                canonical.hash(canonical.text(image)), stamp, Rows.isSealed(type, image, stamp.checksum(), canonical));
    }

    private void compare(
            RecordType<?> type, List<Amendment> ofOne, Map<String, Found> found, Facts facts, Names names) {
        String id = ofOne.get(0).record().toString();
        Found row = found.remove(id);
        if (row == null || !isAsWritten(type, row, ofOne)) {
            notAsWritten(type, id, facts, names);
        }
    }

    private boolean isAsWritten(RecordType<?> type, Found row, List<Amendment> inOrder) {
        Map<String, @Nullable Object> fold = new TreeMap<>(Fold.record(inOrder));
        type.addedLater().forEach(column -> fold.putIfAbsent(column, null));
        Amendment first = inOrder.get(0);
        Amendment last = inOrder.get(inOrder.size() - 1);
        Rows.Stamp stamp = row.stamp();
        return row.imageHash().equals(canonical.hash(canonical.text(fold)))
                && row.sealed()
                && stamp.madeAtMillis() == first.clock().millis()
                && stamp.madeBy().equals(first.who())
                && stamp.amendedBy().equals(last.id().toString())
                && stamp.rev() == inOrder.size();
    }

    /** Amendments of tables that this program has not. */
    private void strangers(Database database) throws SQLException {
        Set<String> ours = RecordTypes.all().stream().map(RecordType::name).collect(Collectors.toSet());
        database.each("amendment/tables", row -> {
            if (!ours.contains(row.getString(1))) {
                add(Problem.of(ProblemKind.LOGBOOK_DAMAGED, path, "amendments of " + row.getString(1)));
            }
        });
    }

    /** Each device's amendments count up from 1, each with the hash of the one before. */
    private void chains(Database database) throws SQLException {
        Map<String, Amendments.Link> last = new HashMap<>();
        database.each("amendment/by_device", row -> {
            Amendments.Link next;
            try {
                next = amendments.link(row);
            } catch (IllegalArgumentException e) {
                LOG.debug("an amendment cannot be read", e);
                add(Problem.of(ProblemKind.CHAIN_BROKEN, row.getLong(3), String.valueOf(row.getString(2))));
                return;
            }
            Amendments.Link before = last.put(next.device(), next);
            boolean follows = next.number() == (before == null ? 1 : before.number() + 1)
                    && next.previousHash().equals(before == null ? "" : before.hash());
            if (!follows || !next.sealed()) {
                add(Problem.of(ProblemKind.CHAIN_BROKEN, next.number(), next.device()));
            }
        });
    }

    /** An amendment, or null when it is none any more; the chain is then broken there. */
    private @Nullable Amendment readable(ResultSet row) throws SQLException {
        try {
            return amendments.read(row);
        } catch (IllegalArgumentException e) {
            LOG.debug("an amendment cannot be read", e);
            return null;
        }
    }

    private <F extends Fact> void notAsWritten(RecordType<F> type, String id, Facts facts, Names names) {
        String name;
        try {
            name = Entries.find(facts, type.kind(), UUID.fromString(id))
                    .map(names::of)
                    .orElse(id);
        } catch (IllegalArgumentException e) {
            name = id + " (" + e.getMessage() + ")";
        }
        add(Problem.of(ProblemKind.RECORD_NOT_AS_WRITTEN, type.name(), name));
    }

    private void add(Problem problem) {
        if (problems.size() < MOST) {
            problems.add(problem);
        }
    }
}
