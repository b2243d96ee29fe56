package witnessmark.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.KeptAside;
import witnessmark.logbook.port.Logbook;

/** The emergency journal as it is told and emptied. */
final class JournalAside implements KeptAside {
    private static final Logger LOG = LoggerFactory.getLogger(JournalAside.class);

    private final EmergencyJournal journal;

    JournalAside(EmergencyJournal journal) {
        this.journal = journal;
    }

    @Override
    public List<Aside> waiting(Logbook logbook) {
        List<EmergencyJournal.Kept> waiting = journal.waiting(logbook.path(), logbook.identity(), logbook.facts());
        List<Entry<?>> entries = waiting.stream()
                .flatMap(kept -> entry(kept).stream())
                .<Entry<?>>map(entry -> entry)
                .toList();
        Facts named = logbook.facts().with(entries); // a new run of a new engine is called by that engine
        return waiting.stream()
                .flatMap(kept -> entry(kept).map(entry -> aside(kept, entry, named)).stream())
                .toList();
    }

    @Override
    public boolean putAside(List<Aside> entries) {
        return journal.putAside(entries.stream().map(Aside::entry).toList());
    }

    @Override
    public Path file() {
        return journal.file();
    }

    private static Aside aside(EmergencyJournal.Kept kept, Entry<?> entry, Facts named) {
        return new Aside(
                entry, new Names(named).of(entry), kept.who(), kept.why(), Instant.ofEpochMilli(kept.atMillis()));
    }

    private static Optional<Entry<? extends Fact>> entry(EmergencyJournal.Kept kept) {
        return RecordTypes.named(kept.table()).flatMap(type -> entry(type, kept));
    }

    private static <F extends Fact> Optional<Entry<? extends Fact>> entry(
            RecordType<F> type, EmergencyJournal.Kept kept) {
        try {
            return Optional.of(EntryImage.entry(type, kept.record(), kept.image(), kept.rev()));
        } catch (IllegalArgumentException e) {
            LOG.warn("what was kept in the emergency journal makes no entry of {}", type.name(), e);
            return Optional.empty();
        }
    }
}
