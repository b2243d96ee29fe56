package witnessmark.desktop.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.Locale;
import javax.swing.JRootPane;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.cost.result.BarsBy;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.View;

/** Pictures for people, and that they are pictures of something. */
@UiTest
class SeasonPicturesTest {
    private static View opening;
    private static View end;

    @BeforeAll
    static void open() {
        opening = SeasonWindow.opening();
        end = SeasonWindow.end();
    }

    @ParameterizedTest(name = "{0} {1} at {2}, {3} high")
    @CsvSource({
        "OPENING, LIGHT, 1.0, 768",
        "OPENING, DARK, 1.0, 2200",
        "END, LIGHT, 1.0, 2200",
        "END, DARK, 1.0, 768",
        "END, LIGHT, 1.5, 768",
        "CAUSE, DARK, 1.5, 2600",
        "LINES, LIGHT, 1.0, 768",
        "BARE, DARK, 1.0, 768",
    })
    void the_season_is_painted_on_its_bench_in_many_colours(String what, Theme theme, float zoom, int high) {
        View view = what.equals("OPENING") ? opening : what.equals("BARE") ? SeasonWindow.bare() : end;
        try (SeasonWindow window = new SeasonWindow(Looks.look(theme, zoom), SeasonWindow.english(), view)) {
            if (what.equals("CAUSE")) {
                window.page().by().combo().setSelectedItem(BarsBy.ENGINE);
                window.tasks.awaitIdle();
            }
            if (what.equals("LINES")) {
                window.place.open(window.page().failures().shown().get(1).id());
            }
            JRootPane root = window.root(1366, high);
            String name = "season-" + what + "-" + theme + "-" + Math.round(zoom * 100);
            BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);
            assertThat(Pictures.colours(image, 51)).isGreaterThan(what.equals("BARE") ? 15 : 40);
            assertThat(image.getRGB(1364, 40)).isEqualTo(Palette.BENCH.colour().getRGB());
        }
    }
}
