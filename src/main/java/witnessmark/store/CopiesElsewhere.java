package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.logbook.port.SecondPlace;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Copies of one logbook on a stick, a card or a share. SQLite copies to this computer's own disk first, so that however
 * slow the place is, nothing holds the logbook; from there plain bytes go to the place under another name, are brought
 * to its disk, read back and compared, opened and checked, and only then named.
 */
final class CopiesElsewhere implements SecondPlace {
    private static final Logger LOG = LoggerFactory.getLogger(CopiesElsewhere.class);

    /** The folder made in the place chosen. */
    static final String FOLDER = "Witness Mark copies";

    private static final String ASIDE = "for-second-place.new";
    private static final Duration APART = Duration.ofMinutes(30);
    private static final int SHORT = 8;

    /** Copies bytes from one disk to another. */
    interface Carry {
        /** @param to made by this; whatever is left of it after a failure is removed */
        void copy(Path from, Path to) throws IOException;
    }

    /** Reads the logbook as it stands. */
    interface Source {
        Database open() throws SQLException;
    }

    private final Home home;
    private final String logbookId;
    private final Path logbook;
    private final Source source;
    private final Backups backups;
    private final Carry carry;
    private final Beside beside;

    /** What lies beside the logbook and goes with it. */
    interface Beside {
        /** @return what did not get there */
        List<Problem> bring(Path to, Carry carry);
    }

    CopiesElsewhere(
            Home home, String logbookId, Path logbook, Source source, Backups backups, Carry carry, Beside beside) {
        this.home = home;
        this.logbookId = logbookId;
        this.logbook = logbook;
        this.source = source;
        this.backups = backups;
        this.carry = carry;
        this.beside = beside;
    }

    @Override
    public boolean isThere(Path place) {
        return begun(place).isPresent();
    }

    @Override
    public Optional<Instant> newest(Path place) {
        return begun(place).flatMap(folder -> new CopyFolder(folder, logbook).newest());
    }

