package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PseudoTest {
    /** Letters with marks in place of plain ones, a third more length, what is inside a blank as it was. */
    @ParameterizedTest(name = "{0} becomes {1}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "Save; [Sàvé]",
                "Save run; [Sàvé ŕûñ ~]",
                "Couldn''t read {0}; [Cöûļďñ''ţ ŕéàď {0} ~]",
                "{0,choice,1#one run|1<{0} runs} at it; [{0,choice,1#one run|1<{0} runs} àţ îţ]",
            })
    void a_pattern_is_changed_outside_its_blanks(String pattern, String odd) {
        assertThat(Pseudo.of(pattern)).isEqualTo(odd);
    }
}
