package witnessmark.desktop.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

@UiTest
class MarksTest {
    private static BufferedImage mark(SeamState state, int side) {
        JLabel label = new JLabel(new SeamIcon(state, side));
        label.setOpaque(true);
        label.setBackground(Color.WHITE);
        return Pictures.paint(Stage.lay(label, side, side), 1);
    }

    private static boolean inked(BufferedImage image, int x, int y) {
        Color colour = new Color(image.getRGB(x, y));
        return (colour.getRed() + colour.getGreen() + colour.getBlue()) / 3 < 190;
    }

    /** Share of points that are ink in one and paper in the other: what is left when colour is taken away. */
    private static double differ(BufferedImage one, BufferedImage other) {
        int differing = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                differing += inked(one, x, y) == inked(other, x, y) ? 0 : 1;
            }
        }
        return (double) differing / (one.getWidth() * one.getHeight());
    }

    @ParameterizedTest(name = "{0} pixels")
    @ValueSource(ints = {16, 24, 48})
    void no_two_marks_look_alike_in_black_and_white(int side) {
        for (SeamState one : SeamState.values()) {
            for (SeamState other : SeamState.values()) {
                if (one != other) {
                    assertThat(differ(mark(one, side), mark(other, side)))
                            .as(one + " and " + other)
                            .isGreaterThan(0.02);
                }
            }
        }
    }

    @Test
    void a_mark_says_its_word_and_what_it_is_about() {
        StateWords words = new StateWords(Texts.in(Locale.UK));
        SeamMark mark = words.mark(SeamState.OVER, "valve springs, 16.2 of 15 hours");
        assertThat(mark.getAccessibleContext().getAccessibleName()).isEqualTo("Over, valve springs, 16.2 of 15 hours");
        assertThat(mark.getToolTipText()).isEqualTo("Over");
        for (SeamState state : SeamState.values()) {
            assertThat(words.of(state)).isNotBlank();
        }
    }

    @ParameterizedTest(name = "ran {0} of {1}, adds {2}: within to {3}, over to {4}, zoom {5}")
    @CsvSource({
        "6, 12, 0, 0.5, 0, 1.0",
        "12, 12, 0, 1.0, 0, 1.0",
        "15, 12, 0, 1.0, 1.25, 1.0",
        "0, 12, 0, 0, 0, 1.0",
        "6, 12, 0, 0.5, 0, 1.5",
        "15, 12, 0, 1.0, 1.25, 1.5"
    })
    void a_strip_is_filled_to_scale_and_its_seam_stands_at_the_limit(
            double ran, double limit, double adds, double within, double over, float zoom) {
        Looks.look(Theme.LIGHT, zoom);
        LifeStrip strip = new LifeStrip(Life.of(ran, adds, limit), SeamState.WITHIN, "hours");
        JPanel ground = new JPanel(new java.awt.BorderLayout());
        ground.setBackground(Palette.SHEET.colour());
        ground.add(strip);
        BufferedImage image = Pictures.paint(Stage.lay(ground, 270, 40), 1);
        double perLimit = 270 / LifeStrip.SCALE_END;
        int middle = 20;
        assertThat(last(image, middle, Palette.WITHIN.colour())).isCloseTo(within * perLimit, within(3.0));
        assertThat(last(image, middle, Palette.OVER_FILL.colour())).isCloseTo(over * perLimit, within(3.0));
        int top = 20 - Math.round(9 * zoom);
        assertThat(last(image, top, Palette.SEAM.colour())).isCloseTo(perLimit, within(3.0));
    }

    private static double last(BufferedImage image, int y, Color colour) {
        for (int x = image.getWidth() - 1; x >= 0; x--) {
            if (image.getRGB(x, y) == colour.getRGB()) {
                return x + 1.0;
            }
        }
        return 0;
    }

    @Test
    void what_is_not_known_is_an_outline_and_never_a_bar() {
        LifeStrip strip = new LifeStrip(Life.notKnown(), SeamState.NOT_KNOWN, "not known");
        JPanel ground = new JPanel(new java.awt.BorderLayout());
        ground.setBackground(Palette.SHEET.colour());
        ground.add(strip);
        BufferedImage image = Pictures.paint(Stage.lay(ground, 270, 20), 1);
        assertThat(last(image, 10, Palette.WITHIN.colour())).isZero();
        assertThat(last(image, 10, Palette.TRACK.colour())).isZero();
        assertThat(last(image, 5, Palette.NOT_KNOWN.colour())).isPositive();
        assertThat(strip.getAccessibleContext().getAccessibleName()).isEqualTo("not known");
    }

    @Test
    void a_life_that_cannot_be_is_refused() {
        for (double bad : new double[] {-1, Double.NaN}) {
            assertThatThrownBy(() -> Life.of(bad, 0, 12)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> Life.of(1, bad, 12)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> Life.of(1, 0, bad)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> Life.of(1, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Life.notKnown().isKnown()).isFalse();
    }

    @Test
    void nothing_people_type_is_taken_for_markup() {
        List<javax.swing.JComponent> shown = new ArrayList<>();
        shown.add(Lettering.line("<html>x", Styles.NOTE));
        shown.add(Lettering.cutLine("<html>x", Styles.NOTE));
        shown.add(Buttons.plain(Caption.of("<html>x"), () -> {}));
        shown.add(Buttons.link(Caption.of("<html>x"), () -> {}));
        shown.add(new FieldBox(Caption.of("<html>x")).label());
        shown.add(new NoteLine());
        for (javax.swing.JComponent component : shown) {
            assertThat(component.getClientProperty("html")).isNull();
            assertThat(component.getClientProperty("html.disable")).isEqualTo(true);
        }
    }

    @Test
    void a_paragraph_wraps_to_its_width_and_says_what_it_says_now() {
        JTextArea words = Lettering.paragraph("", Styles.NOTE);
        words.setText("Run saved: car 41, practice 2, 28 min 20 s. It can be taken back until the window is closed.");
        JPanel panel = new JPanel(new FormLayout("insets 0, fillx", "[0::,grow,fill]"));
        panel.add(words, "growx, wmin 0");
        Stage.lay(panel, 150, 300);
        int narrow = words.getHeight();
        Stage.lay(panel, 600, 300);
        assertThat(narrow).isGreaterThan(words.getHeight());
        assertThat(words.getAccessibleContext().getAccessibleName()).startsWith("Run saved: car 41");
    }

    @Test
    void what_stands_beside_goes_below_where_there_is_no_room() {
        JLabel main = new JLabel("main");
        JLabel side = new JLabel("side");
        SideBySide both = new SideBySide(main, side, 200, 600);
        Stage.lay(both, 600, 300);
        assertThat(side.getX()).isEqualTo(400);
        assertThat(main.getWidth()).isEqualTo(384);
        Stage.lay(both, 599, 300);
        assertThat(side.getX()).isZero();
        assertThat(side.getY()).isGreaterThanOrEqualTo(main.getHeight());
        assertThat(side.getY() + side.getHeight()).isEqualTo(300);
    }
}
