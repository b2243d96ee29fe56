package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.quantity.Moment;

/** Overlaps found by looking at neighbours, against comparing everyone with everyone. */
class SpansTest {
    private static final Moment ZERO = Story.at("2026-03-01T00:00Z");

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 400);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whoever_overlaps_somebody_is_named_with_somebody_it_overlaps(long seed) {
        List<Entry<EngineInCar>> all = stays(new SplittableRandom(seed));
        Set<Id<?>> changed = new HashSet<>();
        SplittableRandom random = new SplittableRandom(seed + 1);
        all.stream().filter(stay -> random.nextInt(3) > 0).forEach(stay -> changed.add(stay.id()));
        Set<Id<?>> named = new HashSet<>();
        spans(all).eachOverlap(stay -> changed.contains(stay.id()), (stay, other) -> {
            assertThat(changed).contains(stay.id());
            assertThat(overlap(stay, other)).isTrue();
            assertThat(named.add(stay.id())).as("named once").isTrue();
        });

        Set<Id<?>> expected = new HashSet<>();
        for (Entry<EngineInCar> stay : all) {
            for (Entry<EngineInCar> other : all) {
                boolean blamed = !changed.contains(other.id()) || before(other, stay);
                if (changed.contains(stay.id()) && blamed && stay != other && overlap(stay, other)) {
                    expected.add(stay.id());
                }
            }
        }
        assertThat(named).isEqualTo(expected);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_moment_is_covered_or_strictly_inside_as_the_definition_says(long seed) {
        List<Entry<EngineInCar>> all = stays(new SplittableRandom(seed));
        Spans<EngineInCar> spans = spans(all);
        for (long moment = -1; moment < 60; moment++) {
            long at = moment;
            assertThat(spans.covers(ZERO.epochMillis() + at))
                    .isEqualTo(all.stream().anyMatch(stay -> from(stay) <= at && at < to(stay)));
            Entry<EngineInCar> inside = spans.inside(ZERO.epochMillis() + at);
            assertThat(inside != null).isEqualTo(all.stream().anyMatch(stay -> from(stay) < at && at < to(stay)));
            if (inside != null) {
                assertThat(from(inside) < at && at < to(inside)).isTrue();
            }
        }
    }

    private static Spans<EngineInCar> spans(List<Entry<EngineInCar>> all) {
        return new Spans<>(all, stay -> stay.from().epochMillis(), stay -> Spans.end(stay.to()));
    }

    /** Up to a dozen stays of some milliseconds, now and then open. */
    private static List<Entry<EngineInCar>> stays(SplittableRandom random) {
        List<Entry<EngineInCar>> stays = new ArrayList<>();
        int count = random.nextInt(12);
        for (int i = 0; i < count; i++) {
            int from = random.nextInt(50);
            EngineInCar stay = new EngineInCar(
                    new Id<>(new UUID(0, 1)),
                    new Id<>(new UUID(0, 2)),
                    after(from),
                    random.nextInt(8) == 0 ? null : after(from + 1 + random.nextInt(8)),
                    "");
            stays.add(new Entry<>(new Id<>(new UUID(random.nextInt(100), i)), stay, Standing.IN_FORCE, null, 1));
        }
        return stays;
    }

    private static Moment after(int millis) {
        return Moment.of(ZERO.instant().plusMillis(millis), Story.UTC);
    }

    private static boolean before(Entry<EngineInCar> one, Entry<EngineInCar> other) {
        return from(one) != from(other) ? from(one) < from(other) : one.id().compareTo(other.id()) < 0;
    }

    private static boolean overlap(Entry<EngineInCar> one, Entry<EngineInCar> other) {
        return from(one) < to(other) && from(other) < to(one);
    }

    private static long from(Entry<EngineInCar> stay) {
        return stay.fact().from().epochMillis() - ZERO.epochMillis();
    }

    private static long to(Entry<EngineInCar> stay) {
        Moment to = stay.fact().to();
        return to == null ? Long.MAX_VALUE : to.epochMillis() - ZERO.epochMillis();
    }
}
