package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.history.Fold;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Logbook;

/** What is written is what is read: against a plain map that the test keeps itself. */
class RoundTripTest {
    @TempDir
    private Path folder;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void entries_of_every_kind_come_back_as_written_after_many_edits(long seed) {
        RandomFacts random = new RandomFacts(seed);
        TestLogbooks logbooks = new TestLogbooks(folder);
        Map<UUID, Entry<?>> model = new LinkedHashMap<>();
        Logbook logbook = logbooks.create();
        for (int step = 0; step < 40; step++) {
            List<Entry<?>> next = step % 8 == 0 ? random.oneOfEach(logbook.facts()) : edits(random, logbook.facts());
            TestLogbooks.write(logbook, next).orThrow();
            next.forEach(entry -> put(model, entry));
            if (step % 16 == 15) {
                logbook.close();
                logbook = logbooks.open();
            }
            assertSame(logbook.facts(), model);
        }
        assertThat(logbook.verify()).isEmpty();
        assertFoldsToTheRecords(logbook);
        logbook.close();
    }

    /** An entry written again with the same content is not written. */
    private static void put(Map<UUID, Entry<?>> model, Entry<?> entry) {
        Entry<?> before = model.get(entry.id().value());
        if (before == null || !EntryImage.of(before).equals(EntryImage.of(entry))) {
            model.put(entry.id().value(), entry);
        }
    }

    private static List<Entry<?>> edits(RandomFacts random, Facts facts) {
        Map<UUID, Entry<?>> edits = new LinkedHashMap<>();
        for (int i = 0; i < 10; i++) {
            Entry<?> edited = random.edited(random.any(facts), facts);
            edits.put(edited.id().value(), edited);
        }
        return new ArrayList<>(edits.values());
    }

    private static void assertSame(Facts facts, Map<UUID, Entry<?>> model) {
        List<Entry<?>> all = new ArrayList<>();
        RecordTypes.all().forEach(type -> all.addAll(facts.of(type.kind()).all()));
        assertThat(all).containsExactlyInAnyOrderElementsOf(model.values());
    }

    private static void assertFoldsToTheRecords(Logbook logbook) {
        var folded = Fold.records(logbook.history());
        for (RecordType<?> type : RecordTypes.all()) {
            for (Entry<?> entry : logbook.facts().of(type.kind()).all()) {
                assertThat(folded.get(type.name()).get(entry.id().value())).isEqualTo(EntryImage.of(entry));
            }
        }
    }
}
