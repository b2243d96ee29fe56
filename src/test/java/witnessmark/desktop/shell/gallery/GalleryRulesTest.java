package witnessmark.desktop.shell.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import javax.swing.JRootPane;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** The rules that every page must keep, held by a window of invented ones. */
@UiTest
class GalleryRulesTest {
    @ParameterizedTest(name = "at {0} x {1}, zoom {2}, pseudo-language {3}")
    @CsvSource({
        "1366, 768, 1.0, false",
        "1366, 768, 1.5, false",
        "1100, 700, 1.0, false",
        "1100, 700, 1.5, false",
        "1366, 768, 1.0, true",
        "1100, 700, 1.0, true"
    })
    void nothing_overlaps_and_nothing_is_cut(int width, int height, float zoom, boolean pseudo) {
        Texts texts = pseudo ? Texts.pseudo() : Texts.in(Locale.UK);
        try (Gallery gallery = new Gallery(Looks.look(Theme.LIGHT, zoom), texts)) {
            for (PlaceId place : PlaceId.values()) {
                gallery.desk.go(place);
                JRootPane root = Stage.window(gallery.pane, gallery.pane.menuBar(), width, height);
                assertThat(LayoutRules.broken(root)).as(place.name()).isEmpty();
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(PlaceId.class)
    void everything_that_takes_the_focus_has_a_name_of_its_own(PlaceId place) {
        try (Gallery gallery = new Gallery(Looks.light(), Texts.in(Locale.UK))) {
            gallery.desk.go(place);
            JRootPane root = Stage.window(gallery.pane, gallery.pane.menuBar(), 1366, 768);
            assertThat(AccessibleWalk.faults(root)).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "BEFORE_WE_GO, LIGHT",
        "BEFORE_WE_GO, DARK",
        "RUN_SHEET, LIGHT",
        "RUN_SHEET, DARK",
        "ENGINES, LIGHT",
        "ENGINES, DARK"
    })
    void every_text_stands_out_from_its_ground(PlaceId place, Theme theme) {
        try (Gallery gallery = new Gallery(Looks.look(theme, 1.0f), Texts.in(Locale.UK))) {
            gallery.desk.go(place);
            JRootPane root = Stage.window(gallery.pane, gallery.pane.menuBar(), 1366, 768);
            assertThat(Contrast.tooLow(root)).isEmpty();
        }
    }
}
