package witnessmark.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Standing;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.history.Fold;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Kept;

/**
 * What can be read of a logbook that is damaged or altered. A record lies there twice: as a row with a checksum, and in
 * the changes of its history, each with a hash. Where either holds it is as it was written; where only a row without its
 * checksum is left, or a history with a gap, it is doubtful and struck out.
 *
 * @param entries each to be written for the first time, those referred to before those that refer
 * @param doubtful which of them may not be as they were written
 * @param rescued which of them stand in the history alone, as their row cannot be read or is not what it was
 * @param lost records known of that make no entry at all
 * @param unreadable how many changes are missing in the history
 * @param kept what is kept beside them and is what it was, by its SHA-256
 */
record Wreck(
        List<Entry<?>> entries,
        Set<UUID> doubtful,
        Set<UUID> rescued,
        Map<UUID, Lost> lost,
        long unreadable,
        Map<String, Kept> kept) {
    /**
     * A record that makes no entry.
     *
     * @param table the record's table
     * @param image what can be read of it; empty for nothing
     */
    record Lost(String table, Map<String, @Nullable Object> image) {}

    private static final Logger LOG = LoggerFactory.getLogger(Wreck.class);

    /** A file may be made to be endless. */
    private static final Duration LONGEST = Duration.ofMinutes(10);

    /** How many rows in a stretch may be unreadable before the rest is given up. */
    private static final int LONGEST_GAP = 100_000;

    /** Bytes of samples that are held at once. */
    private static final long MOST_KEPT = 256L << 20;

    /** One record as found, and how often it had been written by then. */
    private record Found(Map<String, @Nullable Object> image, long rev, boolean proven) {}

    static Wreck read(Database database, Canonical canonical, String doubt) throws SQLException {
        database.within(LONGEST);
        return new Reading(database, canonical, doubt, false).all();
    }

    /** The same of {@link Pieces}: nobody knows what else there was. */
    static Wreck readPieces(Database gathered, Canonical canonical, String doubt) {
        return new Reading(gathered, canonical, doubt, true).all();
    }

    /** Under way. */
    private static final class Reading {
        private final Database database;
        private final Canonical canonical;
        private final Amendments amendments;
        private final String doubt;
        private final Rows rows = new Rows();
        private final Map<String, Map<UUID, List<Amendment>>> histories = new HashMap<>();
        private final Map<String, Long> newest = new HashMap<>();
        private final List<Entry<?>> entries = new ArrayList<>();
        private final Set<UUID> doubtful = new HashSet<>();
        private final Set<UUID> rescued = new HashSet<>();
        private final Map<UUID, Lost> lost = new LinkedHashMap<>();
        private long read;
        private boolean torn;

        Reading(Database database, Canonical canonical, String doubt, boolean torn) {
            this.torn = torn;
            this.database = database;
            this.canonical = canonical;
            this.amendments = new Amendments(canonical);
            this.doubt = doubt;
        }

        Wreck all() {
            histories();
            boolean gaps = missing() > 0;
            for (RecordType<?> type : RecordTypes.all()) {
                table(type, gaps);
            }
            return new Wreck(List.copyOf(entries), Set.copyOf(doubtful), Set.copyOf(rescued), lost, missing(), kept());
        }

        private Map<String, Kept> kept() {
            Map<String, Kept> whole = new HashMap<>();
            long size = 0;
            for (Entry<?> entry : entries) {
                String name = entry.fact().kept();
                try {
                    Optional<Kept> found =
                            name == null || size > MOST_KEPT ? Optional.empty() : KeptPieces.of(database, name);
                    found.ifPresent(each -> whole.put(each.sha256(), each));
                    size += found.map(Kept::size).orElse(0);
                } catch (SQLException | KeptPieces.Changed e) {
                    LOG.warn("samples of {} are lost", entry.fact().knownAs(), e);
                }
            }
            return whole;
        }

        /** How many changes are known to be missing; of those behind what cannot be read nobody knows the number. */
        private long missing() {
            long written = newest.values().stream().mapToLong(Long::longValue).sum();
            return Math.max(torn ? 1 : 0, written - read);
        }

        /** Row by row; over what cannot be read it is tried from each place behind it. */
        private void histories() {
            long[] at = {0};
            int gap = 0;
            boolean[] more = {true};
            while (more[0] && gap < LONGEST_GAP) {
                more[0] = false;
                try {
                    database.each(
                            "amendment/next",
                            row -> {
                                more[0] = true;
                                at[0] = row.getLong(16);
                                take(row);
                            },
                            at[0]);
                    gap = 0;
                } catch (SQLException e) {
                    if (gap == 0) {
                        LOG.warn("changes cannot be read from {} on", at[0], e);
                    }
                    torn = true;
                    more[0] = Faults.isDamage(e);
                    at[0]++;
                    gap++;
                }
            }
        }

        private void take(ResultSet row) throws SQLException {
            try {
                Amendments.Line line = amendments.line(row);
                if (amendments.isSealed(line)) {
                    Amendment amendment = line.amendment();
                    histories
                            .computeIfAbsent(amendment.table(), any -> new HashMap<>())
                            .computeIfAbsent(amendment.record(), any -> new ArrayList<>())
                            .add(amendment);
                    newest.merge(amendment.device(), amendment.number(), Math::max);
                    read++;
                }
            } catch (IllegalArgumentException e) {
                LOG.debug("a change cannot be read", e);
            }
        }

        private <F extends Fact> void table(RecordType<F> type, boolean gaps) {
            Map<UUID, Found> found = rowsOf(type);
            Map<UUID, List<Amendment>> written = histories.getOrDefault(type.name(), Map.of());
            Set<UUID> all = new LinkedHashSet<>(found.keySet());
            all.addAll(written.keySet());
            for (UUID record : all) {
                Found row = found.get(record);
                List<Amendment> history = written.getOrDefault(record, List.of());
                Found best = better(row, history, gaps);
                Entry<F> entry = best == null ? null : entry(type, record, best);
                if (entry == null) {
                    lost.put(record, new Lost(type.name(), best == null ? Map.of() : best.image()));
                    continue;
                }
                entries.add(entry);
                if (row == null || !row.proven()) {
                    rescued.add(record);
                }
            }
        }

        /** As far as the table can be read; the rest comes out of the history. */
        private Map<UUID, Found> rowsOf(RecordType<?> type) {
            Map<UUID, Found> found = new LinkedHashMap<>();
            try {
                database.each(type.name() + "/all", row -> {
                    try {
                        Map<String, @Nullable Object> image = rows.image(type, row);
                        Rows.Stamp stamp = rows.stamp(type, row);
                        boolean proven = Rows.isSealed(type, image, stamp.checksum(), canonical);
                        Found one = new Found(image, stamp.rev(), proven);
                        found.put(UUID.fromString(row.getString(1)), one);
                    } catch (IllegalArgumentException | NullPointerException e) {
                        LOG.debug("a row of {} cannot be read", type, e);
                    }
                });
            } catch (SQLException e) {
                LOG.warn("the rows of {} cannot all be read", type, e);
            }
            return found;
        }

        /**
         * The row where its checksum holds, unless the history goes on from it; else what the history says, when it
         * begins at the beginning; else the row, doubtful. A history alone proves nothing where changes are missing: a
         * later one may be among them.
         */
        private static @Nullable Found better(@Nullable Found row, List<Amendment> history, boolean gaps) {
            boolean whole = !history.isEmpty()
                    && history.stream().anyMatch(amendment -> amendment.before().isEmpty())
                    && unbroken(history);
            boolean goesOn = row != null && history.size() > row.rev();
            if (row != null && row.proven() && !(whole && goesOn)) {
                return row;
            }
            if (!whole) {
                return row;
            }
            Map<String, @Nullable Object> fold = Fold.record(history);
            boolean same = row != null && row.image().equals(fold);
            return new Found(fold, history.size(), same || !gaps);
        }

        /** Whether each change found what the one before had left. */
        private static boolean unbroken(List<Amendment> history) {
            List<Amendment> upTo = new ArrayList<>();
            for (Amendment next : history.stream().sorted(Amendment.ORDER).toList()) {
                Map<String, @Nullable Object> stands = upTo.isEmpty() ? Map.of() : Fold.record(upTo);
                for (Map.Entry<String, @Nullable Object> was : next.before().entrySet()) {
                    if (!java.util.Objects.equals(stands.get(was.getKey()), was.getValue())) {
                        return false;
                    }
                }
                upTo.add(next);
            }
            return true;
        }

        private <F extends Fact> @Nullable Entry<F> entry(RecordType<F> type, UUID record, Found best) {
            try {
                Entry<F> entry = EntryImage.entry(type, record, best.image(), 1);
                if (best.proven()) {
                    return entry;
                }
                doubtful.add(record);
                return new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, doubt, 1);
            } catch (IllegalArgumentException | NullPointerException | ClassCastException e) {
                LOG.info("a record of {} makes no entry", type, e);
                return null;
            }
        }
    }
}
