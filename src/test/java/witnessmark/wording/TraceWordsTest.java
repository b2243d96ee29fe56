package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

/** How figures of a trace are told apart. */
class TraceWordsTest {
    private final TraceWords words =
            new TraceWords(Texts.in(Locale.UK), new Measures(Texts.in(Locale.UK), Units.METRIC));

    @Test
    void a_pressure_just_under_its_floor_has_the_decimals_that_tell_them_apart() {
        assertThat(words.bar(3.8694, 3.8725)).isEqualTo("3.869");
        assertThat(words.bar(3.8725, 3.8694)).isEqualTo("3.873");
        assertThat(words.bar(1.2, 3.87)).isEqualTo("1.20");
        assertThat(words.bar(3.87, 1.2)).isEqualTo("3.87");
    }
}
