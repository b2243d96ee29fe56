package witnessmark.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Facts;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.history.HybridClock;
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

/** An open logbook file. One connection writes; checks and backups read through one of their own. */
final class SqliteLogbook implements Logbook {
    private static final Logger LOG = LoggerFactory.getLogger(SqliteLogbook.class);

    private final Home home;
    private final Path path;
    private final FileKey key;
    private final @Nullable SideLock lock;
    private final @Nullable Problem readOnly;
    private final boolean leftOpen;
    private final String id;
    private final SecondPlace secondPlace;
    private final Amendments amendments;
    private final Rows rows = new Rows();
    private final Backups backups;
    private final Drafts drafts;
    private final NotTaken notTaken;
    private final Witness witness;
    private final PhotoFolder photos;
    private @Nullable Database database;
    private @Nullable Writer writer;
    private volatile Facts facts;
    private boolean writtenSinceBackup;
    private boolean closed;
    private long dataVersion;

    private SqliteLogbook(
            Home home,
            Path path,
            FileKey key,
            @Nullable SideLock lock,
            @Nullable Problem readOnly,
            boolean leftOpen,
            Database database)
            throws SQLException {
        this.home = home;
        this.path = path;
        this.key = key;
        this.lock = lock;
        this.readOnly = readOnly;
        this.database = database;
        this.amendments = new Amendments(home.canonical);
        this.facts = rows.facts(database);
        this.leftOpen = leftOpen;
        this.id = Home.idOf(database);
        this.backups = new Backups(home.backupFolder(id), home.clock, home.connections, this::faultsOf);
        this.drafts = new KeptDrafts(this::use, DraftFiles.of(home, id, path), readOnly != null);
        this.notTaken = new NotTaken(home.journal(), path, id);
        this.photos = new PhotoFolder(
                PhotoFolder.beside(path), backups.folder().resolve(PhotoCopies.FOLDER), readOnly != null);
        this.secondPlace = new CopiesElsewhere(
                home,
                id,
                path,
                this::ownReader,
                backups,
                SafeFiles::copy,
                (to, carry) -> photos.bring(facts, to, carry));
        this.witness = home.witness(id, path);
        home.opened(path);
    }

    /**
     * @param lock held already; let go of when the logbook is closed
     * @param leftOpen whoever had it open last did not close it
     */
    static SqliteLogbook toWrite(Home home, Path path, SideLock lock, boolean leftOpen) throws SQLException {
        FileKey key = FileKey.of(path);
        Database database = home.connections.writer(path);
        try {
            if (!key.stillAt(path)) {
                throw new SQLException("the file was replaced while it was opened");
            }
            SqliteLogbook logbook = new SqliteLogbook(home, path, key, lock, null, leftOpen, database);
            logbook.writer = logbook.newWriter(database);
            return logbook;
        } catch (SQLException | RuntimeException e) {
            database.close();
            throw e;
        }
    }

    /** @param database open already; closed when the logbook is */
    static SqliteLogbook toRead(Home home, Path path, Database database, Problem why) throws SQLException {
        return new SqliteLogbook(home, path, FileKey.of(path), null, why, false, database);
    }

    @Override
    public Facts facts() {
        return facts;
    }

    @Override
    public synchronized Outcome<Written> write(Change change) {
        if (readOnly != null) {
            return Outcome.didNot(Problem.of(ProblemKind.OPEN_READ_ONLY));
        }
        if (!key.stillAt(path)) {
            return movedAway(change);
        }
        try {
            Change left = photos.taken(change, facts);
            writtenSinceBackup |= left != change;
            return left == null ? Outcome.worked(new Written(home.id(), List.of(), facts)) : writeRows(left, home.id());
        } catch (IOException e) {
            return Outcome.didNot(Faults.writing(photos.folder(), e));
        }
    }

    private Outcome<Written> writeRows(Change change, UUID id) {
        try {
            Database open = opened();
            readAgainIfForeign(open);
            Writer into = Objects.requireNonNull(writer, "a logbook open to write has a writer");
            Writer.Done done = open.transaction(() -> into.write(open, facts, id, change));
            if (!key.stillAt(path)) {
                return movedAway(change);
            }
            writtenSinceBackup |= !change.kept().isEmpty(); // as well as what publishing finds changed
            return Outcome.worked(publish(id, done));
        } catch (Writer.Refused e) {
            LOG.debug("a change is refused", e);
            return Outcome.didNot(e.problems());
        } catch (SQLException e) {
            return afterFault(change, id, e);
        }
    }

    @Override
    public synchronized List<Amendment> history(String table, UUID record) {
        return read("amendment/of_record", table, record.toString());
    }

    @Override
    public synchronized List<Amendment> amendments(UUID change) {
        return read("amendment/of_change", change.toString());
    }

    @Override
    public synchronized List<Amendment> history() {
        return read("amendment/all");
    }

