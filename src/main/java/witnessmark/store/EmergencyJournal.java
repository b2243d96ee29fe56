package witnessmark.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Change;

/**
 * The last place for a change that a logbook could not take: a text file in the data folder, one JSON object a line,
 * each brought to the disk. People are told of it; nothing there is written into a logbook unasked.
 */
public final class EmergencyJournal {
    private static final Logger LOG = LoggerFactory.getLogger(EmergencyJournal.class);
    private static final String PUT_ASIDE = "put_aside";
    /** Whoever still has it before him saves it elsewhere within a working day. */
    private static final long SAVED_LATER_MILLIS = 12 * 3_600_000L;

    /**
     * An entry that was to be written.
     *
     * @param logbook path of the logbook that could not take it
     * @param logbookId which logbook that is, wherever its file or a copy of it lies since
     * @param who who wrote
     * @param why what was being done
     * @param table the record's table
     * @param record the record's id
     * @param rev the revision it was to have
     * @param image its column values
     * @param atMillis when, milliseconds since 1970
     */
    public record Kept(
            String logbook,
            String logbookId,
            String who,
            String why,
            String table,
            UUID record,
            long rev,
            Map<String, @Nullable Object> image,
            long atMillis) {}

    private final Path file;
    private final LongSupplier clock;
    private final Canonical canonical;

    EmergencyJournal(Path file, LongSupplier clock, Canonical canonical) {
        this.file = file;
        this.clock = clock;
        this.canonical = canonical;
    }

    /** The journal of a data folder. */
    public static EmergencyJournal in(Path dataFolder, LongSupplier clock) {
        return new EmergencyJournal(dataFolder.resolve("emergency-journal.jsonl"), clock, new Canonical());
    }

    public Path file() {
        return file;
    }

    /** Keeps a change. A failure is logged: the form still has what was typed. */
    void keep(Path logbook, String logbookId, Change change) {
        StringBuilder lines = new StringBuilder();
        for (Entry<?> entry : change.next()) {
            Map<String, @Nullable Object> line = new TreeMap<>();
            line.put("logbook", logbook.toString());
            line.put("logbook_id", logbookId);
            line.put("who", change.who());
            line.put("why", change.why());
            line.put("table", RecordTypes.of(entry.fact().getClass()).name());
            line.put("record", entry.id().text());
            line.put("rev", entry.rev());
            line.put("image", canonical.text(EntryImage.of(entry)));
            line.put("at_ms", clock.getAsLong());
            lines.append(canonical.text(line)).append('\n');
        }
        try {
            SafeFiles.append(file, lines.toString());
        } catch (IOException e) {
            LOG.error("the emergency journal cannot be written: {}", file, e);
        }
    }

    /**
     * What was kept for a logbook and is not in it, neither as it was to stand nor written later, unless somebody put it
     * aside. An entry that was tried several times is told once.
     */
    List<Kept> waiting(Path logbook, String logbookId, Facts facts) {
        try {
            Map<String, Kept> waiting = new LinkedHashMap<>();
            for (Kept kept : read()) {
                RecordType<?> type = RecordTypes.named(kept.table()).orElse(null);
                if (type != null && isMeant(kept, logbook, logbookId) && !isIn(facts, type, kept)) {
                    waiting.put(mark(kept.table(), kept.image()), kept);
                }
            }
            for (Map<String, @Nullable Object> line : lines()) {
                waiting.remove(text(line, PUT_ASIDE));
            }
            return List.copyOf(waiting.values());
        } catch (IOException e) {
            LOG.error("the emergency journal cannot be read: {}", file, e);
            return List.of();
        }
    }

    /**
     * Notes what is in a logbook by now, so that it is not told to be missing when somebody corrects it later. Without anything
     * that was kept and is not settled this only looks whether there is a journal.
     */
    void settle(Path logbook, String logbookId, Facts facts) {
        if (!Files.exists(file)) {
            return;
        }
        Set<String> marks = new LinkedHashSet<>();
        try {
            for (Kept kept : read()) {
                RecordType<?> type = RecordTypes.named(kept.table()).orElse(null);
                if (type != null && isMeant(kept, logbook, logbookId) && isIn(facts, type, kept)) {
                    marks.add(mark(kept.table(), kept.image()));
                }
            }
            for (Map<String, @Nullable Object> line : lines()) {
                marks.remove(text(line, PUT_ASIDE));
            }
            note(marks);
        } catch (IOException e) {
            LOG.error("the emergency journal cannot be read: {}", file, e);
        }
    }

