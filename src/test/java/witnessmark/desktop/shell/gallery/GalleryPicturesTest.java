package witnessmark.desktop.shell.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.Locale;
import javax.swing.JRootPane;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** Pictures for people, and that they are pictures of something. */
@UiTest
class GalleryPicturesTest {
    @ParameterizedTest(name = "{0} {1} at {2}")
    @CsvSource({
        "BEFORE_WE_GO, LIGHT, 1.0",
        "BEFORE_WE_GO, DARK, 1.0",
        "BEFORE_WE_GO, LIGHT, 1.5",
        "RUN_SHEET, LIGHT, 1.0",
        "RUN_SHEET, DARK, 1.0",
        "RUN_SHEET, DARK, 1.5",
        "RUN_SHEET, LIGHT, 1.5",
        "ENGINES, LIGHT, 1.0",
        "ENGINES, DARK, 1.0"
    })
    void a_page_is_painted_on_its_bench_in_many_colours(PlaceId place, Theme theme, float zoom) {
        Look look = Looks.look(theme, zoom);
        try (Gallery gallery = new Gallery(look, Texts.in(Locale.UK))) {
            gallery.desk.go(place);
            JRootPane root = Stage.window(gallery.pane, gallery.pane.menuBar(), 1366, 768);
            String name = "gallery-" + place + "-" + theme + "-" + Math.round(zoom * 100);
            BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);
            assertThat(Pictures.colours(image, 51)).isGreaterThan(50);
            assertThat(image.getRGB(1364, 40)).isEqualTo(Palette.BENCH.colour().getRGB());
        }
    }
}