    @Override
    public Outcome<Optional<Kept>> kept(String sha256) {
        return KeptPieces.read(this::reader, path, sha256)
                .then(found -> found.isPresent() ? Outcome.worked(found) : photos.kept(sha256));
    }

    @Override
    public Outcome<List<String>> keptNames() {
        return KeptPieces.readNames(this::reader, path)
                .map(names ->
                        Stream.concat(names.stream(), photos.names().stream()).toList());
    }

    @Override
    public Photos photos() {
        return photos;
    }

    @Override
    public Optional<Problem> readOnly() {
        return Optional.ofNullable(readOnly);
    }

    @Override
    public List<Problem> verify() {
        if (!key.stillAt(path)) {
            return List.of(Problem.of(
                    ProblemKind.FILE_MOVED_AWAY, path, backups.folder())); // another file there is not ours to judge
        }
        try (Database reader = reader()) {
            return faultsOf(path, reader);
        } catch (SQLException e) {
            return List.of(Faults.reading(path, e));
        }
    }

    @Override
    public boolean hasBackup() {
        return backups.newest(path).isPresent();
    }

    @Override
    public Outcome<Path> backUp() {
        if (!key.stillAt(path)) {
            return rescue();
        }
        settle();
        try (Database reader = reader()) {
            Outcome<Path> made = backups.make(path, reader);
            if (!made.didWork()) {
                notBackedUp();
                return made;
            }
            Path photosThere = backups.folder().resolve(PhotoCopies.FOLDER);
            return made.then(copy -> Outcome.of(copy, photos.bring(facts, photosThere, PhotoCopies::linked)));
        } catch (SQLException e) {
            notBackedUp();
            return Outcome.didNot(Faults.reading(path, e));
        }
    }

    @Override
    public Outcome<Path> copyTo(Path file) {
        Path to = file.toAbsolutePath().normalize();
        return new NewCopy(to, path)
                .of(
                        home.witness(id, to),
                        aside -> isMovedAway() ? rescued(aside) : copied(aside),
                        () -> photos.bring(facts, PhotoFolder.beside(to), PhotoCopies::linked));
    }

    private Outcome<Path> copied(Path aside) throws SQLException {
        try (Database reader = reader()) {
            return backups.aside(path, reader, aside);
        }
    }

    /** From the connection, which still has a file that is no longer at its path. */
    private synchronized Outcome<Path> rescued(Path aside) {
        Database open = database;
        return open == null
                ? Outcome.didNot(Problem.of(ProblemKind.FILE_MOVED_AWAY, path, backups.folder()))
                : backups.aside(path, open, aside);
    }

    /** What this computer saw in the file and is not in it. */
    synchronized List<Problem> missing() {
        try {
            return witness.compare(opened(), readOnly == null)
                    .map(missing -> List.of(missing.told(path)))
                    .orElse(List.of());
        } catch (SQLException | IllegalArgumentException e) {
            LOG.warn("what is missing cannot be told: {}", path, e);
            return List.of(); // what cannot be read is found by the check
        }
    }

    @Override
    public synchronized void acceptMissing() {
        witness.acceptMissing();
    }

    @Override
    public SecondPlace secondPlace() {
        return secondPlace;
    }

    @Override
    public boolean isMovedAway() {
        return !key.stillAt(path);
    }

    @Override
    public boolean wasLeftOpen() {
        return leftOpen;
    }

    @Override
    public String identity() {
        return id;
    }

    @Override
    public Drafts drafts() {
        return drafts;
    }

    @Override
    public Path path() {
        return path;
    }

    @Override
    public synchronized void close() {
        if (closed) {
            return;
        }
        if (writtenSinceBackup) {
            backUp().problems().forEach(problem -> LOG.error("on closing: {}", problem.kind()));
        }
        boolean moved = lock != null && !key.stillAt(path);
        if (moved && database != null) {
            quietly("file/checkpoint"); // else what lies beside would be taken for writes to another file put here
        }
        closed = true;
        letGo();
        witness.close();
        home.closed(path);
        if (moved && !Probe.hasLog(path)) {
            SafeFiles.remove(Probe.log(path));
        }
        if (lock != null) {
            lock.close();
        }
    }

    /** Backs up when the file is newer than the newest backup; what went wrong is told beside the open logbook. */
    List<Problem> backUpIfStale() {
        return backups.isFresh(path) ? List.of() : backUp().problems();
    }

    /** Another program wrote past the lock: what it wrote is read first, so that revisions are compared with it. */
    private void readAgainIfForeign(Database open) throws SQLException {
        long now = open.number("file/data_version");
        if (dataVersion != 0 && now != dataVersion) {
            LOG.warn("another program has written to {}", path);
            facts = rows.facts(open);
            writer = newWriter(open);
        }
        dataVersion = now;
    }

    private Written publish(UUID id, Writer.Done done) {
        if (!done.entries().isEmpty()) {
            facts = facts.with(done.entries());
            witness.saw(done.amendments());
            writtenSinceBackup = true;
            notTaken.nowIn(facts);
        }
        return new Written(id, done.amendments(), facts);
    }

