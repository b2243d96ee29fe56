package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.ReadingKind;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedFigure;

class ReadingWordsTest {
    private final Texts texts = Texts.in(Locale.UK);
    private final ReadingWords words = new ReadingWords(texts, new Measures(texts, Units.METRIC));

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "LEAK_DOWN, 450, 4.5 %",
        "LEAK_DOWN, 0, 0 %",
        "LEAK_DOWN, 10000, 100 %",
        "COMPRESSION, 1240000, 12.4 bar",
        "SPRING_FORCE, 291000, 291 N",
        "SPRING_FORCE, 266250, 266.25 N",
        "LASH, 250000, 0.25 mm",
        "HARDNESS, 1035, 103.5 HB",
        "OIL_METAL, 12500, 12.5 ppm",
    })
    void a_figure_is_said_in_the_unit_of_its_kind(ReadingKind kind, long value, String said) {
        assertThat(words.figure(kind, value)
                        .replace('\u202F', ' ')
                        .replace('\u2009', ' ')
                        .replace('\u00A0', ' '))
                .isEqualTo(said);
    }

    @Test
    void a_grade_is_no_figure() {
        assertThatThrownBy(() -> words.figure(ReadingKind.PLUG, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"4.5, 450", "'4,5 %', 450", "4.555, 456", "0, 0", "-1, ", "4 N, ", "four, ", "1 000, 100000"})
    void a_figure_in_whole_parts_uses_the_whole_text(String text, Long parts) {
        assertThat(TypedFigure.parts(text, 2, "4.5 %", "%").only().orElse(null)).isEqualTo(parts);
        assertThat(TypedFigure.parts("x", 2, "4.5 %", "%"))
                .isInstanceOfSatisfying(
                        Typed.Unreadable.class, no -> assertThat(no.example()).isEqualTo("4.5 %"));
    }
}
