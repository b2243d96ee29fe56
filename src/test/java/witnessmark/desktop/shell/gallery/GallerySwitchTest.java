package witnessmark.desktop.shell.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** A window switched while open is the same as one opened that way: a stale colour, font or gap would differ. */
@UiTest
class GallerySwitchTest {
    private static JRootPane window(Gallery gallery, PlaceId place) {
        gallery.desk.go(place);
        return Stage.window(gallery.pane, gallery.pane.menuBar(), 1366, 768);
    }

    private static List<String> bounds(Component root) {
        List<String> all = new ArrayList<>();
        Stage.visible(root)
                .forEach(component -> all.add(component.getClass().getSimpleName() + " " + component.getBounds()));
        return all;
    }

    @ParameterizedTest(name = "{0} from {1} to {2}")
    @CsvSource({
        "BEFORE_WE_GO, LIGHT, DARK",
        "BEFORE_WE_GO, DARK, LIGHT",
        "RUN_SHEET, LIGHT, DARK",
        "RUN_SHEET, DARK, LIGHT",
        "ENGINES, LIGHT, DARK",
        "ENGINES, DARK, LIGHT"
    })
    void after_a_switch_of_theme_every_pixel_is_as_if_it_had_always_been_so(PlaceId place, Theme from, Theme to) {
        BufferedImage wanted;
        try (Gallery fresh = new Gallery(Looks.look(to, 1.0f), Texts.in(Locale.UK))) {
            wanted = Pictures.paint(window(fresh, place), 1);
        }
        Look look = Looks.look(from, 1.0f);
        try (Gallery switched = new Gallery(look, Texts.in(Locale.UK))) {
            JRootPane root = window(switched, place);
            Pictures.paint(root, 1);
            look.use(to);
            SwingUtilities.updateComponentTreeUI(root);
            BufferedImage now = Pictures.paint(Stage.lay(root, 1366, 768), 1);
            assertThat(differing(wanted, now)).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(PlaceId.class)
    void after_a_change_of_size_everything_stands_as_if_it_had_always_been_so(PlaceId place) {
        List<String> wanted;
        try (Gallery fresh = new Gallery(Looks.look(Theme.LIGHT, 1.5f), Texts.in(Locale.UK))) {
            wanted = bounds(window(fresh, place));
        }
        Look look = Looks.light();
        try (Gallery switched = new Gallery(look, Texts.in(Locale.UK))) {
            JRootPane root = window(switched, place);
            look.zoom(1.5f);
            SwingUtilities.updateComponentTreeUI(root);
            List<String> now = bounds(Stage.lay(root, 1366, 768));
            assertThat(now).hasSameSizeAs(wanted);
            assertThat(java.util.stream.IntStream.range(0, now.size())
                            .filter(i -> !now.get(i).equals(wanted.get(i)))
                            .mapToObj(i -> now.get(i) + ", wanted " + wanted.get(i)))
                    .isEmpty();
        }
    }

    private static List<String> differing(BufferedImage wanted, BufferedImage now) {
        List<String> where = new ArrayList<>();
        for (int y = 0; y < wanted.getHeight() && where.size() < 5; y++) {
            for (int x = 0; x < wanted.getWidth() && where.size() < 5; x++) {
                if (wanted.getRGB(x, y) != now.getRGB(x, y)) {
                    where.add("at %d, %d: %06X, wanted %06X"
                            .formatted(x, y, now.getRGB(x, y) & 0xFFFFFF, wanted.getRGB(x, y) & 0xFFFFFF));
                }
            }
        }
        return where;
    }
}
