package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Outcome;

/** What is written is read back, and what is read is written back: no other source is needed. */
class RoundTripTest {
    private static final Map<Long, Facts> MADE = new HashMap<>();

    private final CsvSeasonFolders folders = Folders.unsynced();

    @TempDir
    Path place;

    static LongStream seeds() {
        return LongStream.range(0, 25);
    }

    /** Made once for the tests of a seed; facts never change. */
    private static Facts facts(long seed) {
        return MADE.computeIfAbsent(seed, made -> new RandomFacts(made).upTo(12));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void facts_of_every_kind_come_back_equal_with_no_problem(long seed) {
        Facts facts = facts(seed);
        assertThat(folders.write(facts, place.resolve("a"))).isEqualTo(Outcome.worked(count(facts)));
        Outcome<List<Entry<?>>> read = folders.read(place.resolve("a"), Facts.none());
        assertThat(read.problems()).isEmpty();
        assertThat(Folders.entries(Facts.none().with(read.orThrow()))).isEqualTo(Folders.entries(facts));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_folder_read_and_written_again_has_the_same_bytes_in_whatever_order_the_facts_were_entered(long seed) {
        Facts facts = facts(seed);
        folders.write(facts, place.resolve("a")).orThrow();
        Facts read =
                Facts.none().with(folders.read(place.resolve("a"), Facts.none()).orThrow());
        folders.write(read, place.resolve("b")).orThrow();
        Facts other = Facts.none().with(RandomFacts.shuffled(facts, new Random(seed)));
        folders.write(other, place.resolve("c")).orThrow();
        assertThat(Folders.texts(place.resolve("b"))).isEqualTo(Folders.texts(place.resolve("a")));
        assertThat(Folders.texts(place.resolve("c"))).isEqualTo(Folders.texts(place.resolve("a")));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void each_entry_comes_after_those_it_refers_to(long seed) {
        folders.write(facts(seed), place.resolve("a")).orThrow();
        Set<Id<?>> before = new HashSet<>();
        for (Entry<?> entry : folders.read(place.resolve("a"), Facts.none()).orThrow()) {
            for (Component component : RecordTypes.of(entry.fact().getClass()).components()) {
                Object value = component.value(entry.fact());
                if (value instanceof Id<?> id) {
                    assertThat(before)
                            .as("%s of %s", component.name(), entry.id())
                            .contains(id);
                }
            }
            before.add(entry.id());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_folder_that_the_logbook_has_already_brings_nothing(long seed) {
        Facts facts = facts(seed);
        folders.write(facts, place.resolve("a")).orThrow();
        assertThat(folders.read(place.resolve("a"), facts)).isEqualTo(Outcome.worked(List.of()));
    }

    private static int count(Facts facts) {
        return Folders.entries(facts).size();
    }
}