    private Outcome<Written> movedAway(Change change) {
        notTaken.keep(change);
        return Outcome.didNot(Problem.of(ProblemKind.FILE_MOVED_AWAY, path, backups.folder()));
    }

    /**
     * After a failed write nothing is known of the connection (a failed sync must not be tried again on the same
     * handle: Rebello and others, USENIX ATC 2020). So it is closed and opened anew, and what is on the disk decides.
     */
    private Outcome<Written> afterFault(Change change, UUID changeId, SQLException fault) {
        LOG.error("a change could not be written to {}", path, fault);
        letGo();
        try {
            Database open = opened();
            if (open.number("amendment/of_change_exists", changeId.toString()) == 1) {
                List<Amendment> made = amendments.list(open, "amendment/of_change", changeId.toString());
                witness.saw(made);
                writtenSinceBackup = true;
                return Outcome.worked(new Written(changeId, made, facts));
            }
        } catch (SQLException e) {
            LOG.error("the logbook cannot be opened again: {}", path, e);
        }
        notTaken.keep(change);
        return Outcome.didNot(Faults.writing(path, fault));
    }

    private Database opened() throws SQLException {
        Database open = database;
        if (open == null) {
            if (closed || !key.stillAt(path)) {
                throw new SQLException("closed, or another file lies at " + path);
            }
            open = home.connections.writer(path);
            facts = rows.facts(open);
            writer = newWriter(open);
            database = open;
            dataVersion = 0;
        }
        return open;
    }

    /** Brings the log into the file first, so that later the file's time tells whether the backup is newer. */
    private synchronized void settle() {
        if (readOnly == null) {
            writtenSinceBackup = false; // what is written from now on may be missing in the copy
            quietly("file/checkpoint");
        }
    }

    /** Where it does not work the log beside the file stays, and nobody is the worse for it. */
    private void quietly(String query) {
        try {
            opened().set(query);
        } catch (SQLException e) {
            LOG.warn("the log beside the file stays: {}", path, e);
        }
    }

    /** The file was moved away or removed: the connection still has it, and may be the only one that does. */
    private synchronized Outcome<Path> rescue() {
        Problem moved = Problem.of(ProblemKind.FILE_MOVED_AWAY, path, backups.folder());
        Database open = database;
        return open == null
                ? Outcome.didNot(moved)
                : new Outcome.WorkedExcept<>(path, List.of(moved)).then(lost -> backups.make(lost, open));
    }

    private synchronized void notBackedUp() {
        writtenSinceBackup = readOnly == null;
    }

    private void letGo() {
        Database open = database;
        database = null;
        writer = null;
        if (open != null) {
            try {
                open.close();
            } catch (SQLException e) {
                LOG.warn("a connection cannot be closed: {}", path, e);
            }
        }
    }

    private Writer newWriter(Database open) throws SQLException {
        HybridClock clock = new HybridClock(home.clock, amendments.lastClock(open));
        return new Writer(rows, amendments, home.canonical, clock, home::id, home.device.get(), home.schema.version());
    }

    private synchronized <T> T use(KeptDrafts.Use<T> use, boolean toWrite) throws SQLException {
        if (toWrite && (readOnly != null || !key.stillAt(path))) {
            throw new SQLException("the logbook is open to read only, or was moved away");
        }
        try {
            T result = use.of(opened());
            if (toWrite) {
                takeIn();
                witness.settle();
            }
            return result;
        } catch (SQLException e) {
            if (toWrite && Faults.isDiskFailure(e) && key.stillAt(path)) {
                letGo(); // as after a change: what a failed sync left is not asked of the same handle again
            }
            throw e;
        }
    }

    /**
     * Brings what was written so far into the file itself, for those who copy it while it is open. Done with drafts,
     * which nobody waits for, and which come after every save of a form.
     */
    private void takeIn() {
        quietly("file/take_in");
    }

    private List<Amendment> read(String query, @Nullable Object... parameters) {
        try {
            return amendments.list(opened(), query, parameters);
        } catch (SQLException e) {
            throw new UncheckedIOException("the history cannot be read", new IOException(e));
        }
    }

    /** A reader of this file and of no other that lies in its place now. */
    private Database ownReader() throws SQLException {
        Database reader = reader();
        if (key.stillAt(path) && !isClosed()) {
            return reader;
        }
        reader.close();
        throw new SQLException("closed, or another file lies at " + path);
    }

    private synchronized boolean isClosed() {
        return closed;
    }

    private Database reader() throws SQLException {
        return readOnly != null && !Probe.hasLog(path) ? home.connections.frozen(path) : home.connections.reader(path);
    }

    private List<Problem> faultsOf(Path file, Database open) {
        return new Verification(file, home.canonical).ofOneMoment(open, facts);
    }
}
