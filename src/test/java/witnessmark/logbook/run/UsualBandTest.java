package witnessmark.logbook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class UsualBandTest {
    /** R 4.3, {@code quantile(seq(0, 1000, 100), c(.25, .75))} with the default type 7: 250 and 750. */
    @Test
    void quartiles_are_those_of_r_type_seven() {
        List<Long> values =
                LongStream.rangeClosed(0, 10).map(i -> i * 100).boxed().toList();
        UsualBand band = UsualBand.of(values, 1).orElseThrow();
        assertThat(band.low()).isEqualTo(250);
        assertThat(band.high()).isEqualTo(750);
    }

    /** Tukey 1977: the fences lie one and a half spreads beyond the quartiles, 250 - 750 and 750 + 750. */
    @Test
    void fences_lie_one_and_a_half_spreads_out() {
        List<Long> values =
                LongStream.rangeClosed(0, 10).map(i -> i * 100).boxed().toList();
        UsualBand band = UsualBand.of(values, 1).orElseThrow();
        assertThat(band.holds(-500)).isTrue();
        assertThat(band.holds(-501)).isFalse();
        assertThat(band.holds(1500)).isTrue();
        assertThat(band.holds(1501)).isFalse();
    }

    @Test
    void a_spread_finer_than_the_instrument_is_widened_to_it() {
        UsualBand band = UsualBand.of(List.of(460L, 460L, 460L, 460L, 460L), 20).orElseThrow();
        assertThat(band.holds(490)).isTrue();
        assertThat(band.holds(491)).isFalse();
    }

    @Test
    void too_few_runs_say_nothing_about_what_is_usual() {
        assertThat(UsualBand.of(List.of(1L, 2L, 3L, 4L), 1)).isEmpty();
    }
}
