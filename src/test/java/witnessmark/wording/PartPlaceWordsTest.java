package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.study.result.Outline;

/** Where on a part, in the words of somebody who holds it: common practice, no source. */
class PartPlaceWordsTest {
    private final PartPlaceWords words = new PartPlaceWords(Texts.in(Locale.UK));

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "DISC | 70 | 85 | exhaust side, near the edge",
                "DISC | 200 | 10 | in the middle",
                "DISC | 350 | 50 | front, halfway out",
                "DISC | 225 | 90 | rear on the inlet side, near the edge",
                "WHEEL | 0 | 95 | top, near the edge",
                "WHEEL | 135 | 50 | lower exhaust side, halfway out",
                "HALF | 96 | 46 | in the middle, middle of its width",
                "HALF | 5 | 2 | at the parting line, inlet side, front edge",
                "HALF | 180 | 98 | at the parting line, exhaust side, rear edge",
                "ROUND | 180 | 6 | rear, near the top",
                "ROUND | 270 | 97 | inlet side, near the bottom",
                "TUNNEL | 180 | 50 | bottom, middle of its width"
            })
    void a_place_is_said_as_one_would_point_at_it(Outline outline, int around, int out, String said) {
        assertThat(words.of(outline, around, out)).isEqualTo(said);
    }

    @ParameterizedTest
    @EnumSource(value = Outline.class, mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void each_place_has_words_and_no_side_is_left_out(Outline outline) {
        Set<String> said = new HashSet<>();
        for (int around = 0; around < 360; around++) {
            for (int out = 0; out <= 100; out++) {
                said.add(words.of(outline, around, out));
            }
        }
        assertThat(said).hasSize(outline == Outline.HALF ? 15 : outline.disc() ? 17 : 24);
        assertThat(words.quarters(outline)).hasSize(outline == Outline.HALF ? 2 : 4);
    }

    @Test
    void the_edge_that_is_counted_from_has_a_name() {
        assertThat(words.edge(Outline.ROUND)).isEqualTo("top");
        assertThat(words.edge(Outline.TUNNEL)).isEqualTo("front edge");
    }
}
