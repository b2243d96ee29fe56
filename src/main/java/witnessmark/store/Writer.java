package witnessmark.store;

import java.io.IOException;
import java.sql.SQLException;
import java.sql.Savepoint;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Standing;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.history.HybridClock;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Kept;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Writes one change within a transaction: for each entry its row, and the amendment with what changed, chained to the
 * device's last. Entries may come in an order the guards do not like (a part fitted before the one it replaces is taken
 * off): what is refused is tried again after the rest, and when that does not help, the rows in the way are set in
 * conflict for a moment, within the transaction, so that two parts can change places.
 *
 * <p>First everything is tried in the order given, each amendment before its row, which spares SQLite from looking in
 * every table for the row that waits for it. Only when something is refused it is begun again the patient way.
 */
final class Writer {
    /** The change was refused: nothing of it may stay. */
    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient List<Problem> problems;

        Refused(List<Problem> problems) {
            super("refused: " + problems);
            this.problems = List.copyOf(problems);
        }

        List<Problem> problems() {
            return problems;
        }
    }

    /** What a change came to. */
    record Done(List<Amendment> amendments, List<Entry<?>> entries) {}

    private record Refusal(Entry<?> entry, SQLException because) {}

    /** Where the device's chain ends. */
    private static final class ChainEnd {
        private long number;
        private String hash = "";
    }

    private final Rows rows;
    private final Amendments amendments;
    private final Canonical canonical;
    private final HybridClock clock;
    private final Supplier<UUID> ids;
    private final String device;
    private final int schema;

    Writer(
            Rows rows,
            Amendments amendments,
            Canonical canonical,
            HybridClock clock,
            Supplier<UUID> ids,
            String device,
            int schema) {
        this.rows = rows;
        this.amendments = amendments;
        this.canonical = canonical;
        this.clock = clock;
        this.ids = ids;
        this.device = device;
        this.schema = schema;
    }

    /**
     * Writes what the change asks for; the caller commits or rolls back.
     *
     * @param facts as they stand
     * @throws Refused if any entry is not as it has to be
     */
    Done write(Database database, Facts facts, UUID id, Change change) throws SQLException {
        for (Kept kept : change.kept()) {
            keep(database, kept);
        }
        Savepoint before = database.savepoint();
        Work quick = new Work(database, facts, id, change, chainEnd(database), true);
        if (quick.inOrder()) {
            return new Done(quick.made, List.copyOf(quick.written.values()));
        }
        database.rollBackTo(before);
        Work patient = new Work(database, facts, id, change, chainEnd(database), false);
        patient.inAnyOrder();
        return new Done(patient.made, List.copyOf(patient.written.values()));
    }

    private static void keep(Database database, Kept kept) throws SQLException {
        try {
            KeptPieces.put(database, kept);
        } catch (IOException | KeptPieces.Changed e) {
            throw new Refused(List.of(Problem.of(
                    ProblemKind.CANNOT_READ_FILE,
                    kept.sha256(),
                    e instanceof IOException ? String.valueOf(e.getMessage()) : "it was changed while it was read")));
        }
    }

    private ChainEnd chainEnd(Database database) throws SQLException {
        ChainEnd end = new ChainEnd();
        database.each(
                "amendment/last_of_device",
                row -> {
                    end.number = row.getLong(1);
                    end.hash = row.getString(2);
                },
                device);
        return end;
    }

    /** One change on its way. */
    private final class Work {
        private final Database database;
        private final Facts facts;
        private final UUID id;
        private final Change change;
        private final ChainEnd end;
        private final boolean amendmentFirst;
        private final Map<UUID, Entry<?>> written = new LinkedHashMap<>();
        private final List<Amendment> made = new ArrayList<>();

        Work(Database database, Facts facts, UUID id, Change change, ChainEnd end, boolean amendmentFirst) {
            this.database = database;
            this.facts = facts;
            this.id = id;
            this.change = change;
            this.end = end;
            this.amendmentFirst = amendmentFirst;
        }

        /** @return whether nothing was refused */
        boolean inOrder() throws SQLException {
            List<Problem> stale = new ArrayList<>();
            try {
                for (Entry<?> entry : change.next()) {
                    put(entry, stale);
                }
            } catch (SQLException e) {
                if (Faults.isRefusal(e)) {
                    return false;
                }
                throw e;
            }
            if (!stale.isEmpty()) {
                throw new Refused(stale);
            }
            return true;
        }

        void inAnyOrder() throws SQLException {
            List<Entry<?>> left = List.copyOf(change.next());
            boolean parked = false;
            while (!left.isEmpty()) {
                List<Refusal> refused = round(left);
                boolean stuck = refused.size() == left.size();
                if (stuck && parked) {
                    throw refusal(refused);
                }
                if (stuck) {
                    park(refused);
                    parked = true;
                }
                left = refused.stream().<Entry<?>>map(Refusal::entry).toList();
            }
        }

        /** Writes what can be written and gives back the rest, in the same order. */
        private List<Refusal> round(List<Entry<?>> left) throws SQLException {
            List<Refusal> refused = new ArrayList<>();
            Set<UUID> waiting = new HashSet<>();
            List<Problem> stale = new ArrayList<>();
            for (Entry<?> entry : left) {
                UUID record = entry.id().value();
                try {
                    if (waiting.contains(record)) {
                        throw new SQLException("an earlier writing of the same record waits");
                    }
                    put(entry, stale);
                } catch (SQLException e) {
                    if (!waiting.contains(record) && !Faults.isRefusal(e)) {
                        throw e;
                    }
                    waiting.add(record);
                    refused.add(new Refusal(entry, e));
                }
            }
            if (!stale.isEmpty()) {
                throw new Refused(stale);
            }
            return refused;
        }

        private <F extends Fact> void put(Entry<F> asked, List<Problem> stale) throws SQLException {
            Entry<F> entry = Storable.of(asked);
            Entry<?> current = current(entry);
            Map<String, @Nullable Object> after = EntryImage.of(entry);
            Map<String, @Nullable Object> before = current == null ? Map.of() : EntryImage.of(current);
            if (after.equals(before)) {
                return;
            }
            long revBefore = current == null ? 0 : current.rev();
            if (entry.rev() != revBefore + 1) {
                stale.add(changedMeanwhile(entry));
                return;
            }
            Amendments.Line line = amendments.sealed(amendment(entry, before, after));
            Amendment amendment = line.amendment();
            String checksum = canonical.hash(canonical.text(after));
            if (amendmentFirst) {
                amendments.insert(database, line);
            }
            if (current == null) {
                rows.insert(database, entry, amendment, checksum);
            } else if (!rows.update(database, entry, amendment.id(), checksum, revBefore)) {
                stale.add(changedMeanwhile(entry));
                return;
            }
            if (!amendmentFirst) {
                amendments.insert(database, line);
            }
            end.number = amendment.number();
            end.hash = amendment.hash();
            written.put(entry.id().value(), entry);
            made.add(amendment);
        }

        private Amendment amendment(
                Entry<?> entry, Map<String, @Nullable Object> before, Map<String, @Nullable Object> after) {
            Map<String, @Nullable Object> was = new TreeMap<>();
            Map<String, @Nullable Object> became = new TreeMap<>();
            after.forEach((column, value) -> {
                if (before.isEmpty()) {
                    became.put(column, value);
                } else if (!Objects.equals(before.get(column), value)) {
                    was.put(column, before.get(column));
                    became.put(column, value);
                }
            });
            String table = RecordTypes.of(entry.fact().getClass()).name();
            return new Amendment(
                    ids.get(),
                    device,
                    end.number + 1,
                    clock.next(),
                    change.who(),
                    id,
                    table,
                    entry.id().value(),
                    was,
                    became,
                    change.why(),
                    schema,
                    end.hash,
                    "");
        }

        /** Gets the rows that wait out of each other's way. They are written again before the transaction ends. */
        private void park(List<Refusal> refused) throws SQLException {
            Set<UUID> seen = new HashSet<>();
            for (Refusal refusal : refused) {
                Entry<?> current = current(refusal.entry());
                if (current != null && seen.add(current.id().value())) {
                    rows.update(database, inConflict(current), ids.get(), "", current.rev());
                }
            }
        }

        private <F extends Fact> Entry<F> inConflict(Entry<F> entry) {
            return new Entry<>(entry.id(), entry.fact(), Standing.IN_CONFLICT, entry.struckBecause(), entry.rev());
        }

        private @Nullable Entry<?> current(Entry<?> entry) {
            Entry<?> own = written.get(entry.id().value());
            return own != null ? own : Entries.find(facts, entry).orElse(null);
        }

        private Refused refusal(List<Refusal> refused) {
            Facts now = facts.with(written.values());
            Refusals refusals = new Refusals(now.with(firstOfEach(refused)));
            List<Problem> problems = new ArrayList<>();
            Set<UUID> told = new HashSet<>();
            for (Refusal refusal : refused) {
                if (told.add(refusal.entry().id().value())) {
                    problems.add(refusals.of(refusal.entry(), refusal.because()));
                }
            }
            return new Refused(problems);
        }

        /** So that a refused entry can be named although it is not in the logbook. */
        private List<Entry<?>> firstOfEach(List<Refusal> refused) {
            Map<UUID, Entry<?>> first = new LinkedHashMap<>();
            refused.forEach(r -> first.putIfAbsent(r.entry().id().value(), r.entry()));
            return List.copyOf(first.values());
        }

        private Problem changedMeanwhile(Entry<?> entry) {
            return Problem.of(
                    ProblemKind.CHANGED_MEANWHILE,
                    RecordTypes.of(entry.fact().getClass()).name(),
                    new Names(facts.with(List.of(entry))).of(entry));
        }
    }
}
