package witnessmark.desktop.traceview;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.Desk;
import witnessmark.logbook.tracing.SeeTrace;
import witnessmark.wording.Texts;

/** Pictures of the page of a trace, for people to look at. */
@UiTest
class TracePicturesTest {
    @TempDir
    private static Path folder;

    private static Desk desk;

    @BeforeAll
    static void read() {
        desk = TraceWindow.book(folder);
    }

    @AfterAll
    static void end() {
        desk.logbook().close();
    }

    @ParameterizedTest(name = "{0}, {1} at {2}")
    @CsvSource({
        "WHOLE, LIGHT, 1.0",
        "WHOLE, DARK, 1.0",
        "WHOLE, LIGHT, 1.5",
        "CLOSE, LIGHT, 1.0",
        "CLOSE, DARK, 1.5",
        "OVER, LIGHT, 1.0",
        "OVER, DARK, 1.0",
        "TABLE, LIGHT, 1.0",
    })
    void a_trace_is_painted_in_rows(String what, Theme theme, float zoom) {
        try (TraceWindow window = new TraceWindow(desk, Looks.look(theme, zoom), Texts.in(Locale.UK))) {
            window.open(SeeTrace.all(desk.view()).get(0).trace().id());
            window.root(1366, 768);
            TracePanel panel = window.page.panel();
            switch (what) {
                case "CLOSE" -> {
                    panel.view().closeTo(panel.side().markTable().shown().get(0).mark());
                    panel.tabs().setSelectedIndex(1);
                }
                case "OVER" -> {
                    window.page.layOver(SeeTrace.all(desk.view()).get(1).trace().id());
                    panel.tabs().setSelectedIndex(2);
                    window.tasks.awaitIdle();
                    panel.view().closeTo(panel.side().markTable().shown().get(0).mark());
                }
                case "TABLE" -> {
                    window.page.toggle();
                    panel.tabs().setSelectedIndex(4);
                }
                default -> panel.view().hair(700);
            }
            window.tasks.awaitIdle();
            JRootPane root = window.root(1366, 768);
            String name = "trace-" + what + "-" + theme + "-" + Math.round(zoom * 100);
            BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);
            assertThat(Pictures.colours(image, 51)).isGreaterThan(50);
        }
    }
}
