package witnessmark.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.logbook.port.Drafts;
import witnessmark.store.DraftFiles.Place;

/** Drafts in the logbook's own table, or, when it cannot take them, in files. The newer of the two counts. */
final class KeptDrafts implements Drafts {
    private static final Logger LOG = LoggerFactory.getLogger(KeptDrafts.class);

    /** Lets work be done on the open logbook, alone; throws when it can only be read or is lost. */
    interface Access {
        <T> T with(Use<T> use, boolean toWrite) throws SQLException;
    }

    /** Work on an open logbook. */
    interface Use<T> {
        T of(Database database) throws SQLException;
    }

    private final Access access;
    private final DraftFiles files;
    private final boolean reader;
    /** Forms on which that of a window stands that could only read: it goes on being kept there. */
    private final Set<List<String>> ofReader = ConcurrentHashMap.newKeySet();

    /** @param reader whether this logbook can only be read */
    KeptDrafts(Access access, DraftFiles files, boolean reader) {
        this.access = access;
        this.files = files;
        this.reader = reader;
    }

    @Override
    public Kept keep(String form, String record, Draft draft) {
        if (!reader && ofReader.contains(List.of(form, record))) {
            return files.keep(Place.READER, form, record, draft) ? Kept.IN_LOGBOOK : Kept.NOT_KEPT;
        }
        try {
            String fields = DraftFiles.fields(draft, files.canonical());
            access.with(
                    database -> database.run(
                            "draft/keep", form, record, fields, draft.keptAt().toEpochMilli()),
                    true);
            files.discard(Place.WRITER, form, record);
            return Kept.IN_LOGBOOK;
        } catch (SQLException e) {
            LOG.warn("the logbook cannot take a draft", e);
            return files.keep(own(), form, record, draft) ? Kept.IN_FALLBACK_FILE : Kept.NOT_KEPT;
        }
    }

    private Place own() {
        return reader ? Place.READER : Place.WRITER;
    }

    @Override
    public Optional<Draft> find(String form, String record) {
        List<Draft> found = new ArrayList<>();
        try {
            access.with(
                    database -> {
                        database.each(
                                "draft/find",
                                row -> found.add(
                                        DraftFiles.draft(Database.text(row, 1), row.getLong(2), files.canonical())),
                                form,
                                record);
                        return found;
                    },
                    false);
        } catch (SQLException | IllegalArgumentException e) {
            LOG.warn("drafts in the logbook cannot be read", e);
        }
        files.find(Place.WRITER, form, record).ifPresent(found::add);
        Optional<Draft> best = found.stream().max(Comparator.comparing(Draft::keptAt));
        Optional<Draft> readers = files.find(Place.READER, form, record)
                .filter(draft -> best.map(Draft::keptAt).orElse(Instant.MIN).isBefore(draft.keptAt()));
        if (readers.isPresent()) {
            ofReader.add(List.of(form, record));
            return readers;
        }
        return best;
    }

    /** The one that stands on the form; another of the same form comes up when it is next opened. */
    @Override
    public void discard(String form, String record) {
        if (ofReader.remove(List.of(form, record)) || reader) {
            files.discard(Place.READER, form, record);
            return;
        }
        files.discard(Place.WRITER, form, record);
        try {
            access.with(database -> database.run("draft/discard", form, record), true);
        } catch (SQLException e) {
            LOG.warn("a draft stays in the logbook", e);
        }
    }

    @Override
    public List<Begun> begun() {
        List<Begun> all = new ArrayList<>(files.begun());
        try {
            access.with(
                    database -> {
                        database.each(
                                "draft/all",
                                row -> all.add(new Begun(
                                        Database.text(row, 1),
                                        Database.text(row, 2),
                                        Instant.ofEpochMilli(row.getLong(3)))));
                        return all;
                    },
                    false);
        } catch (SQLException | IllegalArgumentException e) {
            LOG.warn("drafts in the logbook cannot be read", e);
        }
        all.sort(Comparator.comparing(Begun::keptAt).reversed());
        Set<List<String>> met = new HashSet<>();
        return all.stream()
                .filter(each -> met.add(List.of(each.form(), each.record())))
                .toList();
    }
}
