package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** That a logbook lacks what was saved in it is told until somebody goes on without; what lacks nothing is never told to. */
class WitnessTest {
    @TempDir
    private Path folder;

    private TestLogbooks here;
    private Path older;

    @BeforeEach
    void write() throws IOException {
        here = new TestLogbooks(folder);
        older = folder.resolve("older");
        here.create().close();
        cars(here, "1", "2", "3");
        Files.copy(here.file(), older);
        cars(here, "4", "5");
    }

    private void cars(TestLogbooks laptop, String... names) {
        try (Logbook logbook = laptop.open()) {
            for (String name : names) {
                TestLogbooks.write(logbook, Garage.made(new Car(name, ""))).orThrow();
            }
        }
    }

    private void putBack(Path file) throws IOException {
        Files.copy(file, here.file(), StandardCopyOption.REPLACE_EXISTING);
    }

    private static List<Problem> opened(TestLogbooks laptop) {
        Outcome<Logbook> opened = laptop.files.open(laptop.file());
        opened.orThrow().close();
        return opened.problems();
    }

    @Test
    void an_older_copy_is_told_with_how_many_changes_are_missing_and_since_when() throws IOException {
        putBack(older);
        String said = Sentences.only(here.files.open(here.file()), ProblemKind.CHANGES_MISSING);
        assertThat(said)
                .startsWith("2 changes are missing in " + here.file().toRealPath())
                .contains("1 Jan 2026")
                .contains("older copy", "Restore a backup", "not asked again");
    }

    @Test
    void it_is_told_each_time_until_somebody_goes_on_without_and_then_never_again() throws IOException {
        putBack(older);
        assertThat(opened(here)).hasSize(1);
        cars(here, "written on in the older one");
        assertThat(opened(here)).hasSize(1);
        try (Logbook logbook = here.open()) {
            logbook.acceptMissing();
        }
        assertThat(opened(here)).isEmpty();
        cars(here, "6");
        assertThat(opened(here)).isEmpty();
    }

    @Test
    void nothing_is_told_once_the_right_file_is_back() throws IOException {
        Path right = Files.copy(here.file(), folder.resolve("right"));
        putBack(older);
        assertThat(opened(here)).hasSize(1);
        putBack(right);
        assertThat(opened(here)).isEmpty();
        putBack(older);
        assertThat(opened(here)).hasSize(1);
    }

    @Test
    void how_many_are_missing_stays_what_it_was_while_the_file_goes_on_without_them() throws IOException {
        putBack(older);
        try (Logbook logbook = here.open()) {
            logbook.acceptMissing();
        }
        Path before = Files.copy(here.file(), folder.resolve("before"));
        cars(here, "another 4", "another 5", "another 6");
        putBack(before);
        cars(here, "yet another 4", "yet another 5", "yet another 6", "and more");
        Outcome<Logbook> opened = here.files.open(here.file());
        opened.orThrow().close();
        assertThat(opened.problems()).hasSize(1);
        assertThat(Sentences.only(opened, ProblemKind.CHANGES_MISSING)).startsWith("3 changes are missing");
    }

    @Test
    void a_logbook_carried_to_another_laptop_written_there_and_carried_back_lacks_nothing() throws IOException {
        TestLogbooks there = new TestLogbooks(Files.createDirectories(folder.resolve("there")), "device-b");
        Files.copy(here.file(), there.file());
        assertThat(opened(there)).isEmpty();
        cars(there, "6", "7");
        putBack(there.file());
        assertThat(opened(here)).isEmpty();
        putBack(older);
        assertThat(Sentences.only(here.files.open(here.file()), ProblemKind.CHANGES_MISSING))
                .as("what was written there is seen here too")
                .startsWith("4 changes are missing");
    }

    @Test
    void one_that_another_laptop_wrote_on_from_an_older_copy_lacks_what_was_written_here() throws IOException {
        TestLogbooks there = new TestLogbooks(Files.createDirectories(folder.resolve("there")), "device-b");
        Files.copy(older, there.file());
        cars(there, "6", "7", "8");
        putBack(there.file());
        assertThat(Sentences.only(here.files.open(here.file()), ProblemKind.CHANGES_MISSING))
                .startsWith("2 changes are missing");
    }

