package witnessmark.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.logbook.port.Drafts;

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
    private final Canonical canonical;

    KeptDrafts(Access access, DraftFiles files, Canonical canonical) {
        this.access = access;
        this.files = files;
        this.canonical = canonical;
    }

    @Override
    public Kept keep(String form, String record, Draft draft) {
        try {
            String fields = DraftFiles.fields(draft, canonical);
            access.with(
                    database -> database.run(
                            "draft/keep", form, record, fields, draft.keptAt().toEpochMilli()),
                    true);
            files.discard(form, record);
            return Kept.IN_LOGBOOK;
        } catch (SQLException e) {
            LOG.warn("the logbook cannot take a draft", e);
            return files.keep(form, record, draft) ? Kept.IN_FALLBACK_FILE : Kept.NOT_KEPT;
        }
    }

    @Override
    public Optional<Draft> find(String form, String record) {
        List<Draft> found = new ArrayList<>();
        try {
            access.with(
                    database -> {
                        database.each(
                                "draft/find",
                                row -> found.add(DraftFiles.draft(Database.text(row, 1), row.getLong(2), canonical)),
                                form,
                                record);
                        return found;
                    },
                    false);
        } catch (SQLException | IllegalArgumentException e) {
            LOG.warn("drafts in the logbook cannot be read", e);
        }
        files.find(form, record).ifPresent(found::add);
        return found.stream().max(Comparator.comparing(Draft::keptAt));
    }

    @Override
    public void discard(String form, String record) {
        files.discard(form, record);
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
