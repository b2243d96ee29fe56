package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.logbook.port.KeptAside;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.LogbookCopies;
import witnessmark.logbook.port.LogbookFiles;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/** Makes and opens logbooks, each one SQLite file. A program has one of these. */
public final class SqliteLogbookFiles implements LogbookFiles {
    private static final Logger LOG = LoggerFactory.getLogger(SqliteLogbookFiles.class);

    private final Home home;
    private final Opening opening;

    /**
     * @param dataFolder where backups, drafts in need and the emergency journal go
     * @param clock wall clock, milliseconds since 1970
     * @param device identity of this machine in the history
     * @param holder who has a logbook open, for others to read
     */
    public SqliteLogbookFiles(Path dataFolder, LongSupplier clock, Supplier<String> device, Holder holder) {
        this.home = new Home(dataFolder, clock, device, holder);
        this.opening = new Opening(home);
    }

    @Override
    public Outcome<Logbook> create(Path path) {
        Path file = path.toAbsolutePath().normalize();
        Problem inTheWay = Probe.inTheWay(file);
        if (inTheWay != null) {
            return Outcome.didNot(inTheWay);
        }
        Path aside = file.resolveSibling(file.getFileName() + ".new");
        try {
            Files.deleteIfExists(aside);
            SafeFiles.createPrivate(aside);
            home.schema.create(aside);
            try (Database database = home.connections.writer(aside)) {
                database.run("logbook/insert", home.id().toString(), home.clock.getAsLong());
                database.settle(); // for the file is moved alone
            }
            Files.move(aside, file); // refuses where somebody made one meanwhile
            SafeFiles.syncFolder(SafeFiles.folderOf(file));
        } catch (IOException e) {
            return cannotMake(file, aside, Faults.writing(file, e));
        } catch (SQLException e) {
            return cannotMake(file, aside, Faults.writing(file, e));
        } finally {
            SafeFiles.remove(Probe.log(aside)); // of one that failed: it would be taken for writes to the next
        }
        return opening.openNew(file);
    }

    @Override
    public Outcome<Logbook> open(Path path) {
        return opening.open(path);
    }

    @Override
    public LogbookCopies copies() {
        return new SqliteCopies(home, new Restoring(home, opening), new Salvage(home, this));
    }

    @Override
    public KeptAside keptAside() {
        return new JournalAside(home.journal());
    }

    private static Outcome<Logbook> cannotMake(Path file, Path aside, Problem problem) {
        try {
            Files.deleteIfExists(aside);
        } catch (IOException e) {
            LOG.warn("a file begun stays behind: {}", aside, e);
        }
        LOG.warn("no logbook could be made at {}: {}", file, problem.kind());
        return Outcome.didNot(problem);
    }
}
