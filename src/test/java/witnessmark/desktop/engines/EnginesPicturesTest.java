package witnessmark.desktop.engines;

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
import witnessmark.logbook.Desk;

/** Pictures for people, and that they are pictures of something. */
@UiTest
class EnginesPicturesTest {
    private static Desk desk;

    @BeforeAll
    static void open() {
        desk = EnginesWindow.inMemory();
    }

    @ParameterizedTest(name = "{0} {1}, {2} at {3}")
    @CsvSource({
        "K03, BUILD, LIGHT, 1.0",
        "K03, BEHIND, LIGHT, 1.0",
        "K03, BEHIND, DARK, 1.0",
        "K03, BEHIND, LIGHT, 1.5",
        "K06, CURVES, LIGHT, 1.0",
        "K06, CURVES, DARK, 1.0",
        "K05, BUILD, DARK, 1.0",
        "K03, PART, LIGHT, 1.0",
        "K03, PART, DARK, 1.0",
        "K03, PART_BEHIND, LIGHT, 1.0",
        "K03, PART_BEHIND, DARK, 1.5",
        "K21, LIVES, LIGHT, 1.0",
        "K03, FILTERED, LIGHT, 1.0",
        "K03, FILTERED, DARK, 1.5",
        "K03, BUILD, LIGHT, 1.5",
        "K06, CURVES, DARK, 1.5",
        "K03, TRENDS, LIGHT, 1.0",
        "K03, TRENDS, DARK, 1.0",
        "K03, TRENDS, DARK, 1.5",
    })
    void an_engine_is_painted_on_its_bench_in_many_colours(String engine, String what, Theme theme, float zoom) {
        try (EnginesWindow window = new EnginesWindow(desk, Looks.look(theme, zoom), EnginesWindow.english())) {
            window.engine(engine);
            switch (what) {
                case "BEHIND" -> window.behindSinceRebuild();
                case "LIVES" -> window.place.sheet().tabs().setSelectedIndex(1);
                case "CURVES" -> window.place.sheet().tabs().setSelectedIndex(2);
                case "TRENDS" ->
                    window.place
                            .sheet()
                            .tabs()
                            .setSelectedComponent(window.place.sheet().trends());
                case "FILTERED" -> {
                    window.behindSinceRebuild();
                    window.filter(window.place.sheet().beside().behind().entries(), "ridge");
                    window.filter(window.place.lists().parts().sheet(), "nowhere");
                }
                case "PART" -> window.part("HD-05");
                case "PART_BEHIND" -> window.part("RB-03a").behindItsLife();
                default -> {}
            }
            JRootPane root = window.root(1366, 768);
            String name = "engines-" + engine + "-" + what + "-" + theme + "-" + Math.round(zoom * 100);
            BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);
            assertThat(Pictures.colours(image, 51)).isGreaterThan(50);
            assertThat(image.getRGB(1364, 40)).isEqualTo(Palette.BENCH.colour().getRGB());
        }
    }
}
