package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;

/** One program writes a logbook; any other reads it, and says who has it, where and since when. */
class TwoProgramsTest {
    @TempDir
    private Path folder;

    private TestLogbooks logbooks;

    @BeforeEach
    void make() {
        logbooks = new TestLogbooks(folder);
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("7", ""))).orThrow();
        }
    }

    @Test
    void another_program_reads_and_names_who_writes_and_writes_once_that_one_has_closed() throws Exception {
        try (Child other = Child.start(folder.resolve("data"), "trackside")) {
            assertThat(other.ask("open " + logbooks.file())).isEqualTo("worked");
            assertThat(other.ask("car 8")).isEqualTo("worked");

            Outcome<Logbook> second = logbooks.files.open(logbooks.file());
            assertThat(Sentences.only(second, ProblemKind.LOGBOOK_IN_USE))
                    .startsWith("'" + logbooks.file().toRealPath() + "' is open on trackside, by Bea, since ")
                    .contains(Integer.toString(
                            java.time.Year.now(java.time.ZoneId.systemDefault()).getValue()))
                    .endsWith("Go on there, or have it closed there and open it again here.");
            try (Logbook reading = second.orThrow()) {
                assertThat(names(reading)).containsExactly("7", "8");
                Sentences.only(TestLogbooks.write(reading, Garage.made(new Car("9", ""))), ProblemKind.OPEN_READ_ONLY);
                assertThat(other.ask("car 10"))
                        .as("a reader is in nobody's way")
                        .isEqualTo("worked");
                assertThat(reading.verify()).isEmpty();
                assertThat(reading.backUp().didWork()).isTrue();

                try (Logbook again = logbooks.files.open(logbooks.file()).orThrow()) {
                    assertThat(again.readOnly()).isPresent();
                    assertThat(names(again)).as("what was saved meanwhile").containsExactly("10", "7", "8");
                }
                assertThat(other.ask("close")).isEqualTo("worked");

                // tried again before the one that reads is closed, as the window does
                try (Logbook writing = logbooks.files.open(logbooks.file()).orThrow()) {
                    assertThat(writing.readOnly()).isEmpty();
                    reading.close();
                    TestLogbooks.write(writing, Garage.made(new Car("9", ""))).orThrow();
                    assertThat(other.ask("open " + logbooks.file()))
                            .startsWith("except\tLOGBOOK_IN_USE\t'"
                                    + logbooks.file().toRealPath() + "' is open on bench, by Ada,");
                    assertThat(other.ask("cars")).isEqualTo("10,7,8,9");
                }
            }
            assertThat(other.ask("open " + logbooks.file())).isEqualTo("worked");
        }
    }

    @Test
    void the_same_program_opens_it_a_second_time_to_read_and_keeps_its_lock() throws Exception {
        try (Logbook first = logbooks.open();
                Child other = Child.start(folder.resolve("data"), "trackside")) {
            for (int i = 0; i < 3; i++) {
                Outcome<Logbook> second = logbooks.files.open(logbooks.file());
                Sentences.only(second, ProblemKind.LOGBOOK_IN_USE);
                second.orThrow().close();
            }
            assertThat(other.ask("open " + logbooks.file())).startsWith("except\tLOGBOOK_IN_USE\t");
            TestLogbooks.write(first, Garage.made(new Car("8", ""))).orThrow();
        }
        try (Logbook again = logbooks.open()) {
            assertThat(again.readOnly()).isEmpty();
        }
        assertThat(lockFile()).doesNotExist();
    }

    @Test
    void a_program_that_was_killed_holds_nothing_and_loses_nothing() throws Exception {
        try (Child other = Child.start(folder.resolve("data"), "trackside")) {
            assertThat(other.ask("open " + logbooks.file())).isEqualTo("worked");
            assertThat(other.ask("car 8")).isEqualTo("worked");
            assertThat(other.ask("keep half a run")).isEqualTo("IN_LOGBOOK");
            other.kill();
        }
        assertThat(lockFile()).as("left behind, and in nobody's way").exists();
        Outcome<Logbook> opened = logbooks.files.open(logbooks.file());
        assertThat(opened.problems()).isEmpty();
        try (Logbook logbook = opened.orThrow()) {
            assertThat(logbook.readOnly()).isEmpty();
            assertThat(names(logbook)).containsExactly("7", "8");
            assertThat(logbook.verify()).isEmpty();
            assertThat(logbook.drafts().find("form", "").orElseThrow().fields()).containsEntry("text", "half a run");
            TestLogbooks.write(logbook, Garage.made(new Car("9", ""))).orThrow();
        }
        assertThat(lockFile()).doesNotExist();
    }

    @Test
    void closing_a_logbook_twice_takes_nobody_elses_lock_away() throws Exception {
        Logbook first = logbooks.open();
        first.close();
        try (Child other = Child.start(folder.resolve("data"), "trackside")) {
            assertThat(other.ask("open " + logbooks.file())).isEqualTo("worked");
            first.close();
            assertThat(lockFile()).exists();
            try (Logbook second = logbooks.open()) {
                assertThat(second.readOnly()).isPresent();
            }
        }
    }

    @Test
    void a_lock_file_with_anything_in_it_is_in_nobodys_way() throws IOException {
        for (String left : List.of("", "one line", "a\nb\nc\n", "\0\0\0", "a\nb\n99999999999999999999\n")) {
            Files.writeString(lockFile(), left);
            try (Logbook logbook = logbooks.open()) {
                assertThat(logbook.readOnly()).isEmpty();
            }
        }
    }

    /** Four at once, again and again: at each moment one may write, and everybody else reads. */
    @Test
    void of_many_that_open_it_at_once_one_writes() throws Exception {
        int rounds = Integer.getInteger("races", 40);
        ExecutorService pool = Executors.newFixedThreadPool(4);
        try {
            for (int round = 0; round < rounds; round++) {
                CyclicBarrier start = new CyclicBarrier(4);
                CyclicBarrier opened = new CyclicBarrier(4);
                Callable<Boolean> one = () -> {
                    start.await();
                    try (Logbook logbook = logbooks.files.open(logbooks.file()).orThrow()) {
                        opened.await();
                        return logbook.readOnly().isEmpty();
                    }
                };
                List<Boolean> writers = new ArrayList<>();
                for (Future<Boolean> each : pool.invokeAll(List.of(one, one, one, one))) {
                    writers.add(each.get());
                }
                assertThat(writers).as("round %d", round).containsOnlyOnce(true);
            }
        } finally {
            pool.shutdownNow();
        }
    }

    /** Two programs that open and close in turns as fast as they can: nobody fails, and nobody writes beside another. */
    @Test
    void two_programs_that_race_for_it_neither_fail_nor_both_write() throws Exception {
        int rounds = Integer.getInteger("races", 160);
        try (Child one = Child.start(folder.resolve("data-1"), "one");
                Child two = Child.start(folder.resolve("data-2"), "two")) {
            for (int round = 0; round < rounds; round++) {
                one.tell("open " + logbooks.file());
                two.tell("open " + logbooks.file());
                String first = one.read();
                String second = two.read();
                assertThat(List.of(first, second))
                        .as("round %d", round)
                        .containsOnlyOnce("worked")
                        .anyMatch(answer ->
                                answer.matches("except\tLOGBOOK_IN_USE\t.* is open on (one|two), by Bea, .*"));
                one.tell("close");
                two.tell("close");
                assertThat(List.of(one.read(), two.read())).containsOnly("worked");
            }
        }
    }

    private Path lockFile() {
        return folder.resolve("team.witness.lock");
    }

    private static List<String> names(Logbook logbook) {
        return logbook.facts().of(Car.class).all().stream()
                .map(entry -> entry.fact().name())
                .sorted()
                .toList();
    }
}
