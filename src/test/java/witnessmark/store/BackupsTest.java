package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Every logbook has good copies of it elsewhere, and no trouble with a copy stands in the way of work. */
class BackupsTest {
    @TempDir
    private Path folder;

    private TestLogbooks logbooks;

    @BeforeEach
    void make() {
        logbooks = new TestLogbooks(folder);
        logbooks.clock.set(System.currentTimeMillis());
    }

    @Test
    void a_logbook_is_backed_up_on_closing_and_opening_when_something_was_written_since() throws Exception {
        Logbook logbook = logbooks.create();
        assertThat(backups()).isEmpty();
        TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
        logbook.close();
        assertThat(backups()).as("on closing").hasSize(1);

        logbooks.open().close();
        assertThat(backups()).as("nothing was written since").hasSize(1);

        try (Child other = Child.start(folder.resolve("data-of-another"), "trackside")) {
            assertThat(other.ask("open " + logbooks.file())).isEqualTo("worked");
            assertThat(other.ask("car 8")).isEqualTo("worked");
            other.kill();
        }
        changedAMinuteLater();
        try (Logbook again = logbooks.open()) {
            assertThat(backups()).as("on opening").hasSize(2);
            assertThat(factsIn(backups().get(1))).isEqualTo(all(again.facts()));
        }
        assertThat(backups()).hasSize(2);
    }

