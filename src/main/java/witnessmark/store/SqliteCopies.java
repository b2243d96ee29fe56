package witnessmark.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Facts;
import witnessmark.domain.history.Damage;
import witnessmark.logbook.port.LogbookCopies;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Lists copies without trusting one, and has one brought back by {@link Restoring} or salvaged by {@link Salvage}. */
final class SqliteCopies implements LogbookCopies {
    private static final Logger LOG = LoggerFactory.getLogger(SqliteCopies.class);

    /** A stick may hold anything: no deeper, and no more. */
    private static final int DEEP = 3;

    private static final int MOST = 500;
    private static final Duration GLANCE = Duration.ofSeconds(20);

    private final Home home;
    private final Probe probe;
    private final Restoring restoring;
    private final Salvage salvage;

    SqliteCopies(Home home, Restoring restoring, Salvage salvage) {
        this.home = home;
        this.probe = new Probe(home);
        this.restoring = restoring;
        this.salvage = salvage;
    }

    @Override
    public Path folder() {
        return home.backups();
    }

    @Override
    public List<Copy> kept() {
        return Files.isDirectory(home.backups())
                ? in(home.backups()).fold(all -> all, problems -> List.of())
                : List.of();
    }

    @Override
    public Outcome<List<Copy>> in(Path place) {
        if (!Files.exists(place)) {
            return Outcome.didNot(Problem.of(ProblemKind.NO_SUCH_FILE, place));
        }
        try (Stream<Path> files = Files.isDirectory(place) ? Files.walk(place, DEEP) : Stream.of(place)) {
            List<Copy> found = new ArrayList<>();
            files.filter(file -> Files.isRegularFile(file) && (file.equals(place) || named(file)))
                    .limit(MOST)
                    .forEach(file -> glance(file).ifPresent(found::add));
            found.sort(Comparator.comparing(Copy::made).reversed());
            return Outcome.worked(List.copyOf(found));
        } catch (IOException e) {
            return Outcome.didNot(Problem.of(ProblemKind.CANNOT_READ_FILE, place, Faults.words(e)));
        } catch (UncheckedIOException e) {
            return Outcome.didNot(Problem.of(
                    ProblemKind.CANNOT_READ_FILE, place, Faults.words(Objects.requireNonNull(e.getCause()))));
        }
    }

    @Override
    public Optional<String> identity(Path file) {
        return glance(file).map(Copy::logbook);
    }

    @Override
    public String nameOf(Path logbookOrCopy) {
        return CopyName.of(logbookOrCopy).map(CopyName::stem).orElseGet(() -> CopyName.stem(logbookOrCopy));
    }

    @Override
    public List<Problem> check(Path copy) {
        Problem outside = outside(copy);
        if (outside != null) {
            return List.of(outside);
        }
        try (Database database = Restoring.open(home, copy)) {
            return faults(home, probe, copy, database);
        } catch (SQLException e) {
            return List.of(Faults.reading(copy, e));
        }
    }

    @Override
    public Outcome<Restored> restore(Path copy, Path to) {
        Problem outside = outside(copy);
        return outside == null ? restoring.restore(copy, to) : Outcome.didNot(outside);
    }

    @Override
    public Outcome<Restored> replace(Path copy, Path present) {
        Problem outside = outside(copy);
        return outside == null ? restoring.replace(copy, present) : Outcome.didNot(outside);
    }

    @Override
    public Outcome<Salvaged> salvage(Path damaged, Path to, SalvageWords words) {
        Problem outside = probe.outside(damaged);
        return outside == null ? salvage.of(damaged, to, words) : Outcome.didNot(outside);
    }

    @Override
    public Outcome<Damage> look(Path damaged) {
        Problem outside = probe.outside(damaged);
        return outside == null ? salvage.look(damaged) : Outcome.didNot(outside);
    }

    /** What is wrong with a logbook that lies still: all of it in our form, the file alone in an older one. */
    static List<Problem> faults(Home home, Probe probe, Path file, Database database) {
        Outcome<Integer> inside = probe.inside(file, database);
        if (!inside.didWork() || inside.orThrow() != home.schema.version()) {
            return inside.problems();
        }
        Facts facts = Facts.none();
        try {
            facts = new Rows().facts(database); // to name records by
        } catch (SQLException | IllegalArgumentException e) {
            LOG.info("not every record of a copy can be read: {}", file, e);
        }
        return new Verification(file, home.canonical).of(database, facts);
    }

    private @Nullable Problem outside(Path copy) {
        Problem outside = probe.outside(copy);
        return outside != null || home.isOpenHere(real(copy)) ? outside : Probe.header(copy);
    }

    private static boolean named(Path file) {
        return String.valueOf(file.getFileName()).endsWith(".witness");
    }

    private static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            return file.toAbsolutePath().normalize();
        }
    }

    /** A look that takes little time; empty when the file is no logbook or cannot even be looked at. */
    private Optional<Copy> glance(Path file) {
        if (outside(file) != null) {
            return Optional.empty();
        }
        try (Database database = Restoring.open(home, file)) {
            database.within(GLANCE);
            if (database.number("file/application_id") != LogbookSchema.APPLICATION_ID
                    || database.number("file/has_table", "amendment") != 1) {
                return Optional.empty();
            }
            String team = database.text("logbook/team");
            long[] held = {0, 0};
            database.each("logbook/held", row -> {
                held[0] = row.getLong(1);
                held[1] = row.getLong(2);
            });
            return Optional.of(new Copy(
                    file,
                    Home.idOf(database),
                    team.isBlank() ? nameOf(file) : team,
                    CopyName.of(file).map(CopyName::made).orElseGet(() -> changed(file)),
                    held[0],
                    held[1] == 0 ? null : Instant.ofEpochMilli(held[1]),
                    lastRun(database)));
        } catch (SQLException | IllegalArgumentException e) {
            LOG.info("no copy of a logbook: {}", file, e);
            return Optional.empty();
        }
    }

    private static @Nullable Moment lastRun(Database database) throws SQLException {
        List<Moment> last = new ArrayList<>();
        database.each(
                "run/last", row -> last.add(Moment.of(Instant.ofEpochMilli(row.getLong(1)), zone(row.getString(2)))));
        return last.isEmpty() ? null : last.get(0);
    }

    private static ZoneId zone(String name) {
        try {
            return ZoneId.of(name);
        } catch (DateTimeException e) {
            return ZoneId.systemDefault();
        }
    }

    private static Instant changed(Path file) {
        try {
            return Files.getLastModifiedTime(file).toInstant();
        } catch (IOException e) {
            return Instant.EPOCH;
        }
    }
}
