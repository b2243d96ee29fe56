package witnessmark.quantity.typed;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.quantity.Dimension;

/** Figures as crews type them. Factors: NIST SP 811 (2008), appendix B. */
class TypedMeasureTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.05 proud | MILLIMETRE | -50000",
                "0.05mm proud | MILLIMETRE | -50000",
                "0.20 down | MILLIMETRE | 200000",
                "0,20 | MILLIMETRE | 200000",
                "2 thou proud | MILLIMETRE | -50800",
                "2 thou | MILLIMETRE | 50800",
                "50 µm | MILLIMETRE | 50000",
                "0.002 in | MILLIMETRE | 50800",
                "0.002\" | MILLIMETRE | 50800",
                ".05 | MILLIMETRE | 50000",
                "−0.05 | MILLIMETRE | -50000",
                "32.7 | CUBIC_CENTIMETRE | 32700",
                "2 cu in | CUBIC_CENTIMETRE | 32774",
                "290 | NEWTON | 290000",
                "65 lbf | NEWTON | 289134",
                "1 kgf | NEWTON | 9807",
                "44 lb ft | NEWTON_METRE | 59656",
                "106.2 | DEGREE | 106200",
                "0.8 | FINISH_MICROMETRE | 800",
                "30 µin | FINISH_MICROMETRE | 762",
                "1 oz | GRAM | 28350",
                "11.8 : 1 | TO_ONE | 118000",
                "4600 mm² | SQUARE_MILLIMETRE | 460000",
                "1 sq in | SQUARE_MILLIMETRE | 64516"
            })
    void a_figure_is_read_with_its_unit_and_its_side(String text, MeasureUnit own, long parts) {
        assertThat(TypedMeasure.read(text, own, own.dimension() == Dimension.LENGTH)
                        .only()
                        .map(TypedMeasure::parts))
                .contains(parts);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "abc", "12abc", "0.05 mm mm", "1.2.3", "-0.05 proud", "0.05 sideways", "5 cc", "1e5", "٣"})
    void what_is_no_such_figure_is_not_read(String text) {
        assertThat(TypedMeasure.read(text, MeasureUnit.MILLIMETRE, true)).isInstanceOf(Typed.Unreadable.class);
    }

    @Test
    void a_side_is_no_word_where_there_are_no_sides() {
        assertThat(TypedMeasure.read("0.05 proud", MeasureUnit.MILLIMETRE, false))
                .isInstanceOf(Typed.Unreadable.class);
        assertThat(TypedMeasure.read("-0.05", MeasureUnit.MILLIMETRE, true)
                        .only()
                        .orElseThrow()
                        .sideSaid())
                .isFalse();
        assertThat(TypedMeasure.read("0.05 up", MeasureUnit.MILLIMETRE, true)
                        .only()
                        .orElseThrow()
                        .sideSaid())
                .isTrue();
    }

    @ParameterizedTest
    @EnumSource
    void every_dimension_has_a_unit_it_is_shown_in_which_is_its_own_scale(Dimension dimension) {
        MeasureUnit shown = MeasureUnit.shown(dimension);
        long one = TypedMeasure.read("1", shown, false).only().orElseThrow().parts();
        assertThat(dimension.shown(one)).isEqualByComparingTo("1");
        assertThat(dimension.parts(dimension.shown(1))).isEqualTo(1);
        assertThat(shown.figure(one, 3)).isEqualByComparingTo("1");
    }

    @ParameterizedTest
    @EnumSource
    void the_example_of_a_refusal_can_be_read(MeasureUnit unit) {
        for (boolean sided : new boolean[] {true, false}) {
            Typed<TypedMeasure> refused = TypedMeasure.read("?", unit, sided && unit.dimension() == Dimension.LENGTH);
            String example = ((Typed.Unreadable<TypedMeasure>) refused).example();
            assertThat(TypedMeasure.read(example, unit, sided).only())
                    .as(example)
                    .isPresent();
        }
    }
}
