package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.LogbookCopies;
import witnessmark.logbook.port.LogbookCopies.Copy;
import witnessmark.logbook.port.LogbookCopies.Lacks;
import witnessmark.logbook.port.LogbookCopies.Restored;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** A backup is found, told apart, and comes back as it was; nothing is written over on the way. */
class RestoringTest {
    @TempDir
    private Path folder;

    private TestLogbooks logbooks;
    private LogbookCopies copies;

    @BeforeEach
    void make() {
        logbooks = new TestLogbooks(folder);
        copies = logbooks.files.copies();
    }

    @Test
    void backups_are_listed_newest_first_with_what_is_in_them() {
        Garage garage = new Garage();
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, garage.all()).orThrow();
            logbook.backUp().orThrow();
            TestLogbooks.write(logbook, Garage.made(garage.run("Race 1", garage.car7, null, 10)))
                    .orThrow();
            logbook.backUp().orThrow();
            assertThat(copies.kept()).extracting(Copy::logbook).containsOnly(logbook.identity());
        }
        List<Copy> listed = copies.kept();
        assertThat(listed).hasSize(2).isSortedAccordingTo((a, b) -> b.made().compareTo(a.made()));
        assertThat(listed).extracting(Copy::name).containsOnly("team");
        assertThat(listed)
                .extracting(Copy::records)
                .containsExactly(garage.all().size() + 1L, (long) garage.all().size());
        assertThat(listed.get(0).lastRun()).isEqualTo(Garage.hour(10));
        assertThat(listed.get(1).lastRun()).isNull();
        assertThat(listed)
                .allSatisfy(copy -> assertThat(copies.check(copy.file())).isEmpty());
    }

    @Test
    void what_is_no_logbook_is_not_listed_and_what_is_on_a_stick_is() throws IOException {
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
        }
        Path stick = Files.createDirectories(folder.resolve("stick").resolve("deep"));
        Files.copy(logbooks.file(), stick.resolve("by hand.witness"));
        Files.writeString(stick.resolve("notes.witness"), "buy gaskets");
        Files.write(stick.resolve("empty.witness"), new byte[0]);
        assertThat(copies.in(folder.resolve("stick")).orThrow())
                .extracting(copy -> copy.file().getFileName().toString())
                .containsExactly("by hand.witness");
        Sentences.only(copies.in(folder.resolve("no such stick")), ProblemKind.NO_SUCH_FILE);
    }

    @Test
    void a_backup_comes_back_as_a_new_file_with_the_same_digest_and_never_over_another() throws Exception {
        RandomFacts random = new RandomFacts(5);
        List<Entry<?>> then;
        Path backup;
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, random.oneOfEach(Facts.none())).orThrow();
            then = all(logbook);
            backup = logbook.backUp().orThrow();
            TestLogbooks.write(logbook, Garage.made(new Car("later", ""))).orThrow();
        }
        Path to = folder.resolve("restored.witness");
        Restored restored = copies.restore(backup, to).orThrow();
        assertThat(restored.before()).isNull();
        assertThat(restored.digest()).isEqualTo(digest(backup)).isEqualTo(digest(to));
        try (Logbook logbook = logbooks.files.open(to).orThrow()) {
            assertThat(all(logbook)).isEqualTo(then);
            assertThat(logbook.verify()).isEmpty();
        }
        String before = FolderState.hash(to);
        Sentences.only(copies.restore(backup, to), ProblemKind.FILE_EXISTS);
        assertThat(FolderState.hash(to)).isEqualTo(before);
        Sentences.only(
                copies.restore(backup, folder.resolve("nowhere").resolve("a.witness")), ProblemKind.NO_SUCH_FILE);
    }

    @Test
    void in_the_place_of_the_present_one_which_is_kept_whole_beside_it() throws Exception {
        Path backup;
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
            backup = logbook.backUp().orThrow();
            TestLogbooks.write(logbook, Garage.made(new Car("8", ""))).orThrow();
            assertThat(copies.replace(backup, logbooks.file()).problems())
                    .as("open in this program")
                    .extracting(Problem::kind)
                    .containsExactly(ProblemKind.LOGBOOK_IN_USE);
        }
        Restored restored = copies.replace(backup, logbooks.file()).orThrow();
        assertThat(digest(logbooks.file())).isEqualTo(digest(backup)).isEqualTo(restored.digest());
        try (Logbook now = logbooks.open();
                Logbook was = logbooks.files.open(restored.before()).orThrow()) {
            assertThat(now.facts().of(Car.class).all()).hasSize(1);
            assertThat(was.facts().of(Car.class).all()).hasSize(2);
            assertThat(now.verify()).isEmpty();
            assertThat(was.verify()).isEmpty();
        }
        assertThat(restored.lacks()).as("car 8").isNotNull().returns(1L, Lacks::changes);

        Restored back = copies.replace(restored.before(), logbooks.file()).orThrow();
        assertThat(back.lacks())
                .as("what came back holds all of what stood there")
                .isNull();
        try (Logbook again = logbooks.open()) {
            assertThat(again.facts().of(Car.class).all()).hasSize(2);
        }
    }

    /** Where the program keeps copies nobody goes on in one, nor in that of a logbook that is not as it was written. */
    @Test
    void a_copy_opens_for_reading_only_and_stays_what_it_was() throws Exception {
        Path backup;
        Path stick = Files.createDirectories(folder.resolve("stick"));
        Path second;
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
            backup = logbook.backUp().orThrow();
            second = logbook.secondPlace().begin(stick).orThrow().file();
        }
        Path asItIs = Files.copy(backup, backup.resolveSibling(CopyName.asItIs(logbooks.file())));
        for (Path copy : List.of(backup, asItIs, second)) {
            String before = FolderState.hash(copy);
            try (Logbook looked = logbooks.files.open(copy).orThrow()) {
                assertThat(looked.readOnly().orElseThrow().kind()).isEqualTo(ProblemKind.LOGBOOK_IS_COPY);
                Sentences.complete(List.of(looked.readOnly().orElseThrow()));
                assertThat(looked.facts().of(Car.class).all()).hasSize(1);
                assertThat(TestLogbooks.write(looked, Garage.made(new Car("8", "")))
                                .didWork())
                        .isFalse();
            }
            assertThat(FolderState.hash(copy)).isEqualTo(before);
        }
        Path moved = Files.copy(backup, folder.resolve(backup.getFileName()));
        try (Logbook own = logbooks.files.open(moved).orThrow()) {
            assertThat(own.readOnly()).as("taken out of there on purpose").isEmpty();
        }
    }

    @Test
    void writes_left_beside_the_present_one_by_a_killed_program_go_with_it() throws Exception {
        Path backup;
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
            backup = logbook.backUp().orThrow();
        }
        try (Child killed = Child.start(folder.resolve("data-of-another"), "trackside")) {
            assertThat(killed.ask("open " + logbooks.file())).isEqualTo("worked");
            assertThat(killed.ask("car 8")).isEqualTo("worked");
            assertThat(copies.replace(backup, logbooks.file()).problems())
                    .as("open in another program")
                    .extracting(Problem::kind)
                    .containsExactly(ProblemKind.LOGBOOK_IN_USE);
            killed.kill();
        }
        Restored restored = copies.replace(backup, logbooks.file()).orThrow();
        try (Logbook now = logbooks.open();
                Logbook was = logbooks.files.open(restored.before()).orThrow()) {
            assertThat(now.facts().of(Car.class).all()).hasSize(1);
            assertThat(was.facts().of(Car.class).named("8"))
                    .as("saved before it was killed")
                    .isPresent();
        }
        assertThat(restored.lacks()).isNotNull().returns(1L, Lacks::changes);
    }

    @Test
    void over_a_damaged_one_too_which_stays_as_it_is_under_another_name() throws Exception {
        Path backup;
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
            backup = logbook.backUp().orThrow();
        }
        noise(logbooks.file(), 4);
        String damaged = FolderState.hash(logbooks.file());
        Restored restored = copies.replace(backup, logbooks.file()).orThrow();
        assertThat(FolderState.hash(restored.before())).isEqualTo(damaged);
        assertThat(restored.lacks()).as("nobody can tell").isNull();
        try (Logbook now = logbooks.open()) {
            assertThat(now.facts().of(Car.class).all()).hasSize(1);
        }
    }

    @Test
    void nothing_is_restored_from_a_copy_that_is_not_good_and_nothing_changes() throws Exception {
        Path backup;
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, new RandomFacts(6).oneOfEach(Facts.none()))
                    .orThrow();
            backup = logbook.backUp().orThrow();
        }
        Random random = new Random(7);
        byte[] whole = Files.readAllBytes(backup);
        int refused = 0;
        for (int i = 0; i < 20; i++) {
            byte[] flipped = whole.clone();
            flipped[100 + random.nextInt(whole.length - 100)] ^= (byte) (1 << random.nextInt(8));
            Path copy = Files.write(folder.resolve("flipped-" + i + ".witness"), flipped);
            Path to = folder.resolve("from-flipped-" + i + ".witness");
            Outcome<Restored> restored = copies.restore(copy, to);
            if (!restored.didWork()) {
                refused++;
                Sentences.complete(restored.problems());
                assertThat(to).doesNotExist();
            } else {
                assertThat(restored.orThrow().digest()).isEqualTo(digest(backup));
            }
        }
        assertThat(refused).isPositive();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.filter(path -> path.toString().endsWith(".new"))).isEmpty();
        }
    }

    @Test
    void a_logbook_whose_file_was_removed_while_open_is_saved_under_another_name() throws Exception {
        Path other = folder.resolve("other.witness");
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
            assertThat(logbook.isMovedAway()).isFalse();
            Files.delete(logbooks.file());
            assertThat(logbook.isMovedAway()).isTrue();
            Sentences.only(TestLogbooks.write(logbook, Garage.made(new Car("8", ""))), ProblemKind.FILE_MOVED_AWAY);
            assertThat(logbook.copyTo(other).orThrow()).isEqualTo(other);
            Sentences.only(logbook.copyTo(other), ProblemKind.FILE_EXISTS);
        }
        Outcome<Logbook> opened = logbooks.files.open(other);
        assertThat(Sentences.only(opened, ProblemKind.ENTRIES_KEPT_ASIDE)).contains("1 entry");
        try (Logbook there = opened.orThrow()) {
            assertThat(there.facts().of(Car.class).named("7")).isPresent();
            assertThat(there.verify()).isEmpty();
        }
    }

    /**
     * What could not be saved is typed still, and goes into the copy a while later: its time, left to the clock, has moved on. It is
     * there then, and whoever entered it again would count it twice. The same figures of before are another run.
     */
    @ParameterizedTest(name = "saved in the copy with a start {0} minutes later: told to be missing {1}")
    @CsvSource({"0, false", "20, false", "-20, true", "1440, true"})
    void what_was_saved_elsewhere_in_the_end_is_not_told_to_be_missing(int minutes, boolean told) throws Exception {
        Path other = folder.resolve("other.witness");
        Garage garage = new Garage();
        Run run = garage.run("test", null, null, 1);
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, garage.all()).orThrow();
            Files.delete(logbooks.file());
            Sentences.only(TestLogbooks.write(logbook, Garage.made(run)), ProblemKind.FILE_MOVED_AWAY);
            logbook.copyTo(other).orThrow();
        }
        try (Logbook there = logbooks.files.open(other).orThrow()) {
            Map<String, @Nullable Object> image = new TreeMap<>(EntryImage.of(Garage.made(run)));
            image.computeIfPresent("start_utc_ms", (name, start) -> (Long) start + minutes * 60_000L);
            Entry<Run> typedStill = EntryImage.entry(
                    RecordTypes.of(Run.class), Garage.made(run).id().value(), image, 1);
            TestLogbooks.write(there, typedStill).orThrow();
        }
        Outcome<Logbook> opened = logbooks.files.open(other);
        opened.orThrow().close();
        assertThat(opened.problems().stream().anyMatch(problem -> problem.kind() == ProblemKind.ENTRIES_KEPT_ASIDE))
                .isEqualTo(told);
    }

    private String digest(Path file) throws Exception {
        try (Database database = new Connections(new Sql()).frozen(file)) {
            return Digest.of(database, new Canonical());
        }
    }

    static void noise(Path file, int page) throws IOException {
        byte[] noise = new byte[4_096];
        new Random(page).nextBytes(noise);
        try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
            open.seek((page - 1) * 4_096L);
            open.write(noise);
        }
    }

    private static List<Entry<?>> all(Logbook logbook) {
        return RecordTypes.all().stream()
                .flatMap(type -> logbook.facts().of(type.kind()).all().stream())
                .<Entry<?>>map(entry -> entry)
                .toList();
    }
}
