package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Run;
import witnessmark.logbook.port.Logbook;

/**
 * A program killed while it writes run after run into one and the same logbook: whatever it acknowledged is there, at
 * most the one it was at is there besides, and the logbook is whole. {@code -Dkills=100} kills a hundred times.
 */
class KilledProgramTest {
    private static final int KILLS = Integer.getInteger("kills", 6);
    private static final int LONGEST_AFTER_FIRST_MILLIS = 150;
    private static final int APART = 1_000;

    @TempDir
    private Path folder;

    @Test
    void nothing_acknowledged_is_lost_and_nothing_is_half_written() throws Exception {
        long seed = Long.getLong("seed", 20_260_709L);
        Random random = new Random(seed);
        TestLogbooks logbooks = new TestLogbooks(folder);
        logbooks.create().close();
        Set<String> acknowledged = new TreeSet<>();
        List<String> wrong = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            Path place = Files.createDirectories(folder.resolve("kill-" + kill));
            Set<String> saved =
                    killedAfter(logbooks.file(), place, kill * APART, random.nextInt(LONGEST_AFTER_FIRST_MILLIS));
            acknowledged.addAll(saved);
            try (Logbook logbook = logbooks.open()) {
                assertThat(logbook.readOnly()).isEmpty();
                Set<String> there = logbook.facts().of(Run.class).all().stream()
                        .map(run -> run.fact().name().substring("run ".length()))
                        .collect(Collectors.toCollection(TreeSet::new));
                if (!there.containsAll(acknowledged)) {
                    wrong.add("lost at kill " + kill);
                }
                there.removeAll(acknowledged);
                if (there.size() > 1) {
                    wrong.add("more than was acknowledged at kill " + kill + ": " + there);
                }
                acknowledged.addAll(there); // the one it was at stays
                if (!logbook.verify().isEmpty()) {
                    wrong.add("kill " + kill + ": " + logbook.verify());
                }
            }
        }
        System.out.println(KILLS + " kills, " + acknowledged.size() + " runs acknowledged");
        assertThat(wrong).as("seed %d", seed).isEmpty();
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(KILLS);
    }

    private static Set<String> killedAfter(Path file, Path data, int from, int millis) throws Exception {
        Set<String> saved = new TreeSet<>();
        try (Child child = Child.start(data, "laptop-" + from)) {
            assertThat(child.ask("open " + file)).isEqualTo("worked");
            child.tell("runs " + from);
            List<String> said = new ArrayList<>(List.of(child.read()));
            LockSupport.parkNanos(millis * 1_000_000L);
            said.addAll(child.kill());
            for (String line : said) {
                if (line.matches("saved \\d+")) { // the last line may be cut short
                    saved.add(line.substring("saved ".length()));
                }
            }
        }
        return saved;
    }
}
