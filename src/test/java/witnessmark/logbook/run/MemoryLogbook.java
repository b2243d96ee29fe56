package witnessmark.logbook.run;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.history.HybridClock;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Photos;
import witnessmark.logbook.port.SecondPlace;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** A logbook that lasts as long as the test. It can be told to refuse, and remembers its drafts. */
public final class MemoryLogbook implements Logbook {
    private final List<Amendment> amendments = new ArrayList<>();
    private final KeptDrafts drafts = new KeptDrafts();
    private final Map<String, Kept> kept = new HashMap<>();
    private volatile Facts facts;
    private @Nullable Problem refusal;

    public MemoryLogbook(Facts facts) {
        this.facts = facts;
    }

    /** From now on every write ends with this problem; with null they work again. */
    public void refuse(@Nullable Problem problem) {
        refusal = problem;
    }

    @Override
    public Facts facts() {
        return facts;
    }

    @Override
    public Outcome<Written> write(Change change) {
        Problem refused = refusal;
        if (refused != null) {
            return Outcome.didNot(refused);
        }
        UUID id = UUID.randomUUID();
        List<Amendment> written = new ArrayList<>();
        for (Entry<?> entry : change.next()) {
            long rev = before(entry).map(Entry::rev).orElse(0L);
            if (entry.rev() != rev + 1) {
                return Outcome.didNot(Problem.of(
                        ProblemKind.CHANGED_MEANWHILE, "run", entry.id().text()));
            }
            written.add(amendment(change, id, entry));
        }
        amendments.addAll(written);
        facts = facts.with(change.next());
        change.kept().forEach(each -> kept.put(each.sha256(), each));
        return Outcome.worked(new Written(id, written, facts));
    }

    private Amendment amendment(Change change, UUID id, Entry<?> entry) {
        RecordType<?> type = RecordTypes.of(entry.fact().getClass());
        Map<String, @Nullable Object> after = new TreeMap<>(EntryImage.of(entry));
        Map<String, @Nullable Object> before = new TreeMap<>();
        before(entry).ifPresent(old -> before.putAll(EntryImage.of(old)));
        return new Amendment(
                UUID.randomUUID(),
                "test",
                amendments.size() + 1L,
                new HybridClock.Time(amendments.size() + 1L, 0),
                change.who(),
                id,
                type.name(),
                entry.id().value(),
                before,
                after,
                change.why(),
                1,
                "",
                "");
    }

    private Optional<? extends Entry<?>> before(Entry<?> entry) {
        return found(entry);
    }

    @SuppressWarnings("unchecked") // a fact lies in the table of its own class
    private <F extends Fact> Optional<Entry<F>> found(Entry<F> entry) {
        return facts.of((Class<F>) entry.fact().getClass())
                .find(new Id<F>(entry.id().value()));
    }

    @Override
    public List<Amendment> history(String table, UUID record) {
        return amendments.stream()
                .filter(a -> a.table().equals(table) && a.record().equals(record))
                .toList();
    }

    @Override
    public List<Amendment> amendments(UUID change) {
        return amendments.stream().filter(a -> a.change().equals(change)).toList();
    }

    @Override
    public List<Amendment> history() {
        return List.copyOf(amendments);
    }

    @Override
    public Outcome<List<String>> keptNames() {
        return Outcome.worked(List.copyOf(kept.keySet()));
    }

    @Override
    public Outcome<Optional<Kept>> kept(String sha256) {
        return Outcome.worked(Optional.ofNullable(kept.get(sha256)));
    }

    @Override
    public Optional<Problem> readOnly() {
        return Optional.empty();
    }

    @Override
    public List<Problem> verify() {
        return List.of();
    }

    @Override
    public boolean hasBackup() {
        return false;
    }

    @Override
    public Outcome<Path> backUp() {
        return Outcome.worked(path());
    }

    @Override
    public Outcome<Path> copyTo(Path file) {
        return Outcome.didNot(Problem.of(ProblemKind.OPEN_READ_ONLY));
    }

    @Override
    public Photos photos() {
        throw new UnsupportedOperationException("nothing here is on a disk");
    }

    @Override
    public SecondPlace secondPlace() {
        throw new UnsupportedOperationException("nothing here is on a disk");
    }

    @Override
    public boolean isMovedAway() {
        return false;
    }

    @Override
    public boolean wasLeftOpen() {
        return false;
    }

    @Override
    public void acceptMissing() {}

    @Override
    public String identity() {
        return "memory";
    }

    @Override
    public KeptDrafts drafts() {
        return drafts;
    }

    @Override
    public Path path() {
        return Path.of("memory.witness");
    }

    @Override
    public void close() {
        drafts.all.clear();
    }

    /** Drafts in memory. */
    public static final class KeptDrafts implements Drafts {
        private final Map<String, Draft> all = new HashMap<>();
        private Kept where = Kept.IN_LOGBOOK;

        /** Where drafts are said to go from now on. */
        public void goTo(Kept kept) {
            where = kept;
        }

        @Override
        public synchronized Kept keep(String form, String record, Draft draft) {
            if (where != Kept.NOT_KEPT) {
                all.put(form + "/" + record, draft);
            }
            return where;
        }

        @Override
        public synchronized Optional<Draft> find(String form, String record) {
            return Optional.ofNullable(all.get(form + "/" + record));
        }

        @Override
        public synchronized void discard(String form, String record) {
            all.remove(form + "/" + record);
        }

        @Override
        public synchronized List<Begun> begun() {
            return all.entrySet().stream()
                    .map(each -> new Begun(
                            each.getKey().split("/", 2)[0],
                            each.getKey().split("/", 2)[1],
                            each.getValue().keptAt()))
                    .sorted(Comparator.comparing(Begun::keptAt).reversed())
                    .toList();
        }

        /** When the draft of a form was kept; empty when there is none. */
        public synchronized Optional<Instant> keptAt(String form) {
            return find(form, "new").map(Draft::keptAt);
        }
    }
}
