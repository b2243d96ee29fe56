package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Run;
import witnessmark.logbook.port.Logbook;
import witnessmark.sample.SampleBooks;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;

/**
 * The shipped program killed while it saves runs through its run sheet. Whatever it acknowledged is there afterwards,
 * and the logbook is whole. {@code -Dkills=100} kills a hundred times; the seed is in the message of a failure.
 */
@UiTest
class KilledWhileSavingTest {
    private static final int KILLS = Integer.getInteger("kills", 3);
    private static final int LONGEST_AFTER_FIRST_MILLIS = 900;
    /** A program that has not been killed by then hangs. */
    private static final int LONGEST_START_SECONDS = 90;

    @TempDir
    Path folder;

    @Test
    void nothing_acknowledged_is_lost_however_the_program_is_killed() throws Exception {
        long seed = Long.getLong("seed", 20_260_708L);
        Random random = new Random(seed);
        Path made = madeOnce();
        List<String> lost = new ArrayList<>();
        int acknowledged = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Path data = copy(made, folder.resolve("kill-" + kill));
            Set<Long> saved = killedAfter(data, random.nextInt(LONGEST_AFTER_FIRST_MILLIS));
            acknowledged += saved.size();
            lost.addAll(missing(data, saved, kill));
        }
        System.out.println(KILLS + " kills, " + acknowledged + " runs acknowledged, " + lost.size() + " lost");
        assertThat(lost).as("seed %d", seed).isEmpty();
        assertThat(acknowledged)
                .as("seed %d: every kill came after an acknowledgement", seed)
                .isGreaterThanOrEqualTo(KILLS);
    }

    private Path madeOnce() {
        Path data = folder.resolve("made");
        new SampleBooks(data.resolve("sample")).open().logbook().close();
        return data;
    }

    private Set<Long> killedAfter(Path data, int millis) throws IOException, InterruptedException {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Dwitnessmark.data=" + data,
                        "-Dwitnessmark.sample=" + SampleBooks.FOLDER.toAbsolutePath(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        SavingProgram.class.getName())
                .redirectError(data.resolve("err.txt").toFile())
                .start();
        program.onExit().orTimeout(LONGEST_START_SECONDS, TimeUnit.SECONDS).exceptionally(late -> {
            program.destroyForcibly();
            return program;
        });
        Set<Long> saved = new TreeSet<>();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8))) {
            String line = out.readLine();
            assertThat(line)
                    .as("the program's own words: %s", Files.readString(data.resolve("err.txt")))
                    .isNotNull();
            saved.add(seconds(line));
            long until = System.nanoTime() + millis * 1_000_000L;
            while (System.nanoTime() < until && out.ready()) {
                saved.add(seconds(out.readLine()));
            }
            while (System.nanoTime() < until) {
                java.util.concurrent.locks.LockSupport.parkNanos(until - System.nanoTime());
            }
            program.toHandle().destroyForcibly(); // the handle leaves what was said to be read
            program.waitFor();
            out.lines().filter(rest -> rest.matches("saved \\d+")).forEach(rest -> saved.add(seconds(rest)));
        }
        return saved;
    }

    private List<String> missing(Path data, Set<Long> saved, int kill) {
        List<String> lost = new ArrayList<>();
        SqliteLogbookFiles files = new SqliteLogbookFiles(
                data, System::currentTimeMillis, () -> "afterwards", new Holder("bench", "checker"));
        try (Logbook book = files.open(data.resolve("sample").resolve("sample-season.witness"))
                .orThrow()) {
            Set<Long> there = book.facts()
                    .of(Run.class)
                    .inForce()
                    .map(run -> run.fact().running().millis() / 1000)
                    .collect(Collectors.toSet());
            saved.stream()
                    .filter(run -> !there.contains(run))
                    .forEach(run -> lost.add("kill " + kill + ": run " + run));
            book.verify().forEach(problem -> lost.add("kill " + kill + ": " + problem));
        }
        return lost;
    }

    private static long seconds(String line) {
        return Long.parseLong(line.substring("saved ".length()));
    }

    private static Path copy(Path from, Path to) throws IOException {
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
        return to;
    }
}
