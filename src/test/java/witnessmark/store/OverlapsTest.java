package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.store.Garage.again;
import static witnessmark.store.Garage.fitment;
import static witnessmark.store.Garage.made;
import static witnessmark.store.Garage.struck;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Standing;
import witnessmark.logbook.port.Logbook;

/** The guards look at one fitment only; here every pair of fitments is looked at, hour by hour. */
class OverlapsTest {
    private static final int HOURS = 12;

    private final Garage garage = new Garage();

    @TempDir
    private Path folder;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14})
    void a_fitment_is_taken_exactly_when_no_hour_has_two_parts_in_a_place_or_a_part_in_two(long seed) {
        Random random = new Random(seed);
        int taken = 0;
        int refused = 0;
        try (Logbook logbook = new TestLogbooks(folder).create()) {
            TestLogbooks.write(logbook, garage.all()).orThrow();
            for (int i = 0; i < 250; i++) {
                Entry<Fitment> next =
                        next(random, logbook.facts().of(Fitment.class).all());
                boolean allowed = next.standing() != Standing.IN_FORCE
                        || logbook.facts()
                                .of(Fitment.class)
                                .inForce()
                                .filter(other -> !other.id().equals(next.id()))
                                .noneMatch(other -> clash(other.fact(), next.fact()));
                assertThat(TestLogbooks.write(logbook, next).didWork())
                        .as("%s", next)
                        .isEqualTo(allowed);
                if (allowed) {
                    taken++;
                } else {
                    refused++;
                }
            }
        }
        assertThat(taken).isGreaterThan(30);
        assertThat(refused).isGreaterThan(30);
    }

    private Entry<Fitment> next(Random random, List<Entry<Fitment>> known) {
        int from = random.nextInt(HOURS);
        int to = random.nextInt(5) == 0 ? -1 : from + 1 + random.nextInt(3);
        Fitment fact = fitment(
                random.nextBoolean() ? garage.r1 : garage.r2,
                random.nextBoolean() ? garage.e1 : garage.e2,
                random.nextBoolean() ? garage.rods : garage.head,
                from,
                to);
        if (known.isEmpty() || random.nextInt(3) == 0) {
            return made(fact);
        }
        Entry<Fitment> old = known.get(random.nextInt(known.size()));
        return random.nextInt(3) == 0 && old.inForce() ? struck(old) : again(old, fact);
    }

    private static boolean clash(Fitment one, Fitment other) {
        boolean samePlace =
                one.position().equals(other.position()) && one.engine().equals(other.engine());
        List<Integer> both = new ArrayList<>();
        for (int hour = 0; hour < HOURS * 2; hour++) {
            if (fitted(one, hour) && fitted(other, hour)) {
                both.add(hour);
            }
        }
        return !both.isEmpty() && (samePlace || one.part().equals(other.part()));
    }

    private static boolean fitted(Fitment fitment, int hour) {
        long now = Garage.hour(hour).epochMillis();
        return fitment.from().epochMillis() <= now
                && (fitment.to() == null || now < fitment.to().epochMillis());
    }
}
