package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;
import witnessmark.store.EmergencyJournal;
import witnessmark.store.Garage;
import witnessmark.store.Sentences;
import witnessmark.store.TestLogbooks;

/**
 * The file of an open logbook is removed, renamed, replaced by an older copy or by another logbook, or its folder is
 * renamed, in the midst of work. From then on nothing is said to be saved; what was typed lies in the emergency journal,
 * what was saved before is in a backup or in the file where it went, and what lies at the path now is left alone.
 */
class VanishedPathTest {
    private static final int OF_EACH = Numbers.of("vanished", 20, 400);

    @TempDir(factory = InMemory.class)
    Path folder;

    private byte[] whole;
    private byte[] other;

    private enum Happens {
        REMOVED,
        RENAMED,
        OLDER_COPY_OVER_IT,
        ANOTHER_LOGBOOK_OVER_IT,
        FOLDER_RENAMED
    }

    @BeforeEach
    void make() throws IOException {
        whole = made("whole", "7");
        other = made("other", "another team's");
    }

    private byte[] made(String name, String car) throws IOException {
        TestLogbooks logbooks = new TestLogbooks(Files.createDirectories(folder.resolve(name)));
        try (Logbook logbook = logbooks.create()) {
            TestLogbooks.write(logbook, Garage.made(new Car(car, ""))).orThrow();
        }
        return Files.readAllBytes(logbooks.file());
    }

    @Test
    void once_the_file_is_no_longer_there_nothing_is_said_to_be_saved_and_nothing_typed_is_lost() throws IOException {
        Random random = Numbers.random("vanished");
        List<String> wrong = new ArrayList<>();
        int tried = 0;
        for (Happens what : Happens.values()) {
            for (int i = 0; i < OF_EACH; i++) {
                String fault = tried(what, i, 1 + random.nextInt(4));
                tried++;
                if (!fault.isEmpty()) {
                    wrong.add(what + " " + i + ": " + fault);
                }
            }
        }
        Numbers.tell("R7 vanished paths", Map.of("tried", tried, "wrong", wrong.size()));
        assertThat(wrong).as("seed %d", Numbers.seed()).isEmpty();
    }

    private String tried(Happens what, int number, int writes) throws IOException {
        Path root = Files.createDirectories(folder.resolve(what + "-" + number));
        TestLogbooks logbooks = new TestLogbooks(root);
        Path place = Files.createDirectories(root.resolve("place"));
        Path file = place.resolve("team.witness");
        WholeLogbook.put(file, whole);
        Set<String> saved = new TreeSet<>(Set.of("7"));
        Path now = file;
        byte[] there = null;
        try (Logbook logbook = logbooks.files.open(file).orThrow()) {
            for (int i = 0; i < writes; i++) {
                TestLogbooks.write(logbook, Garage.made(new Car("before " + i, "")))
                        .orThrow();
                saved.add("before " + i);
            }
            now = happens(what, place);
            there = Files.exists(file) ? Files.readAllBytes(file) : null;
            Outcome<?> refused = TestLogbooks.write(logbook, Garage.made(new Car("after", "")));
            if (refused.didWork()) {
                return "said to be saved into nowhere";
            }
            Sentences.only(refused, ProblemKind.FILE_MOVED_AWAY);
        }
        boolean kept = EmergencyJournal.in(root.resolve("data-device-a"), () -> 0).read().stream()
                .anyMatch(entry -> "after".equals(entry.image().get("name")));
        if (!kept) {
            return "what was typed is not in the emergency journal";
        }
        if (there != null && !java.util.Arrays.equals(there, Files.readAllBytes(file))) {
            return "what lies at the path now was written to";
        }
        return isSomewhere(saved, now, root.resolve("data-device-a/backups"))
                ? ""
                : "what was saved is nowhere: " + saved;
    }

    /** @return where the logbook's file is from then on */
    private Path happens(Happens what, Path place) throws IOException {
        Path file = place.resolve("team.witness");
        Path away = place.resolve("team (1).witness");
        switch (what) {
            case REMOVED -> Files.delete(file);
            case RENAMED -> Files.move(file, away);
            case OLDER_COPY_OVER_IT, ANOTHER_LOGBOOK_OVER_IT -> {
                Path copy = place.resolve("copy");
                Files.write(copy, what == Happens.OLDER_COPY_OVER_IT ? whole : other);
                Files.move(copy, file, StandardCopyOption.REPLACE_EXISTING);
            }
            case FOLDER_RENAMED -> {
                Path moved = place.resolveSibling("place (1)");
                Files.move(place, moved);
                Files.createDirectories(place);
                away = moved.resolve("team.witness");
            }
        }
        return away;
    }

    private boolean isSomewhere(Set<String> saved, Path moved, Path backups) throws IOException {
        List<Path> places = new ArrayList<>();
        if (Files.exists(moved)) {
            places.add(moved);
        }
        try (Stream<Path> all = Files.walk(backups)) {
            all.filter(path -> path.toString().endsWith(".witness")).forEach(places::add);
        }
        TestLogbooks reader = new TestLogbooks(Files.createDirectories(folder.resolve("reader")));
        for (Path each : places) {
            Outcome<Logbook> opened = reader.files.open(each);
            if (opened.didWork()) {
                try (Logbook logbook = opened.orThrow()) {
                    Set<String> cars = logbook.facts().of(Car.class).all().stream()
                            .map(car -> car.fact().name())
                            .collect(Collectors.toSet());
                    if (cars.containsAll(saved) && logbook.verify().isEmpty()) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
