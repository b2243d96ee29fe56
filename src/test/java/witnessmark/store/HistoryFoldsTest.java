package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.history.Fold;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.sample.FixedToday;

/** Records are what their amendments fold to, whatever was done, and wherever it was written. */
class HistoryFoldsTest {
    @TempDir
    private Path folder;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22})
    void after_any_writing_undo_and_redo_the_history_folds_to_the_records(long seed) {
        Random random = new Random(seed);
        RandomFacts made = new RandomFacts(seed);
        TestLogbooks logbooks = new TestLogbooks(folder);
        Desk desk = new Desk(logbooks.create(), new FixedToday(LocalDate.of(2026, 7, 8)), "Ada");
        desk.write("all kinds", made.oneOfEach(desk.logbook().facts())).orThrow();
        List<Map<UUID, Map<String, @Nullable Object>>> standing =
                new ArrayList<>(List.of(images(desk.logbook().facts())));
        int taken = 0;
        for (int step = 0; step < 60; step++) {
            int amendments = desk.logbook().history().size();
            if (random.nextInt(3) == 0 && desk.undoable().isPresent() && standing.size() > 1) {
                taken += desk.undo().didWork() ? 1 : 0;
                assertThat(desk.logbook().history().size()).isGreaterThanOrEqualTo(amendments);
            } else if (random.nextInt(3) == 0 && desk.redoable().isPresent()) {
                desk.redo();
            } else {
                Map<UUID, Entry<?>> edits = new LinkedHashMap<>();
                for (int i = 0; i < 3; i++) {
                    Entry<?> edited = made.edited(
                            made.any(desk.logbook().facts()), desk.logbook().facts());
                    edits.put(edited.id().value(), edited);
                }
                desk.write("edits", List.copyOf(edits.values()));
                standing.add(images(desk.logbook().facts()));
            }
            assertFolds(desk.logbook());
        }
        assertThat(taken).isPositive();
        assertThat(desk.logbook().verify()).isEmpty();
        desk.logbook().close();
        try (Logbook again = logbooks.open()) {
            assertFolds(again);
        }
    }

    /** Undo gives every record's content back but for what was new, which is struck out. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {31})
    void undoing_everything_comes_back_to_where_it_began_and_redoing_to_where_it_ended(long seed) {
        RandomFacts made = new RandomFacts(seed);
        Desk desk = new Desk(new TestLogbooks(folder).create(), new FixedToday(LocalDate.of(2026, 7, 8)), "Ada");
        desk.logbook()
                .write(new witnessmark.logbook.port.Change("Ada", "before", made.oneOfEach(Facts.none())))
                .orThrow();
        Map<UUID, Map<String, @Nullable Object>> began = images(desk.logbook().facts());
        int changes = 0;
        for (int i = 0; i < 25; i++) {
            Outcome<Written> written = desk.write(
                    "edit",
                    List.of(made.edited(
                            made.any(desk.logbook().facts()), desk.logbook().facts())));
            // an edit that happens to change nothing has nothing to take back
            boolean changed =
                    written.didWork() && !written.orThrow().amendments().isEmpty();
            changes += changed ? 1 : 0;
        }
        Map<UUID, Map<String, @Nullable Object>> ended = images(desk.logbook().facts());
        for (int i = 0; i < changes; i++) {
            desk.undo().orThrow();
        }
        assertThat(images(desk.logbook().facts())).isEqualTo(began);
        for (int i = 0; i < changes; i++) {
            desk.redo().orThrow();
        }
        assertThat(images(desk.logbook().facts())).isEqualTo(ended);
        desk.logbook().close();
    }

    /**
     * Three laptops with a copy of one logbook each, their clocks apart, go on alone. Their histories brought together
     * fold to the same records in every order, repeats or not, and the fold is what a plain search for the last writer
     * of each column finds.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {41, 42, 43})
    void histories_that_went_apart_fold_to_the_same_records_in_any_order(long seed) throws Exception {
        Random random = new Random(seed);
        TestLogbooks first = new TestLogbooks(Files.createDirectories(folder.resolve("a")), "device-a");
        try (Logbook logbook = first.create()) {
            TestLogbooks.write(logbook, new RandomFacts(seed).oneOfEach(Facts.none()))
                    .orThrow();
        }
        List<TestLogbooks> laptops = new ArrayList<>(List.of(first));
        for (String name : List.of("b", "c")) {
            TestLogbooks copy = new TestLogbooks(Files.createDirectories(folder.resolve(name)), "device-" + name);
            Files.copy(first.file(), copy.file());
            copy.clock.addAndGet((random.nextInt(3) - 1) * 3_600_000L);
            laptops.add(copy);
        }
        List<List<Amendment>> histories = new ArrayList<>();
        for (TestLogbooks laptop : laptops) {
            RandomFacts made = new RandomFacts(random.nextLong());
            try (Logbook logbook = laptop.open()) {
                for (int i = 0; i < 20; i++) {
                    TestLogbooks.write(logbook, List.of(made.edited(made.any(logbook.facts()), logbook.facts())));
                }
                assertFolds(logbook);
                assertThat(logbook.verify()).isEmpty();
                histories.add(logbook.history());
            }
        }
        List<Amendment> all = histories.stream().flatMap(List::stream).toList(); // what they share three times over
        var folded = Fold.records(all);

        assertThat(folded).isEqualTo(lastWriters(all));
        for (int i = 0; i < 6; i++) {
            List<List<Amendment>> order = new ArrayList<>(histories);
            Collections.shuffle(order, random);
            assertThat(Fold.records(order.stream().flatMap(List::stream).toList()))
                    .isEqualTo(folded);
            List<Amendment> mixed = new ArrayList<>(all);
            Collections.shuffle(mixed, random);
            assertThat(Fold.records(mixed)).isEqualTo(folded);
        }
        for (UUID record : all.stream().map(Amendment::record).distinct().toList()) {
            List<Amendment> ofOne =
                    all.stream().filter(a -> a.record().equals(record)).toList();
            assertThat(Fold.record(ofOne))
                    .isEqualTo(folded.get(ofOne.get(0).table()).get(record));
        }
    }

    /** For each column of each record the value with the greatest of (milliseconds, tick, device, number). */
    private static Map<String, Map<UUID, Map<String, @Nullable Object>>> lastWriters(Collection<Amendment> all) {
        Map<String, Map<UUID, Map<String, @Nullable Object>>> tables = new TreeMap<>();
        Map<String, Amendment> winner = new HashMap<>();
        for (Amendment amendment : all) {
            amendment.after().forEach((column, value) -> {
                String cell = amendment.record() + " " + column;
                Amendment before = winner.get(cell);
                if (before == null || later(amendment, before)) {
                    winner.put(cell, amendment);
                    tables.computeIfAbsent(amendment.table(), t -> new TreeMap<>())
                            .computeIfAbsent(amendment.record(), r -> new TreeMap<>())
                            .put(column, value);
                }
            });
        }
        return tables;
    }

    private static boolean later(Amendment one, Amendment other) {
        if (one.clock().millis() != other.clock().millis()) {
            return one.clock().millis() > other.clock().millis();
        }
        if (one.clock().tick() != other.clock().tick()) {
            return one.clock().tick() > other.clock().tick();
        }
        int device = one.device().compareTo(other.device());
        return device != 0 ? device > 0 : one.number() > other.number();
    }

    private static void assertFolds(Logbook logbook) {
        Map<UUID, Map<String, @Nullable Object>> folded = new TreeMap<>();
        Fold.records(logbook.history()).values().forEach(folded::putAll);
        assertThat(folded).isEqualTo(images(logbook.facts()));
    }

    private static Map<UUID, Map<String, @Nullable Object>> images(Facts facts) {
        Map<UUID, Map<String, @Nullable Object>> images = new TreeMap<>();
        Stream<RecordType<?>> types = RecordTypes.all().stream();
        types.forEach(type -> facts.of(type.kind())
                .all()
                .forEach(entry -> images.put(entry.id().value(), EntryImage.of(entry))));
        return images;
    }
}
