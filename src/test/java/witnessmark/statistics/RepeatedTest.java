package witnessmark.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class RepeatedTest {
    /**
     * NIST/SEMATECH e-Handbook 1.3.5.3, two-sample t-test of data set AUTO83B, its printed summary from memory: 249 values of
     * deviation 6.41470, 79 of 6.10771; pooled 6.34260 with 326 degrees of freedom; critical t 1.9673.
     */
    @Test
    void the_pooled_deviation_of_the_handbook_comes_out() {
        Repeated pooled = Repeated.within(List.of(spread(249, 6.41470), spread(79, 6.10771)));

        assertThat(pooled.deviation()).isCloseTo(6.34260, within(5e-6));
        assertThat(pooled.freedom()).isEqualTo(326);
        assertThat(pooled.ofDifference(249, 79, 0.95))
                .isCloseTo(1.9673 * 6.34260 * Math.sqrt(1.0 / 249 + 1.0 / 79), within(1e-3));
    }

    @Test
    void groups_of_one_say_nothing() {
        assertThat(Repeated.within(List.of(new double[] {5}, new double[] {1, 3}))
                        .freedom())
                .isEqualTo(1);
        assertThatThrownBy(() -> Repeated.within(List.of(new double[] {5})))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Repeated.within(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    /** Figures of exactly this deviation: half of them above, half below, one in the middle where they are odd. */
    private static double[] spread(int n, double deviation) {
        double[] figures = new double[n];
        int pairs = n / 2;
        double off = deviation * Math.sqrt((n - 1) / (2.0 * pairs));
        for (int i = 0; i < pairs; i++) {
            figures[2 * i] = 20 + off;
            figures[2 * i + 1] = 20 - off;
        }
        if (n % 2 == 1) {
            figures[n - 1] = 20;
        }
        return figures;
    }
}
