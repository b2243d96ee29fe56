package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;

/**
 * The palette as the look gives it, against contrasts worked out beforehand by the WCAG formula with another program.
 */
@UiTest
class PaletteTest {
    @ParameterizedTest(name = "{0}: {1} on {2} is {3} to 1")
    @CsvSource({
        "LIGHT, INK, SHEET, 15.4",
        "LIGHT, INK, BENCH, 13.3",
        "LIGHT, INK2, SHEET, 6.8",
        "LIGHT, INK2, BENCH, 5.8",
        "LIGHT, INK2, RAIL, 5.2",
        "LIGHT, RULE, SHEET, 1.5",
        "LIGHT, FIELD_BORDER, SHEET, 4.1",
        "LIGHT, FIELD_BORDER, BENCH, 3.6",
        "LIGHT, MARK, SHEET, 8.7",
        "LIGHT, MARK, BENCH, 7.5",
        "LIGHT, MARK_INK, MARK, 9.0",
        "LIGHT, RAIL_SELECTION_INK, RAIL_SELECTION, 9.0",
        "LIGHT, WITHIN, SHEET, 7.1",
        "LIGHT, WITHIN, BENCH, 6.1",
        "LIGHT, DUE, SHEET, 6.8",
        "LIGHT, DUE, BENCH, 5.8",
        "LIGHT, DUE_FILL, SHEET, 2.1",
        "LIGHT, OVER, SHEET, 7.0",
        "LIGHT, OVER, BENCH, 6.1",
        "LIGHT, OVER_FILL, SHEET, 4.3",
        "LIGHT, NOT_KNOWN, SHEET, 6.3",
        "LIGHT, NOT_KNOWN, BENCH, 5.4",
        "LIGHT, BOARD_INK, BOARD, 13.1",
        "LIGHT, BOARD_INK2, BOARD, 7.9",
        "DARK, INK, SHEET, 12.6",
        "DARK, INK, BENCH, 14.2",
        "DARK, INK2, SHEET, 7.0",
        "DARK, INK2, BENCH, 7.8",
        "DARK, RULE, SHEET, 1.5",
        "DARK, FIELD_BORDER, SHEET, 3.9",
        "DARK, FIELD_BORDER, BENCH, 4.3",
        "DARK, MARK, SHEET, 7.7",
        "DARK, MARK, BENCH, 8.6",
        "DARK, MARK_INK, MARK, 8.7",
        "DARK, RAIL_SELECTION_INK, RAIL_SELECTION, 6.6",
        "DARK, WITHIN, SHEET, 7.5",
        "DARK, DUE, SHEET, 9.0",
        "DARK, DUE_FILL, SHEET, 6.3",
        "DARK, OVER, SHEET, 7.0",
        "DARK, OVER_FILL, SHEET, 4.3",
        "DARK, NOT_KNOWN, SHEET, 6.4",
        "DARK, BOARD_INK, BOARD, 16.6",
        "DARK, BOARD_INK2, BOARD, 9.0"
    })
    void a_pair_has_the_contrast_it_was_chosen_for(Theme theme, Palette ink, Palette ground, double ratio) {
        Looks.look(theme, 1.0f);
        assertThat(Contrast.of(ink.colour(), ground.colour())).isCloseTo(ratio, within(0.06));
    }

    /** Black on white is 21 to 1, equal colours 1 to 1: WCAG 2.2, contrast ratio. */
    @ParameterizedTest(name = "{0} on {1}: {2}")
    @CsvSource({"000000, FFFFFF, 21.0", "FFFFFF, FFFFFF, 1.0", "777777, FFFFFF, 4.48"})
    void the_formula_gives_the_published_values(String one, String other, double ratio) {
        Color a = new Color(Integer.parseInt(one, 16));
        Color b = new Color(Integer.parseInt(other, 16));
        assertThat(Contrast.of(a, b)).isCloseTo(ratio, within(0.01));
        assertThat(Contrast.of(b, a)).isEqualTo(Contrast.of(a, b));
    }
}
