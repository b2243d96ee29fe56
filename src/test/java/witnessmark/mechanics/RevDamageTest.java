package witnessmark.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Wear of engine speed: against a fine sum, and what must hold whatever the speeds. */
class RevDamageTest {
    private static final double[] EDGES = {0, 2000, 4000, 6000, 7000, 8000, 9500};
    private static final double[] SECONDS = {60, 120, 300, 400, 250, 3};

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void a_piece_is_what_a_fine_sum_makes_it(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 50; trial++) {
            double from = random.nextInt(9000);
            double to = trial % 5 == 0 ? from * (1 + 2e-4 * random.nextDouble()) : random.nextInt(9000);
            RevDamage damage = new RevDamage(8000, 0.5 + 12 * random.nextDouble());
            double sum = 0;
            int steps = 20_000;
            for (int i = 0; i < steps; i++) {
                sum += Math.pow((from + (to - from) * (i + 0.5) / steps) / 8000, damage.exponent());
            }

            double expected = 7 * sum / steps;
            assertThat(damage.ofPiece(from, to, 7))
                    .as("seed %d: %s to %s", seed, from, to)
                    .isCloseTo(expected, within(1e-6 * expected + 1e-9));
        }
    }

    @Test
    void time_at_the_reference_counts_as_it_is() {
        assertThat(new RevDamage(8000, 7).ofPiece(8000, 8000, 3600)).isCloseTo(3600, within(1e-9));
        assertThat(new RevDamage(8000, 7).ofPiece(0, 0, 3600)).isZero();
    }

    @Test
    void a_band_split_in_two_evenly_wears_the_same_and_the_ends_hold_it() {
        RevDamage damage = new RevDamage(8000, 9);
        RevDamage.Equivalent whole = damage.ofBands(EDGES, SECONDS);
        double[] finer = {0, 2000, 4000, 6000, 6500, 7000, 8000, 9500};
        RevDamage.Equivalent split = damage.ofBands(finer, new double[] {60, 120, 300, 200, 200, 250, 3});

        assertThat(split.seconds()).isCloseTo(whole.seconds(), within(1e-9 * whole.seconds()));
        assertThat(whole.seconds()).isBetween(whole.least(), whole.most());
        assertThat(split.least()).isGreaterThan(whole.least());
        assertThat(split.most()).isLessThan(whole.most());
    }

    @Test
    void another_reference_scales_and_another_unit_changes_nothing() {
        double at8000 = new RevDamage(8000, 5).ofBands(EDGES, SECONDS).seconds();
        double at4000 = new RevDamage(4000, 5).ofBands(EDGES, SECONDS).seconds();
        double[] hertz = java.util.Arrays.stream(EDGES).map(rpm -> rpm / 60).toArray();

        assertThat(at4000).isCloseTo(32 * at8000, within(1e-9 * at4000));
        assertThat(new RevDamage(8000 / 60.0, 5).ofBands(hertz, SECONDS).seconds())
                .isCloseTo(at8000, within(1e-9 * at8000));
    }

    /** Stress of inertia grows with speed squared: at twice the speed a turn wears 4^m and there are twice as many. */
    @Test
    void a_slope_gives_the_exponent() {
        RevDamage damage = RevDamage.ofSlope(4000, 5);

        assertThat(damage.exponent()).isEqualTo(11);
        assertThat(damage.ofPiece(8000, 8000, 1)).isCloseTo(2 * Math.pow(4, 5), within(1e-9));
    }

    @Test
    void an_open_band_above_is_allowed_while_nothing_ran_in_it() {
        RevDamage damage = new RevDamage(8000, 5);
        double[] open = {0, 8000, Double.POSITIVE_INFINITY};

        assertThat(damage.ofBands(open, new double[] {10, 0}).seconds()).isPositive();
        assertThatThrownBy(() -> damage.ofBands(open, new double[] {10, 1}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void what_is_no_histogram_is_told() {
        RevDamage damage = new RevDamage(8000, 5);

        assertThatThrownBy(() -> damage.ofBands(EDGES, new double[] {1})).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> damage.ofBands(new double[] {0, 0}, new double[] {1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> damage.ofBands(new double[] {0, 1}, new double[] {Double.NaN}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new RevDamage(0, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new RevDamage(8000, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RevDamage.ofSlope(8000, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
