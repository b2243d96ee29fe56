package witnessmark.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LargestRemainderTest {
    /**
     * Balinski and Young, Fair Representation (1982): Hamilton's bill of 1792 shares 120 seats out by the census of 1790;
     * populations and seats from memory, the populations sum to the published 3 615 920.
     */
    @Test
    void seats_are_shared_out_as_hamilton_did() {
        List<Long> census = List.of(
                630560L, 475327L, 432879L, 353523L, 331589L, 278514L, 236841L, 206236L, 179570L, 141822L, 85533L,
                70835L, 68705L, 68446L, 55540L);
        assertThat(census.stream().mapToLong(Long::longValue).sum()).isEqualTo(3_615_920);
        assertThat(LargestRemainder.split(120, census))
                .containsExactly(21L, 16L, 14L, 12L, 11L, 9L, 8L, 7L, 6L, 5L, 3L, 2L, 2L, 2L, 2L);
    }

    /** By the definition in whole cents, ties to the earlier line: worked in rational arithmetic. */
    @ParameterizedTest(name = "{0} over {1}")
    @CsvSource({
        "10000, 1 1 1, 3334 3333 3333",
        "100, 1 1 1 1 1 1, 17 17 17 17 16 16",
        "1, 1 1, 1 0",
        "0, 3 4, 0 0",
        "99999, 50 30 20, 49999 30000 20000",
        "12345, 0 5 7, 0 5144 7201",
        "1001, 1 2 7, 100 200 701",
    })
    void cents_are_shared_out(long total, String weights, String shares) {
        assertThat(LargestRemainder.split(total, longs(weights))).isEqualTo(longs(shares));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void the_shares_are_the_whole_and_each_is_within_one_of_its_exact_share(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            List<Long> weights = weights(random);
            long total = random.nextLong() >> random.nextInt(60);
            List<Long> shares = LargestRemainder.split(total, weights);
            BigInteger sum = weights.stream().map(BigInteger::valueOf).reduce(BigInteger.ZERO, BigInteger::add);
            assertThat(shares.stream().map(BigInteger::valueOf).reduce(BigInteger.ZERO, BigInteger::add))
                    .isEqualTo(BigInteger.valueOf(total));
            for (int k = 0; k < shares.size(); k++) {
                BigInteger off = BigInteger.valueOf(shares.get(k))
                        .multiply(sum)
                        .subtract(BigInteger.valueOf(total).multiply(BigInteger.valueOf(weights.get(k))));
                assertThat(off.abs())
                        .as("seed %d, %d over %s", seed, total, weights)
                        .isLessThan(sum);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2})
    void a_credit_is_shared_like_a_debt_and_the_unit_of_the_weights_does_not_matter(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            List<Long> weights = weights(random);
            long total = random.nextInt(1_000_000);
            List<Long> shares = LargestRemainder.split(total, weights);
            assertThat(LargestRemainder.split(-total, weights))
                    .isEqualTo(shares.stream().map(s -> -s).toList());
            assertThat(LargestRemainder.split(
                            total, weights.stream().map(w -> w * 7).toList()))
                    .isEqualTo(shares);
        }
    }

    @Test
    void nobody_having_a_share_or_one_of_less_than_nothing_is_refused() {
        assertThatThrownBy(() -> LargestRemainder.split(1, List.of(0L, 0L)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LargestRemainder.split(1, List.of(2L, -1L)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LargestRemainder.split(1, List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<Long> weights(Random random) {
        List<Long> weights = new ArrayList<>();
        for (int k = 1 + random.nextInt(9); k > 0; k--) {
            weights.add((long) random.nextInt(random.nextBoolean() ? 4 : 100_000));
        }
        if (Collections.max(weights) == 0) {
            weights.set(0, 1L);
        }
        return weights;
    }

    private static List<Long> longs(String text) {
        return Arrays.stream(text.split(" ")).map(Long::valueOf).toList();
    }
}
