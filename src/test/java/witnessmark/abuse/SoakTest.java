package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Somebody works at random for a long time: logs runs, corrects, strikes out and restores them, takes back and does again,
 * types nonsense, looks at earlier days, keeps drafts, backs up, closes and opens. The lives are all the while what a
 * list of what was saved adds up to, and from one season to the next neither memory nor open files grow.
 */
class SoakTest {
    private static final int ACTIONS = Numbers.of("soak", 900, 100_000);
    private static final int OF_A_SEASON = Numbers.of("season", 300, 5_000);
    /** What a virtual machine keeps for itself on the way. */
    private static final long ROOM = 24L << 20;

    @TempDir(factory = InMemory.class)
    Path folder;

    @Test
    void after_any_amount_of_work_lives_are_the_sum_of_what_was_saved_and_nothing_grows() throws IOException {
        Random random = Numbers.random("soak");
        Map<String, Integer> counts = new TreeMap<>();
        List<Long> memory = new ArrayList<>();
        List<Long> handles = new ArrayList<>();
        for (int done = 0; done < ACTIONS; done += OF_A_SEASON) {
            Path place = Files.createDirectories(folder.resolve("season-" + done));
            try (RandomUser user = new RandomUser(place, random, counts)) {
                for (int i = 0; i < OF_A_SEASON; i++) {
                    user.act();
                }
                user.compare();
                assertThat(user.wrong())
                        .as("seed %d, season from %d", Numbers.seed(), done)
                        .isEmpty();
                memory.add(used());
                handles.add(handles());
            }
            remove(place);
        }
        counts.put("MB of memory, most", (int)
                (memory.stream().mapToLong(Long::longValue).max().orElse(0) >> 20));
        Numbers.tell("R30 soak", counts);
        assertThat(counts.get("saved")).as("the work is not refused").isGreaterThan(ACTIONS / 4);
        long second = memory.get(Math.min(1, memory.size() - 1));
        assertThat(memory.get(memory.size() - 1))
                .as("memory by season: %s", memory)
                .isLessThan(second + ROOM);
        assertThat(handles.get(handles.size() - 1))
                .as("open files by season: %s", handles)
                .isLessThanOrEqualTo(handles.get(Math.min(1, handles.size() - 1)) + 5);
    }

    /** The test itself is tested: a life that is a second off. */
    @Test
    void a_life_that_is_not_the_sum_would_be_noticed() throws IOException {
        try (RandomUser user = new RandomUser(folder, new Random(1), new TreeMap<>())) {
            for (int i = 0; i < 20; i++) {
                user.act();
            }
            user.compare();
            assertThat(user.wrong()).isEmpty();
            user.miscount();
            user.compare();
            assertThat(user.wrong()).isNotEmpty();
        }
    }

    private static long used() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    /** Where the system lists them. */
    private static long handles() throws IOException {
        Path open = Path.of("/proc/self/fd");
        if (!Files.isDirectory(open)) {
            return 0;
        }
        try (Stream<Path> all = Files.list(open)) {
            return all.count();
        }
    }

    private static void remove(Path place) throws IOException {
        try (Stream<Path> all = Files.walk(place)) {
            for (Path file : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
