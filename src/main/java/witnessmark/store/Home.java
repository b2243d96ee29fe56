package witnessmark.store;

import com.fasterxml.uuid.Generators;
import com.fasterxml.uuid.impl.TimeBasedEpochGenerator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What every logbook opened by one program shares. */
final class Home {
    private static final Logger LOG = LoggerFactory.getLogger(Home.class);

    /** Letters of a hash that tell places apart. */
    static final int PLACE = 16;

    final Path dataFolder;
    final LongSupplier clock;
    final Supplier<String> device;
    final Holder holder;
    final Sql sql = new Sql();
    final Canonical canonical = new Canonical();
    final Connections connections = new Connections(sql);
    final LogbookSchema schema;

    /** The logbooks open in this process. Closing a file that was opened as a file would drop their locks. */
    private final List<Path> open = new CopyOnWriteArrayList<>();

    private final TimeBasedEpochGenerator ids = Generators.timeBasedEpochGenerator();

    Home(Path dataFolder, LongSupplier clock, Supplier<String> device, Holder holder) {
        this.dataFolder = dataFolder;
        this.clock = clock;
        this.device = device;
        this.holder = holder;
        this.schema = new LogbookSchema(sql, canonical, SchemaSteps.ours());
    }

    /** A new id; later ones sort after it. */
    UUID id() {
        return ids.generate();
    }

    /** Takes note that a logbook is open, until it is told of its closing. */
    void opened(Path logbook) {
        open.add(logbook);
    }

    void closed(Path logbook) {
        open.remove(logbook);
    }

    /** Whether a logbook is open in this process, so that it must not be touched as a plain file. */
    boolean isOpenHere(Path logbook) {
        return open.contains(logbook);
    }

    /**
     * Which logbook a file is.
     *
     * @throws IllegalArgumentException if what stands there is no id; it goes into the names of folders
     */
    static String idOf(Database database) throws SQLException {
        return UUID.fromString(database.text("logbook/all")).toString();
    }

    /** The emergency journal. */
    EmergencyJournal journal() {
        return EmergencyJournal.in(dataFolder, clock);
    }

    /** Where the backups of all logbooks are, each in a folder of its own. */
    Path backups() {
        return new DataFolder(dataFolder).backups();
    }

    /** Whether a file lies where the program keeps copies, here or in a second place, and is named like one. */
    boolean isKeptCopy(Path file) {
        Path kept = SafeFiles.folderOf(file).getParent();
        boolean among = file.startsWith(backups()) || kept != null && kept.endsWith(CopiesElsewhere.FOLDER);
        return among && (CopyName.of(file).isPresent() || CopyName.isAsItIs(file));
    }

    /** Where the backups of a logbook go. */
    Path backupFolder(String logbookId) {
        return backups().resolve(logbookId);
    }

    /** What this computer saw in the logbook at a place, whether a file lies there already or is about to. */
    Witness witness(String logbookId, Path logbook) {
        String place = canonical.hash(real(logbook).toString()).substring(0, PLACE);
        return new Witness(dataFolder.resolve("witness").resolve(logbookId).resolve(place), canonical);
    }

    private static Path real(Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        try {
            return Files.exists(file)
                    ? file.toRealPath()
                    : SafeFiles.folderOf(absolute).toRealPath().resolve(String.valueOf(absolute.getFileName()));
        } catch (IOException e) {
            LOG.info("a place cannot be followed to its end: {}", file, e);
            return absolute;
        }
    }

    /** Where drafts go that a logbook cannot take. */
    Path draftFolder(String logbookId) {
        return dataFolder.resolve("drafts").resolve(logbookId);
    }
}