    @Override
    public Outcome<Made> begin(Path place) {
        if (!Files.isDirectory(place)) {
            return Outcome.didNot(Problem.of(ProblemKind.PLACE_GONE, place));
        }
        Path folder = begun(place).orElse(place.resolve(FOLDER).resolve(CopyName.stem(logbook) + mark()));
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            return Outcome.didNot(Faults.place(place, folder, e));
        }
        return write(place);
    }

    @Override
    public Outcome<Made> write(Path place) {
        Optional<Path> folder = begun(place);
        if (folder.isEmpty()) {
            return Outcome.didNot(Problem.of(ProblemKind.PLACE_GONE, place));
        }
        Path aside = backups.folder().resolve(ASIDE);
        try {
            Outcome<Path> copied = copied(aside);
            if (!copied.didWork()) {
                return Outcome.didNot(copied.problems());
            }
            String holds = lastChange(aside);
            CopyFolder copies = new CopyFolder(folder.get(), logbook);
            copies.sweep(Instant.ofEpochMilli(home.clock.getAsLong()));
            boolean good = copied.problems().isEmpty();
            Path to = good
                    ? copies.next(Instant.ofEpochMilli(home.clock.getAsLong()))
                    : folder.get().resolve(CopyName.asItIs(logbook));
            Problem fault = put(place, aside, to, good);
            if (fault != null) {
                return Outcome.didNot(fault);
            }
            Made made = new Made(to, holds);
            if (!good) {
                return new Outcome.WorkedExcept<>(made, copied.problems());
            }
            try (Database present = source.open()) {
                copies.thin(
                        new Thinning(ZoneId.systemDefault(), APART),
                        copy -> isOurs(copy) && backups.holdsNothingElse(copy, present));
            }
            return Outcome.of(made, beside.bring(folder.get().resolve(PhotoCopies.FOLDER), carry));
        } catch (IOException e) {
            return Outcome.didNot(Faults.place(place, folder.get(), e));
        } catch (SQLException e) {
            return Outcome.didNot(Faults.reading(logbook, e));
        } finally {
            SafeFiles.remove(aside);
        }
    }

    @Override
    public Optional<Instant> firstWrittenAfter(String holds) {
        try (Database database = source.open()) {
            if (database.text("amendment/last_hash").equals(holds)) {
                return Optional.empty();
            }
            long first = database.number("amendment/first_after", holds);
            return first == 0 ? Optional.empty() : Optional.of(Instant.ofEpochMilli(first));
        } catch (SQLException e) {
            LOG.warn("when something was last written cannot be read: {}", logbook, e);
            return Optional.empty();
        }
    }

    private Outcome<Path> copied(Path aside) throws SQLException {
        try (Database database = source.open()) {
            return backups.aside(logbook, database, aside);
        }
    }

    private String lastChange(Path copy) throws SQLException {
        try (Database database = home.connections.frozen(copy)) {
            return database.text("amendment/last_hash");
        }
    }

    /** @return what went wrong, or null; the older copies are whole either way */
    private @org.jspecify.annotations.Nullable Problem put(Path place, Path from, Path to, boolean good) {
        Path aside = to.resolveSibling(to.getFileName() + CopyFolder.ASIDE);
        try {
            Files.deleteIfExists(aside); // left of one that was cut short
            carry.copy(from, aside);
            if (Files.mismatch(from, aside) != -1) {
                return Problem.of(ProblemKind.PLACE_FAILED, place, "what was written there reads otherwise");
            }
            if (good && !backups.faultsOf(aside).isEmpty()) {
                return Problem.of(ProblemKind.PLACE_FAILED, place, "the copy written there is not good");
            }
            if (good && Files.exists(to)) {
                return Problem.of(ProblemKind.PLACE_FAILED, place, "a file of that name is there already");
            }
            SafeFiles.moveOver(aside, to);
            return null;
        } catch (IOException e) {
            return Faults.place(place, SafeFiles.folderOf(to), e);
        } finally {
            SafeFiles.remove(aside);
        }
    }

    /** Whether a copy about to be thinned out is of this logbook: a name alone is not enough. */
    private boolean isOurs(Path copy) {
        try (Database database = home.connections.frozen(copy)) {
            return Home.idOf(database).equals(logbookId);
        } catch (SQLException | IllegalArgumentException e) {
            LOG.warn("a file among the copies is not touched, as it cannot be read: {}", copy, e);
            return false;
        }
    }

    private Optional<Path> begun(Path place) {
        return folders(place).stream()
                .filter(folder -> String.valueOf(folder.getFileName()).endsWith(mark()))
                .findFirst();
    }

    private static List<Path> folders(Path place) {
        Path all = place.resolve(FOLDER);
        if (!Files.isDirectory(all)) {
            return List.of();
        }
        try (Stream<Path> in = Files.list(all)) {
            return in.filter(Files::isDirectory).sorted().toList();
        } catch (IOException | java.io.UncheckedIOException e) {
            LOG.info("a second place cannot be looked into: {}", place, e);
            return List.of();
        }
    }

    /** Which logbook, and which computer: two that went apart with one stick keep out of each other's way. */
    private String mark() {
        return "-" + logbookId.substring(logbookId.length() - SHORT) + "-"
                + home.canonical.hash(home.device.get()).substring(0, SHORT);
    }

    @Override
    public List<Problem> known(Path place) {
        List<Problem> known = new ArrayList<>();
        try {
            if (Files.getFileStore(place).equals(Files.getFileStore(SafeFiles.folderOf(logbook)))) {
                known.add(Problem.of(ProblemKind.PLACE_ON_SAME_DISK, place));
            }
        } catch (IOException e) {
            LOG.info("the disk of a second place cannot be told: {}", place, e);
        }
        String ours = "-" + logbookId.substring(logbookId.length() - SHORT) + "-";
        List<String> others = folders(place).stream()
                .map(folder -> String.valueOf(folder.getFileName()))
                .filter(name -> !name.contains(ours))
                .toList();
        if (!others.isEmpty()) {
            known.add(Problem.of(ProblemKind.COPIES_OF_ANOTHER, place, others));
        }
        return known;
    }
}
