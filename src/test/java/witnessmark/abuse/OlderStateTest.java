package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.store.Garage;
import witnessmark.store.Sentences;
import witnessmark.store.TestLogbooks;

/**
 * A logbook that lies there as it was at an earlier moment and is whole: the log of its last writes is damaged and so
 * ends too early, or an older file was put in its place. The file itself cannot tell; the program says how many changes
 * are missing. Oracle: how many were acknowledged.
 */
class OlderStateTest {
    private static final int FLIPS = Numbers.of("flips in logs", 100, 6_000);
    private static final int ROLLBACKS = Numbers.of("rollbacks", 20, 600);
    private static final int CHANGES = 24;

    @TempDir(factory = InMemory.class)
    Path folder;

    private Path place;
    private TestLogbooks logbooks;
    private Path seen;
    private byte[] last;
    private byte[] log;
    private Truth truth;
    /** Whole files, each with so many changes in it. */
    private final List<byte[]> moments = new ArrayList<>();

    @BeforeEach
    void make() throws IOException {
        place = Files.createDirectories(folder.resolve("place"));
        logbooks = new TestLogbooks(place);
        seen = folder.resolve("seen");
        try (Logbook logbook = logbooks.create()) {
            for (int i = 0; i < CHANGES; i++) {
                TestLogbooks.write(logbook, Garage.made(new Car("car " + i, "")))
                        .orThrow();
                if (i == CHANGES / 4) {
                    logbook.backUp().orThrow(); // takes the log in; from then on it grows
                }
                Path copy = folder.resolve("moment-" + i);
                logbook.copyTo(copy).orThrow();
                moments.add(Files.readAllBytes(copy));
            }
            last = Files.readAllBytes(logbooks.file());
            log = Files.readAllBytes(beside("-wal"));
            truth = Truth.of(logbook);
            copyTree(witness(), seen);
        }
        try (Stream<Path> backups = Files.list(place.resolve("data-device-a/backups"))) {
            Path ofToday = backups.findFirst().orElseThrow().resolve("team-20270101T000100000Z.witness");
            Files.write(ofToday, new byte[0]); // so that opening is not about making another
        }
        logbooks.clock.addAndGet(2 * 365 * 86_400_000L);
    }

    @Test
    void a_log_that_ends_too_early_is_told_however_it_was_damaged() throws IOException {
        Random random = Numbers.random("flips in logs");
        Map<Judgement, Integer> counts = new EnumMap<>(Judgement.class);
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < FLIPS; i++) {
            byte[] damaged = log.clone();
            int at = random.nextInt(damaged.length);
            int bit = random.nextInt(8);
            damaged[at] ^= (byte) (1 << bit);
            put(last, i % 20 == 19 ? java.util.Arrays.copyOf(log, at) : damaged);
            Judgement judgement = judge();
            counts.merge(judgement, 1, Integer::sum);
            if (judgement == Judgement.SILENTLY_WRONG) {
                wrong.add("bit " + bit + " of byte " + at);
            }
        }
        Numbers.tell("R9 damaged logs left behind", counts);
        assertThat(wrong).as("seed %d", Numbers.seed()).isEmpty();
        assertThat(counts.getOrDefault(Judgement.TOLD_WHEN_OPENED, 0))
                .as("seed %d: most flips end the log", Numbers.seed())
                .isGreaterThan(FLIPS / 2);
    }

    /** The test itself is tested: without what the program keeps outside the file nobody would know. */
    @Test
    void without_its_witness_a_log_that_ends_too_early_would_be_noticed_by_this_test() throws IOException {
        put(last, java.util.Arrays.copyOf(log, log.length / 2));
        removeTree(witness());
        assertThat(judge()).isEqualTo(Judgement.SILENTLY_WRONG);
        put(last, log);
        assertThat(judge()).isEqualTo(Judgement.HARMLESS);
    }

    @Test
    void an_older_file_put_in_its_place_is_told_with_what_is_missing() throws IOException {
        Random random = Numbers.random("rollbacks");
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < ROLLBACKS; i++) {
            int has = 1 + random.nextInt(CHANGES);
            put(moments.get(has - 1), new byte[0]);
            List<Problem> told = openedAndClosed();
            int missing = CHANGES - has;
            boolean right = missing == 0 ? told.isEmpty() : isTold(told, missing);
            if (!right) {
                wrong.add(has + " of " + CHANGES + " there: " + told);
            }
        }
        Numbers.tell("R7 older files put in place", Map.of("tried", ROLLBACKS, "wrong", wrong.size()));
        assertThat(wrong).as("seed %d", Numbers.seed()).isEmpty();
    }

    private static boolean isTold(List<Problem> told, int missing) {
        Sentences.complete(told);
        return told.size() == 1
                && told.get(0).kind() == ProblemKind.CHANGES_MISSING
                && told.get(0).facts().get(0).equals((long) missing);
    }

    private Judgement judge() {
        Outcome<Logbook> opened = logbooks.files.open(logbooks.file());
        return Judgement.of(opened, truth);
    }

    private List<Problem> openedAndClosed() {
        Outcome<Logbook> opened = logbooks.files.open(logbooks.file());
        opened.orThrow().close();
        return opened.problems();
    }

    /** The files as they are to be found, and what the program saw when the last change was saved. */
    private void put(byte[] file, byte[] beside) throws IOException {
        removeTree(witness());
        copyTree(seen, witness());
        Files.deleteIfExists(beside("-shm"));
        Files.deleteIfExists(beside("-wal"));
        WholeLogbook.put(logbooks.file(), file);
        if (beside.length > 0) {
            Files.write(beside("-wal"), beside);
        }
    }

    private Path witness() {
        return place.resolve("data-device-a/witness");
    }

    private Path beside(String ending) {
        return place.resolve(logbooks.file().getFileName() + ending);
    }

    private static void copyTree(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(path, target);
                }
            }
        }
    }

    private static void removeTree(Path tree) throws IOException {
        try (Stream<Path> all = Files.walk(tree)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Files.delete(file);
            }
        }
    }
}
