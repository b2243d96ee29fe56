package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.store.Garage;
import witnessmark.store.Sentences;
import witnessmark.store.TestLogbooks;

/**
 * A logbook put together from files that do not belong to each other: the file of one day beside the log of another,
 * beside that of another logbook, beside one cut short or of noise, with an index of the log left over, with a journal
 * of something else. It is refused, or reads as one of those logbooks read at some moment: never a mixture.
 */
class StaleSideFilesTest {
    @TempDir(factory = InMemory.class)
    Path folder;

    private final List<Map<Object, Entry<?>>> moments = new ArrayList<>();
    private final Map<String, byte[]> mains = new TreeMap<>();
    private final Map<String, byte[]> logs = new TreeMap<>();
    private byte[] index = new byte[0];

    @BeforeEach
    void make() throws IOException {
        history("one", 0);
        history("another", 100);
        byte[] noise = new byte[20_000];
        Numbers.random("side files").nextBytes(noise);
        logs.put("noise", noise);
        byte[] log = logs.get("one-2");
        logs.put("half of one-2", Arrays.copyOf(log, log.length / 2));
        logs.put("empty", new byte[0]);
    }

    /** Writes a logbook and keeps its files at moments of its life; after each change what it says. */
    private void history(String name, int from) throws IOException {
        TestLogbooks logbooks = new TestLogbooks(Files.createDirectories(folder.resolve(name)));
        try (Logbook logbook = logbooks.create()) {
            moments.add(Truth.entries(logbook.facts()));
            cars(logbook, from, 3);
            keep(name + "-1", logbooks);
            cars(logbook, from + 10, 3);
            keep(name + "-2", logbooks);
            logbook.backUp().orThrow(); // takes the log in
            keep(name + "-3", logbooks);
            cars(logbook, from + 20, 3);
            keep(name + "-4", logbooks);
        }
        mains.put(name + "-closed", Files.readAllBytes(logbooks.file()));
    }

    private void cars(Logbook logbook, int from, int many) {
        for (int i = from; i < from + many; i++) {
            TestLogbooks.write(logbook, Garage.made(new Car("car " + i, ""))).orThrow();
            moments.add(Truth.entries(logbook.facts()));
        }
    }

    private void keep(String name, TestLogbooks logbooks) throws IOException {
        mains.put(name, Files.readAllBytes(logbooks.file()));
        logs.put(name, Files.readAllBytes(beside(logbooks.file(), "-wal")));
        index = Files.readAllBytes(beside(logbooks.file(), "-shm"));
    }

    @Test
    void files_that_do_not_belong_together_are_never_read_as_one_in_silence() throws IOException {
        Map<String, Integer> counts = new HashMap<>();
        List<String> mixed = new ArrayList<>();
        Random random = Numbers.random("side files");
        for (String main : mains.keySet()) {
            for (String log : logs.keySet()) {
                boolean withIndex = random.nextInt(3) == 0;
                boolean withJournal = random.nextInt(5) == 0;
                String what = main + " with the log " + log + (withIndex ? ", an index" : "")
                        + (withJournal ? ", a journal" : "");
                Outcome<Logbook> opened = open(main, log, withIndex, withJournal);
                Sentences.complete(opened.problems());
                counts.merge(judge(opened, what, mixed), 1, Integer::sum);
            }
        }
        Numbers.tell("R10 stale side files", counts);
        assertThat(mixed).as("seed %d", Numbers.seed()).isEmpty();
        assertThat(counts.get("refused")).isGreaterThan(10);
        assertThat(counts.get("as at a moment")).isGreaterThan(10);
    }

    /** The test itself is tested: a logbook with a car of its own, which none of the moments had. */
    @Test
    void a_mixture_would_be_noticed() throws IOException {
        TestLogbooks other = new TestLogbooks(Files.createDirectories(folder.resolve("mixed")));
        try (Logbook logbook = other.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car("car 0", ""))).orThrow();
        }
        assertThat(judge(other.files.open(other.file()), "planted", new ArrayList<>()))
                .isEqualTo("mixed");
    }

    private Outcome<Logbook> open(String main, String log, boolean withIndex, boolean withJournal) throws IOException {
        Path place = Files.createDirectories(folder.resolve(main + " " + log));
        TestLogbooks logbooks = new TestLogbooks(place);
        Files.write(logbooks.file(), mains.get(main));
        Files.write(beside(logbooks.file(), "-wal"), logs.get(log));
        if (withIndex) {
            Files.write(beside(logbooks.file(), "-shm"), index);
        }
        if (withJournal) {
            Files.write(beside(logbooks.file(), "-journal"), logs.get("noise"));
        }
        return logbooks.files.open(logbooks.file());
    }

    private String judge(Outcome<Logbook> opened, String what, List<String> mixed) {
        if (!opened.didWork()) {
            return "refused";
        }
        try (Logbook logbook = opened.orThrow()) {
            if (!logbook.verify().isEmpty()) {
                return "found by the check";
            }
            if (moments.contains(Truth.entries(logbook.facts()))) {
                return "as at a moment";
            }
            mixed.add(what);
            return "mixed";
        }
    }

    private static Path beside(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }
}
