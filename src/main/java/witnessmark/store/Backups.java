package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Copies of one logbook in a folder, named after the moment they were made. A copy is made aside by SQLite itself,
 * opened and checked, and only then gets its name; an older one is never written over.
 */
final class Backups {
    private static final Logger LOG = LoggerFactory.getLogger(Backups.class);
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmssSSS'Z'").withZone(ZoneOffset.UTC);
    private static final Pattern NAME = Pattern.compile(".*-(\\d{8}T\\d{9}Z)\\.witness");

    private static final String AS_IT_IS = "-as-it-is.witness";

    /** Finds faults in a file, the logbook's or a copy's. */
    interface Check {
        List<Problem> of(Path file, Database database);
    }

    private final Path folder;
    private final LongSupplier clock;
    private final Connections connections;
    private final Check check;

    Backups(Path folder, LongSupplier clock, Connections connections, Check check) {
        this.folder = folder;
        this.clock = clock;
        this.connections = connections;
        this.check = check;
    }

    Path folder() {
        return folder;
    }

    /**
     * Makes one more. A logbook that has faults itself is copied too, so that what was written since is in two places;
     * that copy never takes the place of a good one, and the faults are told.
     */
    Outcome<Path> make(Path logbook, Database database) {
        String stamp = STAMP.format(now());
        Path copy = folder.resolve(stem(logbook) + "-" + stamp + ".witness");
        Path aside = folder.resolve(copy.getFileName() + ".new");
        try {
            SafeFiles.createPrivateFolder(folder);
            if (Files.exists(copy)) {
                return Outcome.didNot(Problem.of(ProblemKind.FILE_EXISTS, copy));
            }
            Files.deleteIfExists(aside);
            SafeFiles.createPrivate(aside); // SQLite copies into an empty file, and leaves its permissions
            database.run("logbook/copy", aside.toString());
            List<Problem> faults = faultsOf(aside);
            if (faults.isEmpty()) {
                SafeFiles.moveOver(aside, copy);
                thin();
                return Outcome.worked(copy);
            }
            LOG.error("a backup is not good: {} {}", aside, faults);
            List<Problem> own = check.of(logbook, database);
            if (own.isEmpty()) {
                return Outcome.didNot(
                        Problem.of(ProblemKind.BACKUP_NOT_GOOD, copy, "it does not hold what the logbook holds"));
            }
            Path asItIs = folder.resolve(stem(logbook) + AS_IT_IS);
            SafeFiles.moveOver(aside, asItIs);
            return new Outcome.WorkedExcept<>(asItIs, own);
        } catch (IOException e) {
            return Outcome.didNot(Faults.writing(folder, e));
        } catch (SQLException e) {
            return Outcome.didNot(Faults.isDamage(e) ? Faults.reading(logbook, e) : Faults.writing(folder, e));
        } finally {
            SafeFiles.remove(aside); // what is left of one that failed would only fill the disk
        }
    }

    private List<Problem> faultsOf(Path copy) {
        try (Database database = connections.frozen(copy)) {
            return check.of(copy, database);
        } catch (SQLException e) {
            return List.of(Faults.reading(copy, e));
        }
    }

    /** Later than the newest whatever the clock says, else this one would be the first to be thinned out. */
    private Instant now() {
        Instant now = Instant.ofEpochMilli(clock.getAsLong());
        return newest().filter(newest -> !newest.isBefore(now))
                .map(newest -> newest.plusMillis(1))
                .orElse(now);
    }

    /** When the newest was made; empty when there is none. */
    Optional<Instant> newest() {
        try {
            return made().keySet().stream().max(Instant::compareTo);
        } catch (IOException e) {
            LOG.warn("the backups cannot be listed: {}", folder, e);
            return Optional.empty();
        }
    }

    private void thin() throws IOException {
        TreeMap<Instant, Path> made = made();
        Set<Instant> kept = new Thinning(ZoneId.systemDefault()).kept(made.keySet());
        made.forEach((moment, backup) -> {
            if (!kept.contains(moment)) {
                SafeFiles.remove(backup);
            }
        });
    }

    private TreeMap<Instant, Path> made() throws IOException {
        TreeMap<Instant, Path> made = new TreeMap<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.forEach(file -> {
                    Matcher name = NAME.matcher(file.getFileName().toString());
                    if (name.matches()) {
                        made.put(STAMP.parse(name.group(1), Instant::from), file);
                    }
                });
            }
        }
        return made;
    }

    private static String stem(Path logbook) {
        return String.valueOf(logbook.getFileName()).replaceFirst("\\.witness$", "");
    }
}