    @Test
    void a_backup_opens_as_a_logbook_and_holds_what_the_logbook_holds() throws IOException {
        RandomFacts random = new RandomFacts(3);
        Path copy;
        List<Entry<?>> then;
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, random.oneOfEach(Facts.none())).orThrow();
            for (int i = 0; i < 20; i++) {
                TestLogbooks.write(logbook, List.of(random.edited(random.any(logbook.facts()), logbook.facts())));
            }
            then = all(logbook.facts());
            copy = logbook.backUp().orThrow();
            TestLogbooks.write(logbook, random.oneOfEach(logbook.facts())).orThrow();
            assertThat(factsIn(copy)).isEqualTo(then).isNotEqualTo(all(logbook.facts()));
        }
        Path restored = Files.copy(copy, folder.resolve("restored.witness"));
        try (Logbook logbook = logbooks.files.open(restored).orThrow()) {
            assertThat(all(logbook.facts())).isEqualTo(then);
            assertThat(logbook.verify()).isEmpty();
            TestLogbooks.write(logbook, random.oneOfEach(logbook.facts())).orThrow();
            assertThat(logbook.verify()).isEmpty();
        }
    }

    @Test
    void where_no_backup_can_be_made_a_sentence_says_so_and_work_goes_on() throws IOException {
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
            Files.createDirectories(dataFolder());
            Files.writeString(dataFolder().resolve("backups"), "a file where the folder should be");

            Outcome<Path> backup = logbook.backUp();

            assertThat(backup.didWork()).isFalse();
            assertThat(Sentences.only(backup, ProblemKind.CANNOT_WRITE)).contains("backups");
            TestLogbooks.write(logbook, Garage.made(new Car("8", ""))).orThrow();
        }
        changedAMinuteLater();
        Outcome<Logbook> opened = logbooks.files.open(logbooks.file());
        Sentences.only(opened, ProblemKind.CANNOT_WRITE);
        try (Logbook logbook = opened.orThrow()) {
            assertThat(logbook.readOnly()).isEmpty();
            assertThat(logbook.facts().of(Car.class).all()).hasSize(2);
            TestLogbooks.write(logbook, Garage.made(new Car("9", ""))).orThrow();
        }
    }

    @Test
    void a_logbook_with_a_changed_row_is_copied_as_it_is_beside_the_good_backups_and_told_of() throws Exception {
        Entry<Car> car = Garage.made(new Car("7", ""));
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, car).orThrow();
        }
        Path good = backups().get(0);
        String before = FolderState.hash(good);
        pastTheGuards("UPDATE car SET name = '17'", "car_amended");

        changedAMinuteLater();

        Outcome<Logbook> opened = logbooks.files.open(logbooks.file());

        assertThat(Sentences.only(opened, ProblemKind.RECORD_NOT_AS_WRITTEN)).startsWith("The car '17' is not as");
        try (Logbook logbook = opened.orThrow()) {
            Entry<Car> other = Garage.made(new Car("8", ""));
            TestLogbooks.write(logbook, other).orThrow();
            Outcome<Path> copied = logbook.backUp();
            Sentences.only(copied, ProblemKind.RECORD_NOT_AS_WRITTEN);
            assertThat(factsIn(copied.orThrow())).isEqualTo(all(logbook.facts()));
            assertThat(backups()).as("never counted among the good").containsExactly(good);

            TestLogbooks.write(logbook, new Entry<>(car.id(), car.fact(), car.standing(), null, 2))
                    .orThrow();
            assertThat(logbook.verify()).as("put right").isEmpty();
            assertThat(logbook.backUp().problems()).isEmpty();
        }
        assertThat(FolderState.hash(good)).isEqualTo(before);
    }

    @Test
    void a_logbook_removed_while_it_is_open_is_backed_up_from_what_is_still_there() throws IOException {
        Logbook logbook = logbooks.create();
        TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
        List<Entry<?>> all = all(logbook.facts());
        Files.delete(logbooks.file());

        Outcome<Path> backup = logbook.backUp();

        Sentences.only(backup, ProblemKind.FILE_MOVED_AWAY);
        assertThat(factsIn(backup.orThrow())).isEqualTo(all);
        assertThat(logbook.verify()).extracting(Problem::kind).containsExactly(ProblemKind.FILE_MOVED_AWAY);
        logbook.close();
        assertThat(backups()).isNotEmpty();
        assertThat(factsIn(backups().get(backups().size() - 1))).isEqualTo(all);
    }

    @Test
    void another_logbook_put_in_its_place_is_neither_written_nor_taken_for_it() throws IOException {
        Path other = folder.resolve("other.witness");
        try (Logbook made = logbooks.files.create(other).orThrow()) {
            TestLogbooks.write(made, Garage.made(new Car("99", ""))).orThrow();
        }
        Logbook logbook = logbooks.create();
        TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
        List<Entry<?>> all = all(logbook.facts());
        Files.move(other, logbooks.file(), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        String before = FolderState.hash(logbooks.file());

        Sentences.only(TestLogbooks.write(logbook, Garage.made(new Car("8", ""))), ProblemKind.FILE_MOVED_AWAY);
        logbook.close();

        assertThat(FolderState.hash(logbooks.file())).isEqualTo(before);
        assertThat(factsIn(backups().get(backups().size() - 1))).isEqualTo(all);
        try (Logbook there = logbooks.open()) {
            assertThat(there.facts().of(Car.class).named("99")).isPresent();
            assertThat(there.verify()).isEmpty();
        }
    }

    /**
     * What SQLite keeps beside a file after a kill is taken for the file's own, whatever lies there. With another
     * logbook in its place, or an older copy of the same, nothing may be mixed.
     */
    @Test
    void writes_left_by_a_killed_program_are_not_mixed_into_another_logbook_put_in_its_place() throws Exception {
        Path other = folder.resolve("other.witness");
        try (Logbook made = logbooks.files.create(other).orThrow()) {
            TestLogbooks.write(made, Garage.made(new Car("99", ""))).orThrow();
        }
        Path log = killedWithWritesLeft();
        Path own = Files.copy(logbooks.file(), folder.resolve("own.witness"));
        Files.move(other, logbooks.file(), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        String before = FolderState.hash(logbooks.file()) + FolderState.hash(log);

        Outcome<Logbook> opened = logbooks.files.open(logbooks.file());

        assertThat(opened.didWork()).isFalse();
        assertThat(Sentences.only(opened, ProblemKind.LOG_OF_ANOTHER)).contains("Move " + log.toRealPath());
        assertThat(FolderState.hash(logbooks.file()) + FolderState.hash(log)).isEqualTo(before);

        Files.move(own, logbooks.file(), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        try (Logbook logbook = logbooks.open()) {
            assertThat(logbook.facts().of(Car.class).all())
                    .as("with the one they belong to")
                    .hasSize(2);
        }
    }

    @Test
    void an_older_copy_with_newer_writes_beside_it_is_whole_or_refused() throws Exception {
        Path log = killedWithWritesLeft();
        for (Path older : backups()) {
            Files.copy(older, logbooks.file(), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            String before = FolderState.hash(logbooks.file()) + FolderState.hash(log);
            Outcome<Logbook> opened = logbooks.files.open(logbooks.file());
            if (opened.didWork()) {
                try (Logbook logbook = opened.orThrow()) {
                    assertThat(logbook.verify()).isEmpty();
                    assertThat(logbook.facts().of(Car.class).all()).isNotEmpty();
                }
            } else {
                Sentences.complete(opened.problems());
                assertThat(FolderState.hash(logbooks.file()) + FolderState.hash(log))
                        .isEqualTo(before);
            }
        }
    }

    /** As by somebody who takes the file along on a stick while the program is open. */
    @Test
    void the_file_alone_holds_what_was_saved_once_the_form_has_let_go_of_its_draft() throws IOException {
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
            logbook.drafts().discard("form", "");
            assertThat(factsIn(logbooks.file())).isEqualTo(all(logbook.facts()));
        }
    }

    @Test
    void a_clock_set_back_keeps_nobody_from_being_backed_up() throws IOException {
        try (Logbook logbook = logbooks.create()) {
            for (int i = 0; i < 14; i++) {
                TestLogbooks.write(logbook, Garage.made(new Car("7-" + i, ""))).orThrow();
                logbooks.clock.addAndGet(i == 11 ? -400L * 86_400_000 : 3_600_000);
                Path made = logbook.backUp().orThrow();
                assertThat(backups()).as("after %d", i).contains(made).last().isEqualTo(made);
            }
            assertThat(factsIn(backups().get(backups().size() - 1))).hasSize(14);
        }
    }

    private Path killedWithWritesLeft() throws Exception {
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
        }
        try (Child killed = Child.start(folder.resolve("data-of-another"), "trackside")) {
            assertThat(killed.ask("open " + logbooks.file())).isEqualTo("worked");
            assertThat(killed.ask("car 8")).isEqualTo("worked");
            killed.kill();
        }
        Path log = folder.resolve("team.witness-wal");
        assertThat(log).isNotEmptyFile();
        return log;
    }

    /** It goes into the names of folders. */
    @Test
    void a_logbook_whose_own_id_is_none_is_damaged_and_no_backup_goes_astray() throws Exception {
        logbooks.create().close();
        pastTheGuards("UPDATE logbook SET id = '../../elsewhere'", null);

        Sentences.only(logbooks.files.open(logbooks.file()), ProblemKind.LOGBOOK_DAMAGED);
        assertThat(folder.resolve("elsewhere")).doesNotExist();
    }

    private void pastTheGuards(String change, @org.jspecify.annotations.Nullable String guard) throws SQLException {
        try (Connection connection = Connections.unguarded().createConnection(Connections.address(logbooks.file()));
                Statement statement = connection.createStatement()) {
            String text = guard == null
                    ? ""
                    : statement
                            .executeQuery("SELECT sql FROM sqlite_schema WHERE name = '" + guard + "'")
                            .getString(1);
            if (guard != null) {
                statement.executeUpdate("DROP TRIGGER " + guard);
            }
            statement.executeUpdate(change);
            if (guard != null) {
                statement.executeUpdate(text);
            }
        }
    }

    private void changedAMinuteLater() throws IOException {
        Files.setLastModifiedTime(logbooks.file(), FileTime.fromMillis(logbooks.clock.addAndGet(60_000)));
    }

    private Path dataFolder() {
        return folder.resolve("data-device-a");
    }

    /** The good backups of the one logbook that has any under the name team, oldest first. */
    private List<Path> backups() throws IOException {
        if (!Files.isDirectory(dataFolder().resolve("backups"))) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(dataFolder().resolve("backups"))) {
            return all.filter(path -> path.getFileName().toString().matches("team-\\d{8}T\\d{9}Z\\.witness"))
                    .sorted()
                    .toList();
        }
    }

    /** Read by a program that has nothing to do with the first. */
    private List<Entry<?>> factsIn(Path copy) throws IOException {
        Path own = Files.createTempDirectory(folder, "own");
        Path file = Files.copy(copy, own.resolve("copy-" + UUID.randomUUID() + ".witness"));
        try (Logbook logbook = new TestLogbooks(own, "reader").files.open(file).orThrow()) {
            return all(logbook.facts());
        }
    }

    private static List<Entry<?>> all(Facts facts) {
        return RecordTypes.all().stream()
                .flatMap(type -> facts.of(type.kind()).all().stream())
                .<Entry<?>>map(entry -> entry)
                .sorted(java.util.Comparator.comparing(entry -> entry.id().text()))
                .toList();
    }
}
