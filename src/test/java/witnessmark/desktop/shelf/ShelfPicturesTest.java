package witnessmark.desktop.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.Locale;
import javax.swing.JRootPane;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.View;

/** Pictures for people, and that they are pictures of something. */
@UiTest
class ShelfPicturesTest {
    private static View sample;

    @BeforeAll
    static void open() {
        sample = ShelfWindow.sample();
    }

    @ParameterizedTest(name = "{0} {1} at {2}")
    @CsvSource({
        "SAMPLE, LIGHT, 1.0",
        "SAMPLE, DARK, 1.0",
        "SAMPLE, LIGHT, 1.5",
        "SMALL, LIGHT, 1.0",
        "FILTERED, DARK, 1.5",
        "BARE, LIGHT, 1.0",
    })
    void the_shelf_is_painted_on_its_bench_in_many_colours(String what, Theme theme, float zoom) {
        View view = what.equals("SMALL") ? ShelfWindow.small() : what.equals("BARE") ? ShelfWindow.bare() : sample;
        try (ShelfWindow window = new ShelfWindow(Looks.look(theme, zoom), ShelfWindow.english(), view)) {
            if (what.equals("FILTERED")) {
                window.where(Whereabout.WITH_OTHERS);
            }
            JRootPane root = window.root(1366, 768);
            String name = "shelf-" + what + "-" + theme + "-" + Math.round(zoom * 100);
            BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);
            assertThat(Pictures.colours(image, 51)).isGreaterThan(what.equals("BARE") ? 15 : 40);
            assertThat(image.getRGB(1364, 40)).isEqualTo(Palette.BENCH.colour().getRGB());
        }
    }
}
