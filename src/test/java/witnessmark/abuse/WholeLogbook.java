package witnessmark.abuse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.store.Garage;
import witnessmark.store.RandomFacts;
import witnessmark.store.TestLogbooks;

/**
 * A small logbook with something of every kind in it, some of it corrected and struck out, as bytes that can be damaged;
 * what it says; and what it was like a few changes earlier.
 */
final class WholeLogbook {
    final TestLogbooks logbooks;
    final byte[] bytes;
    final byte[] earlier;
    final Truth truth;

    private WholeLogbook(TestLogbooks logbooks, byte[] bytes, byte[] earlier, Truth truth) {
        this.logbooks = logbooks;
        this.bytes = bytes;
        this.earlier = earlier;
        this.truth = truth;
    }

    static WholeLogbook in(Path folder, long seed) throws IOException {
        TestLogbooks logbooks = new TestLogbooks(Files.createDirectories(folder.resolve("home")));
        RandomFacts random = new RandomFacts(seed);
        Garage garage = new Garage();
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, random.oneOfEach(logbook.facts())).orThrow();
            TestLogbooks.write(logbook, garage.all()).orThrow();
            TestLogbooks.write(
                            logbook,
                            Garage.made(Garage.fitment(garage.r1, garage.e1, garage.rods, 0, 5)),
                            Garage.made(Garage.fitment(garage.r2, garage.e1, garage.rods, 6, -1)),
                            Garage.made(Garage.inCar(garage.e1, garage.car7, 0, -1)))
                    .orThrow();
            for (int hour = 1; hour < 10; hour++) {
                TestLogbooks.write(logbook, Garage.made(garage.run("run " + hour, garage.car7, null, hour)))
                        .orThrow();
            }
        }
        byte[] earlier = Files.readAllBytes(logbooks.file());
        try (Logbook logbook = logbooks.open()) {
            for (int i = 0; i < 6; i++) {
                TestLogbooks.write(logbook, List.of(random.fresh(RecordTypes.of(Run.class), logbook.facts())))
                        .orThrow();
            }
            for (int made = 0; made < 10; ) {
                Entry<?> edited = random.edited(random.any(logbook.facts()), logbook.facts());
                made += TestLogbooks.write(logbook, List.of(edited)).didWork() ? 1 : 0;
            }
        }
        byte[] bytes = Files.readAllBytes(logbooks.file());
        try (Logbook logbook = logbooks.open()) {
            return new WholeLogbook(logbooks, bytes, earlier, Truth.of(logbook));
        }
    }

    /** Puts bytes at a path, older than the newest backup, so that opening is not about making another one. */
    static void put(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes);
        Files.setLastModifiedTime(file, FileTime.fromMillis(TestLogbooks.START - 1));
    }

    /** A path in a place of its own, under the one name of which there is a backup. */
    Path placeIn(Path folder, String name) throws IOException {
        return Files.createDirectories(folder.resolve(name))
                .resolve(logbooks.file().getFileName());
    }

    Outcome<Logbook> open(Path file) {
        return logbooks.files.open(file);
    }

    /** Takes a place away with all that lies in it. */
    static void remove(Path file) throws IOException {
        Path place = file.toAbsolutePath().getParent();
        try (Stream<Path> left = Files.list(place)) {
            for (Path each : left.toList()) {
                Files.delete(each);
            }
        }
        Files.delete(place);
    }
}
