package witnessmark.ledger.ahead;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against Hipparchus 4.0.3, a general-purpose library: its percentiles of type R-7. */
class QuartilesTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void they_are_what_hipparchus_says_rounded(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Long> numbers =
                random.longs(1 + random.nextInt(40), 0, 10_000_000).boxed().toList();
        double[] plain = numbers.stream().mapToDouble(Long::doubleValue).toArray();
        Percentile percentile = new Percentile().withEstimationType(EstimationType.R_7);

        Quartiles quartiles = Quartiles.of(numbers);

        assertThat(quartiles.low()).isEqualTo(rounded(percentile.evaluate(plain, 25)));
        assertThat(quartiles.middle()).isEqualTo(rounded(percentile.evaluate(plain, 50)));
        assertThat(quartiles.high()).isEqualTo(rounded(percentile.evaluate(plain, 75)));
    }

    /** Half up. The library's last digits are noise; a quarter is the finest step there is. */
    private static long rounded(double value) {
        return (long) Math.floor(Math.rint(value * 8) / 8 + 0.5);
    }

    @Test
    void a_share_of_each_is_rounded_half_up() {
        assertThat(new Quartiles(1, 3, 5).times(1, 2)).isEqualTo(new Quartiles(1, 2, 3));
    }

    @Test
    void nothing_has_none() {
        assertThatThrownBy(() -> Quartiles.of(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
