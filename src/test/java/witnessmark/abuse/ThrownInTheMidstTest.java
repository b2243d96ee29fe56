package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Drafts.Draft;
import witnessmark.logbook.port.Logbook;
import witnessmark.store.Garage;
import witnessmark.store.Holder;
import witnessmark.store.RandomFacts;
import witnessmark.store.SqliteLogbookFiles;
import witnessmark.store.TestLogbooks;

/**
 * Something throws in the midst of a change: memory runs out, a call goes too deep, the clock fails. Nothing of
 * the change stays, what was typed is still kept, and the very next change is written as if nothing had been.
 */
class ThrownInTheMidstTest {
    private static final int POINTS = Numbers.of("throws", 200, 5_000);

    @TempDir(factory = InMemory.class)
    Path folder;

    /** The time, until it is to fail. */
    private static final class FailingClock {
        private long now = TestLogbooks.START;
        private int calls = Integer.MAX_VALUE;
        private Supplier<Throwable> with = RuntimeException::new;

        long now() {
            if (calls-- == 0) {
                throwAny(with.get());
            }
            return now += 1_000;
        }
    }

    @Test
    void whatever_is_thrown_in_the_midst_of_a_change_nothing_of_it_stays_and_the_next_is_written() {
        FailingClock clock = new FailingClock();
        SqliteLogbookFiles files =
                new SqliteLogbookFiles(folder.resolve("data"), clock::now, () -> "device", new Holder("bench", "Ada"));
        Random random = Numbers.random("throws");
        RandomFacts facts = new RandomFacts(Numbers.seed());
        Map<String, Integer> counts = new TreeMap<>();
        List<String> wrong = new ArrayList<>();
        try (Logbook logbook = files.create(folder.resolve("team.witness")).orThrow()) {
            TestLogbooks.write(logbook, facts.oneOfEach(logbook.facts())).orThrow();
            for (int point = 0; point < POINTS; point++) {
                List<Entry<?>> entries = cars(point);
                int at = random.nextInt(entries.size());
                String draft = "typed " + point;
                logbook.drafts().keep("run", "", new Draft(Map.of("text", draft), Instant.ofEpochSecond(point)));
                Map<Object, Entry<?>> before = Truth.entries(logbook.facts());
                clock.with = any(random);
                clock.calls = at;
                String thrown = thrownBy(logbook, entries);
                clock.calls = Integer.MAX_VALUE;
                counts.merge(thrown, 1, Integer::sum);
                check(logbook, before, draft, "point " + point + ", " + thrown + " at " + at, wrong);
            }
            assertThat(logbook.verify()).isEmpty();
        }
        Numbers.tell("R29 thrown in the midst", counts);
        assertThat(wrong).as("seed %d", Numbers.seed()).isEmpty();
        assertThat(counts.getOrDefault("nothing", 0)).isZero();
    }

    /** One after the other is timed while it is written, and the clock fails at one of them. */
    private static List<Entry<?>> cars(int point) {
        List<Entry<?>> cars = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            cars.add(Garage.made(new Car("car " + point + "/" + i, "")));
        }
        return cars;
    }

    private static void check(
            Logbook logbook, Map<Object, Entry<?>> before, String draft, String where, List<String> wrong) {
        if (!Truth.entries(logbook.facts()).equals(before)) {
            wrong.add(where + ": the logbook in memory is another");
        }
        Entry<?> next = Garage.made(new Car(where, ""));
        if (!TestLogbooks.write(logbook, next).didWork()) {
            wrong.add(where + ": the next change is not written");
        }
        long written = logbook.history().stream()
                .map(amendment -> amendment.record())
                .distinct()
                .count();
        if (written != before.size() + 1) {
            wrong.add(where + ": " + (written - before.size() - 1)
                    + " records more or less are in the file than were acknowledged");
        }
        if (!logbook.drafts().find("run", "").orElseThrow().fields().get("text").equals(draft)) {
            wrong.add(where + ": the draft is gone");
        }
    }

    private static String thrownBy(Logbook logbook, List<Entry<?>> entries) {
        try {
            return logbook.write(new Change("Ada", "because", entries)).didWork() ? "nothing" : "refused";
        } catch (RuntimeException | Error thrown) {
            return thrown.getClass().getSimpleName();
        }
    }

    private static Supplier<Throwable> any(Random random) {
        List<Supplier<Throwable>> all = List.of(
                () -> new OutOfMemoryError("planted"),
                () -> new StackOverflowError("planted"),
                () -> new IllegalStateException("planted"),
                () -> new ArithmeticException("planted"));
        return all.get(random.nextInt(all.size()));
    }

    private static void throwAny(Throwable thrown) {
        if (thrown instanceof Error error) {
            throw error;
        }
        throw (RuntimeException) thrown;
    }
}