    @Test
    void an_older_copy_opened_in_a_place_of_its_own_is_what_it_is() throws IOException {
        Path copy = Files.copy(older, folder.resolve("before Saturday.witness"));
        Outcome<Logbook> opened = here.files.open(copy);
        opened.orThrow().close();
        assertThat(opened.problems()).isEmpty();
        assertThat(opened(here)).isEmpty();
    }

    @Test
    void one_that_was_moved_goes_on_in_its_new_place() throws IOException {
        Path moved = Files.move(here.file(), folder.resolve("moved.witness"));
        here.files.open(moved).orThrow().close();
        Files.copy(older, moved, StandardCopyOption.REPLACE_EXISTING);
        Sentences.only(here.files.open(moved), ProblemKind.CHANGES_MISSING);
    }

    @Test
    void what_the_program_itself_restored_lacks_nothing() throws IOException {
        here.files.copies().replace(older, here.file()).orThrow();
        assertThat(opened(here)).isEmpty();
        cars(here, "6");
        Files.delete(here.file());
        here.files.copies().restore(older, here.file()).orThrow();
        assertThat(opened(here)).isEmpty();
        try (Logbook logbook = here.open()) {
            Path copy = folder.resolve("copy.witness");
            logbook.copyTo(copy).orThrow();
            here.files.open(copy).orThrow().close();
            TestLogbooks.write(logbook, Garage.made(new Car("later", ""))).orThrow();
            Files.delete(copy);
            logbook.copyTo(copy).orThrow();
            assertThat(here.files.open(copy).problems()).isEmpty();
        }
    }

    @Test
    void a_witness_torn_in_its_last_writing_still_knows_the_one_before() throws IOException {
        Path witness = witness();
        byte[] all = Files.readAllBytes(witness);
        assertThat(all).hasSize(8_192);
        for (int slot = 0; slot < 2; slot++) {
            byte[] torn = all.clone();
            torn[slot * 4_096 + 100] ^= 1;
            Files.write(witness, torn);
            putBack(older);
            assertThat(opened(here)).as("slot %d", slot).hasSize(1);
            remove(witness.getParent());
        }
    }

    @Test
    void a_witness_that_is_none_is_as_if_there_were_none() throws IOException {
        for (String text : List.of("", "noise", "\0\0\0", "a".repeat(9_000))) {
            Files.writeString(witness(), text);
            putBack(older);
            assertThat(opened(here)).as(text).isEmpty();
        }
    }

    @Test
    void that_it_cannot_be_written_hurts_no_saving() throws IOException {
        remove(witness().getParent());
        Path parent = folder.resolve("data-device-a/witness");
        try (Stream<Path> inside = Files.list(parent)) {
            for (Path each : inside.toList()) {
                Files.delete(each);
            }
        }
        Files.delete(parent);
        Files.writeString(parent, "a file where a folder ought to be");
        cars(here, "6", "7");
        assertThat(opened(here)).isEmpty();
    }

    @Test
    void after_a_failure_the_next_saving_is_seen_again() throws IOException {
        try (Logbook logbook = here.open()) {
            Path witness = witness();
            Files.delete(witness);
            TestLogbooks.write(logbook, Garage.made(new Car("6", ""))).orThrow();
        }
        assertThat(opened(here)).isEmpty();
        putBack(older);
        Sentences.only(here.files.open(here.file()), ProblemKind.CHANGES_MISSING);
    }

    @Test
    void one_open_for_reading_only_is_held_against_it_and_leaves_it_alone() throws IOException {
        putBack(older);
        try (Logbook writes = here.open()) {
            byte[] before = Files.readAllBytes(witness());
            Outcome<Logbook> second = here.files.open(here.file());
            assertThat(second.problems())
                    .extracting(Problem::kind)
                    .containsExactly(ProblemKind.LOGBOOK_IN_USE, ProblemKind.CHANGES_MISSING);
            second.orThrow().close();
            assertThat(Files.readAllBytes(witness())).isEqualTo(before);
            assertThat(writes.readOnly()).isEmpty();
        }
    }

    private Path witness() throws IOException {
        String name = SeenPlace.of(here.file().toRealPath());
        try (Stream<Path> all = Files.walk(folder.resolve("data-device-a/witness"))) {
            return all.filter(file -> file.endsWith(name)).findFirst().orElseThrow();
        }
    }

    private static void remove(Path place) throws IOException {
        try (Stream<Path> all = Files.list(place)) {
            for (Path file : all.toList()) {
                Files.delete(file);
            }
        }
    }
}