    private static boolean isMeant(Kept kept, Path logbook, String logbookId) {
        return kept.logbook().equals(logbook.toString()) || kept.logbookId().equals(logbookId);
    }

    /** Does not tell of entries any more; what was kept of them stays. */
    boolean putAside(List<Entry<?>> entries) {
        Set<String> marks = new LinkedHashSet<>();
        entries.forEach(
                entry -> marks.add(mark(RecordTypes.of(entry.fact().getClass()).name(), EntryImage.of(entry))));
        return note(marks);
    }

    private boolean note(Set<String> marks) {
        StringBuilder lines = new StringBuilder();
        for (String mark : marks) {
            Map<String, @Nullable Object> line = new TreeMap<>();
            line.put(PUT_ASIDE, mark);
            line.put("at_ms", clock.getAsLong());
            lines.append(canonical.text(line)).append('\n');
        }
        try {
            if (!marks.isEmpty()) {
                SafeFiles.append(file, lines.toString());
            }
            return true;
        } catch (IOException e) {
            LOG.error("the emergency journal cannot be written: {}", file, e);
            return false;
        }
    }

    private String mark(String table, Map<String, @Nullable Object> image) {
        return canonical.hash(table + canonical.text(image));
    }

    /**
     * By what it says, as a form gives an entry another id each time it is saved. A time that was left to the clock has moved
     * on when the same is saved a while later.
     */
    private static <F extends Fact> boolean isIn(Facts facts, RecordType<F> type, Kept kept) {
        return facts.of(type.kind()).all().stream()
                .anyMatch(entry -> entry.id().value().equals(kept.record()) && entry.rev() >= kept.rev()
                        || isSavedSince(EntryImage.of(entry), kept.image()));
    }

    private static boolean isSavedSince(Map<String, @Nullable Object> written, Map<String, @Nullable Object> kept) {
        return written.keySet().equals(kept.keySet())
                && kept.entrySet().stream().allMatch(column -> {
                    Object now = written.get(column.getKey());
                    return Objects.equals(now, column.getValue())
                            || column.getKey().endsWith("_utc_ms")
                                    && now instanceof Number later
                                    && column.getValue() instanceof Number before
                                    && later.longValue() >= before.longValue()
                                    && later.longValue() - before.longValue() <= SAVED_LATER_MILLIS;
                });
    }

    /**
     * What was kept, oldest first. A line cut short, as by a full disk, is left out.
     *
     * @throws IOException if the file is there and cannot be read
     */
    public List<Kept> read() throws IOException {
        List<Kept> kept = new ArrayList<>();
        for (Map<String, @Nullable Object> line : lines()) {
            try {
                if (!line.containsKey(PUT_ASIDE)) {
                    kept.add(kept(line));
                }
            } catch (IllegalArgumentException e) {
                LOG.warn("a line of the emergency journal is no entry: {}", file, e);
            }
        }
        return kept;
    }

    private List<Map<String, @Nullable Object>> lines() throws IOException {
        List<Map<String, @Nullable Object>> lines = new ArrayList<>();
        if (!Files.exists(file)) {
            return lines;
        }
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            if (line.endsWith("}")) {
                try {
                    lines.add(canonical.values(line));
                } catch (IllegalArgumentException e) {
                    LOG.warn("a line of the emergency journal cannot be read: {}", file, e);
                }
            }
        }
        return lines;
    }

    private Kept kept(Map<String, @Nullable Object> line) {
        return new Kept(
                text(line, "logbook"),
                text(line, "logbook_id"),
                text(line, "who"),
                text(line, "why"),
                text(line, "table"),
                UUID.fromString(text(line, "record")),
                Long.parseLong(text(line, "rev")),
                canonical.values(text(line, "image")),
                Long.parseLong(text(line, "at_ms")));
    }

    private static String text(Map<String, @Nullable Object> line, String key) {
        return String.valueOf(line.get(key));
    }
}
