package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.history.Damage;
import witnessmark.domain.history.Damage.Hit;
import witnessmark.domain.history.Damage.Left;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.LogbookCopies.SalvageWords;
import witnessmark.logbook.port.LogbookCopies.Salvaged;
import witnessmark.logbook.port.LogbookFiles;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Writes what {@link Wreck} could read of a logbook into a new one, by the way every entry goes. Where the new one
 * refuses some (a part whose design is lost), the rest goes in all the same, and each that stays out is told.
 */
final class Salvage {
    private static final Logger LOG = LoggerFactory.getLogger(Salvage.class);

    private final Home home;
    private final LogbookFiles files;

    Salvage(Home home, LogbookFiles files) {
        this.home = home;
        this.files = files;
    }

    Outcome<Salvaged> of(Path damaged, Path to, SalvageWords words) {
        Wreck wreck = null;
        Problem why = Problem.of(ProblemKind.LOGBOOK_DAMAGED, damaged, "no record of it can be read");
        try (Database database = Restoring.open(home, damaged)) {
            wreck = Wreck.read(database, home.canonical, words.doubtful());
        } catch (SQLException e) {
            LOG.warn("SQLite can read nothing of it: {}", damaged, e);
            why = Faults.reading(damaged, e);
        }
        if (wreck == null || wreck.entries().isEmpty()) {
            wreck = pieces(damaged, to, words);
        }
        if (wreck == null || wreck.entries().isEmpty()) {
            return Outcome.didNot(why);
        }
        return written(damaged, to, wreck, words);
    }

    /** Which records are hit, without writing anything. */
    Outcome<Damage> look(Path damaged) {
        try (Database database = Restoring.open(home, damaged)) {
            Wreck wreck = Wreck.read(database, home.canonical, "");
            return wreck.entries().isEmpty()
                    ? Outcome.didNot(Problem.of(ProblemKind.LOGBOOK_DAMAGED, damaged, "no record of it can be read"))
                    : Outcome.worked(damage(wreck));
        } catch (SQLException e) {
            return Outcome.didNot(Faults.reading(damaged, e));
        }
    }

    private static Damage damage(Wreck wreck) {
        Names names = new Names(Facts.none().with(wreck.entries()));
        List<Hit> hits = new ArrayList<>();
        wreck.lost()
                .forEach((record, lost) ->
                        hits.add(new Hit(lost.table(), names.ofRemains(record, lost.image()), Left.NOTHING)));
        for (Entry<?> entry : wreck.entries()) {
            boolean doubtful = wreck.doubtful().contains(entry.id().value());
            if (doubtful || wreck.rescued().contains(entry.id().value())) {
                String table = RecordTypes.of(entry.fact().getClass()).name();
                hits.add(new Hit(table, names.of(entry), doubtful ? Left.DOUBTFUL : Left.IN_HISTORY));
            }
        }
        int whole = wreck.entries().size() - wreck.doubtful().size();
        return new Damage(whole, hits, wreck.unreadable());
    }

    /** Page by page, where the list of tables is lost; last writes that lie beside would be newer than these rows. */
    private @Nullable Wreck pieces(Path damaged, Path to, SalvageWords words) {
        if (Probe.hasLog(damaged) || home.isOpenHere(damaged) || Probe.inTheWay(to) != null) {
            return null;
        }
        Path aside = to.resolveSibling(to.getFileName() + ".pieces");
        try {
            Files.deleteIfExists(aside);
            SafeFiles.createPrivate(aside);
            try (Database gathered = home.schema.tablesAlone(aside)) {
                gathered.transaction(() -> {
                    try {
                        Pieces.gather(damaged, gathered, home.canonical);
                        return gathered;
                    } catch (IOException e) {
                        throw new SQLException("the pieces cannot be read", e);
                    }
                });
                return Wreck.readPieces(gathered, home.canonical, words.doubtful());
            }
        } catch (IOException | SQLException e) {
            LOG.warn("no pieces can be gathered: {}", damaged, e);
            return null;
        } finally {
            SafeFiles.remove(aside);
            SafeFiles.remove(to.resolveSibling(aside.getFileName() + "-journal"));
        }
    }

    private Outcome<Salvaged> written(Path damaged, Path to, Wreck wreck, SalvageWords words) {
        return files.create(to).then(made -> {
            try (Logbook logbook = made) {
                Salvaged salvaged = filled(logbook, to, wreck, words);
                return Outcome.of(salvaged, Restoring.photos(damaged, salvaged.logbook()));
            }
        });
    }

    private Salvaged filled(Logbook logbook, Path to, Wreck wreck, SalvageWords words) {
        List<Entry<?>> left = new ArrayList<>();
        write(logbook, wreck, wreck.entries(), words, left);
        int before;
        do { // what waited for something in the other half
            before = left.size();
            List<Entry<?>> again = List.copyOf(left);
            left.clear();
            again.forEach(entry -> write(logbook, wreck, List.of(entry), words, left));
        } while (!left.isEmpty() && left.size() < before);
        Facts facts = logbook.facts();
        Names names = new Names(facts.with(left));
        List<Problem> problems = new ArrayList<>();
        wreck.lost()
                .forEach((record, lost) -> problems.add(
                        Problem.of(ProblemKind.NOT_SALVAGED, lost.table(), names.ofRemains(record, lost.image()))));
        left.forEach(entry -> problems.add(problem(ProblemKind.NOT_SALVAGED, entry, names)));
        List<Entry<?>> doubtful = wreck.entries().stream()
                .filter(entry -> wreck.doubtful().contains(entry.id().value()) && !left.contains(entry))
                .toList();
        doubtful.forEach(entry -> problems.add(problem(ProblemKind.SALVAGED_DOUBTFUL, entry, names)));
        if (wreck.unreadable() > 0) {
            problems.add(Problem.of(ProblemKind.CHANGES_UNREADABLE, wreck.unreadable()));
        }
        int whole = wreck.entries().size() - left.size() - doubtful.size();
        return new Salvaged(to.toAbsolutePath().normalize(), whole, doubtful.size(), problems);
    }

    /** All in one change, or, when that is refused, half and half until those refused are alone. */
    private static void write(
            Logbook logbook, Wreck wreck, List<Entry<?>> entries, SalvageWords words, List<Entry<?>> left) {
        if (entries.isEmpty()
                || logbook.write(new Change(words.who(), words.why(), entries, keptWith(entries, wreck)))
                        .didWork()) {
            return;
        }
        if (entries.size() == 1) {
            left.add(entries.get(0));
            return;
        }
        int half = entries.size() / 2;
        write(logbook, wreck, entries.subList(0, half), words, left);
        write(logbook, wreck, entries.subList(half, entries.size()), words, left);
    }

    private static List<Kept> keptWith(List<Entry<?>> entries, Wreck wreck) {
        return entries.stream()
                .map(entry -> entry.fact().kept())
                .filter(Objects::nonNull)
                .distinct()
                .map(wreck.kept()::get)
                .filter(Objects::nonNull)
                .toList();
    }

    private static Problem problem(ProblemKind kind, Entry<?> entry, Names names) {
        return Problem.of(kind, RecordTypes.of(entry.fact().getClass()).name(), names.of(entry));
    }
}
