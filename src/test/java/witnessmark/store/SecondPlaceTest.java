package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.LogbookCopies.Copy;
import witnessmark.logbook.port.SecondPlace;
import witnessmark.logbook.port.SecondPlace.Made;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Copies on a stick: whole or not there, and nothing else on it is touched. */
class SecondPlaceTest {
    @TempDir
    private Path folder;

    private TestLogbooks logbooks;
    private Logbook logbook;
    private Path stick;

    @BeforeEach
    void make() throws IOException {
        logbooks = new TestLogbooks(folder);
        logbook = logbooks.create();
        TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
        stick = Files.createDirectories(folder.resolve("stick"));
    }

    @AfterEach
    void close() {
        logbook.close();
    }

    @Test
    void each_copy_lies_beside_the_older_ones_and_restores() throws IOException {
        SecondPlace second = logbook.secondPlace();
        assertThat(second.isThere(stick)).isFalse();
        Outcome<Made> begun = second.begin(stick);
        assertThat(second.known(stick))
                .as("as a test has no stick")
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.PLACE_ON_SAME_DISK);
        Sentences.complete(second.known(stick));
        String holds = begun.orThrow().holds();
        assertThat(second.firstWrittenAfter(holds)).as("all is there").isEmpty();

        TestLogbooks.write(logbook, Garage.made(new Car("8", ""))).orThrow();
        assertThat(second.firstWrittenAfter(holds)).isPresent();
        Made next = second.write(stick).orThrow();
        assertThat(second.firstWrittenAfter(next.holds())).isEmpty();
        assertThat(copies()).hasSize(2).contains(next.file(), begun.orThrow().file());
        assertThat(logbooks.files.copies().in(stick).orThrow())
                .extracting(Copy::records)
                .containsExactly(2L, 1L);
        Path back = folder.resolve("back.witness");
        logbooks.files.copies().restore(next.file(), back).orThrow();
        try (Logbook restored = logbooks.files.open(back).orThrow()) {
            assertThat(restored.facts().of(Car.class).all()).hasSize(2);
        }
        assertThat(Files.getPosixFilePermissions(next.file()))
                .as("for their owner alone")
                .hasSize(2);
    }

    @Test
    void what_was_written_with_the_clock_set_back_is_missing_in_the_copy_all_the_same() {
        Made made = logbook.secondPlace().begin(stick).orThrow();
        logbooks.clock.addAndGet(-400L * 86_400_000);
        TestLogbooks.write(logbook, Garage.made(new Car("8", ""))).orThrow();
        assertThat(logbook.secondPlace().firstWrittenAfter(made.holds())).isPresent();
        Made next = logbook.secondPlace().write(stick).orThrow();
        assertThat(logbook.secondPlace().firstWrittenAfter(next.holds())).isEmpty();
        assertThat(logbook.secondPlace().firstWrittenAfter("of a logbook restored since"))
                .isPresent();
    }

    @Test
    void a_stick_pulled_out_in_the_midst_leaves_the_older_copy_whole_and_no_half_one() throws IOException {
        Made first = logbook.secondPlace().begin(stick).orThrow();
        String before = FolderState.hash(first.file());
        TestLogbooks.write(logbook, Garage.made(new Car("8", ""))).orThrow();
        SecondPlace pulled = place((from, to) -> {
            byte[] all = Files.readAllBytes(from);
            Files.write(to, java.util.Arrays.copyOf(all, all.length / 2));
            throw new IOException("Input/output error");
        });
        assertThat(Sentences.only(pulled.write(stick), ProblemKind.PLACE_FAILED))
                .contains("older copies there are whole");
        assertThat(FolderState.hash(first.file())).isEqualTo(before);
        assertThat(copies()).containsExactly(first.file());
        assertThat(rest()).isEmpty();

        SecondPlace lying = place((from, to) -> {
            byte[] all = Files.readAllBytes(from);
            all[all.length - 1] ^= 1;
            Files.write(to, all);
        });
        Sentences.only(lying.write(stick), ProblemKind.PLACE_FAILED);
        assertThat(copies()).as("what reads otherwise is no copy").containsExactly(first.file());
        assertThat(logbook.secondPlace().write(stick).didWork()).as("in again").isTrue();
    }

    @Test
    void a_stick_that_is_not_there_is_not_taken_for_the_folder_it_is_mounted_in() throws IOException {
        logbook.secondPlace().begin(stick).orThrow();
        Path out = Files.move(stick, folder.resolve("pulled out"));
        assertThat(logbook.secondPlace().isThere(stick)).isFalse();
        Sentences.only(logbook.secondPlace().write(stick), ProblemKind.PLACE_GONE);
        Files.createDirectories(stick); // the empty mount point
        assertThat(logbook.secondPlace().isThere(stick)).isFalse();
        Sentences.only(logbook.secondPlace().write(stick), ProblemKind.PLACE_GONE);
        assertThat(stick).isEmptyDirectory();
        Files.delete(stick);
        Files.move(out, stick);
        assertThat(logbook.secondPlace().write(stick).didWork()).isTrue();
    }

    @Test
    void what_it_did_not_write_is_neither_written_over_nor_thinned_out() throws IOException {
        logbook.secondPlace().begin(stick).orThrow();
        Path ours = copies().get(0).getParent();
        Path note = Files.writeString(ours.resolve("team-20200101T000000000Z.witness"), "not a copy, by its look one");
        Path other = folder.resolve("other.witness");
        try (Logbook another = logbooks.files.create(other).orThrow()) {
            TestLogbooks.write(another, Garage.made(new Car("99", ""))).orThrow();
        }
        Path strange = Files.copy(other, ours.resolve("team-20200102T000000000Z.witness"));
        String before = FolderState.hash(strange);
        for (int i = 0; i < 40; i++) {
            logbooks.clock.addAndGet(86_400_000);
            assertThat(logbook.secondPlace().write(stick).didWork()).isTrue();
        }
        assertThat(note).hasContent("not a copy, by its look one");
        assertThat(FolderState.hash(strange)).isEqualTo(before);
        assertThat(copies())
                .as("ten, seven days, four weeks and the two strangers")
                .hasSizeBetween(10, 23);
    }

    @Test
    void one_after_every_saving_does_not_push_out_those_of_yesterday() {
        logbook.secondPlace().begin(stick).orThrow();
        logbooks.clock.addAndGet(86_400_000);
        for (int i = 0; i < 60; i++) {
            logbooks.clock.addAndGet(60_000);
            assertThat(logbook.secondPlace().write(stick).didWork()).isTrue();
        }
        List<Copy> left = logbooks.files.copies().in(stick).orThrow();
        assertThat(left).hasSizeBetween(3, 6);
        assertThat(left.get(left.size() - 1).made()).isBefore(left.get(0).made().minusSeconds(80_000));
    }

    /** An older file came in the place of the logbook and somebody goes on with it: the copies are the last that hold the rest. */
    @Test
    void a_copy_that_holds_what_the_logbook_lacks_stays_however_often_something_is_saved() throws IOException {
        logbook.close();
        byte[] older = Files.readAllBytes(logbooks.file());
        logbook = logbooks.open();
        Path backups = folder.resolve("data-device-a").resolve("backups");
        TestLogbooks.write(logbook, Garage.made(new Car("8", ""))).orThrow();
        Path whole = logbook.secondPlace().begin(stick).orThrow().file();
        logbook.close();
        List<Path> good = backedUp(backups);
        Files.write(logbooks.file(), older);
        logbook = logbooks.open();
        for (int i = 0; i < 30; i++) {
            TestLogbooks.write(logbook, Garage.made(new Car("1" + i, ""))).orThrow();
            assertThat(logbook.secondPlace().write(stick).didWork()).isTrue();
            assertThat(logbook.backUp().didWork()).isTrue();
        }
        assertThat(copies()).as("thinned otherwise").contains(whole).hasSizeLessThan(10);
        assertThat(backedUp(backups))
                .containsAll(good.subList(good.size() - 1, good.size()))
                .hasSizeLessThan(20);
    }

    private static List<Path> backedUp(Path backups) throws IOException {
        try (Stream<Path> all = Files.walk(backups)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    @Test
    void copies_of_another_logbook_are_told_and_left() throws IOException {
        Path other = folder.resolve("other.witness");
        try (Logbook another = logbooks.files.create(other).orThrow()) {
            TestLogbooks.write(another, Garage.made(new Car("99", ""))).orThrow();
            another.secondPlace().begin(stick).orThrow();
            List<Path> theirs = copies();
            logbook.secondPlace().begin(stick).orThrow();
            List<Problem> known = logbook.secondPlace().known(stick);
            assertThat(known).extracting(Problem::kind).contains(ProblemKind.COPIES_OF_ANOTHER);
            Sentences.complete(known);
            assertThat(copies()).containsAll(theirs).hasSize(2);
        }
    }

    /** Disks of its own, mounted for the test: full, read-only, gone. */
    @Test
    void a_place_that_is_full_or_read_only_or_gone_says_so_and_the_logbook_goes_on() throws Exception {
        Path disk = Files.createDirectories(folder.resolve("disk"));
        Path file = folder.resolve("theirs.witness");
        try (Child child = Child.start(folder.resolve("data"), "laptop", Bounds.ownDisks())) {
            assertThat(child.ask("shell mount -t tmpfs -o size=6m tmpfs " + disk))
                    .isEqualTo("status 0");
            child.ask("create " + file);
            child.ask("car before");
            assertThat(child.ask("begin " + disk)).startsWith("worked");
            assertThat(child.ask("car after")).isEqualTo("worked");
            child.ask("shell cat /dev/zero > " + disk.resolve("fill"));
            assertThat(child.ask("second " + disk))
                    .startsWith("did not\tPLACE_FULL\tThe second place " + disk + " is full.");
            assertThat(child.ask("car more")).isEqualTo("worked");
            child.ask("shell rm " + disk.resolve("fill"));
            assertThat(child.ask("shell mount -o remount,ro " + disk)).isEqualTo("status 0");
            assertThat(child.ask("second " + disk)).startsWith("did not\tPLACE_NOT_WRITABLE\t");
            assertThat(child.ask("shell mount -o remount,rw " + disk)).isEqualTo("status 0");
            assertThat(child.ask("second " + disk)).isEqualTo("worked");
            assertThat(child.ask("shell umount -l " + disk)).isEqualTo("status 0");
            assertThat(child.ask("second " + disk)).startsWith("did not\tPLACE_GONE\t");
            assertThat(child.ask("car last")).isEqualTo("worked");
            assertThat(child.ask("verify")).isEqualTo("worked");
        }
        assertThat(disk).as("nothing was written where the disk had been").isEmptyDirectory();
    }

    private SecondPlace place(CopiesElsewhere.Carry carry) {
        Home home = new Home(
                folder.resolve("data-device-a"),
                () -> logbooks.clock.addAndGet(1_000),
                () -> "device-a",
                new Holder("bench", "Ada"));
        Probe probe = new Probe(home);
        Backups backups = new Backups(
                home.backupFolder(logbook.identity()),
                home.clock,
                home.connections,
                (file, database) -> SqliteCopies.faults(home, probe, file, database));
        return new CopiesElsewhere(
                home,
                logbook.identity(),
                logbooks.file(),
                () -> home.connections.reader(logbooks.file()),
                backups,
                carry,
                (to, how) -> List.of());
    }

    private List<Path> copies() throws IOException {
        try (Stream<Path> all = Files.walk(stick)) {
            return all.filter(path -> path.toString().endsWith(".witness"))
                    .sorted(Comparator.naturalOrder())
                    .toList();
        }
    }

    private List<Path> rest() throws IOException {
        try (Stream<Path> all = Files.walk(stick)) {
            return all.filter(Files::isRegularFile)
                    .filter(path -> !path.toString().endsWith(".witness"))
                    .toList();
        }
    }
}
