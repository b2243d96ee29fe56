package witnessmark.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.abuse.NetworkWatch;
import witnessmark.desktop.testing.UiTest;

/** The shipped program, gone through place by place. */
@UiTest(display = true)
class WalkedThroughTest {
    @TempDir
    Path folder;

    /**
     * Names are shown as they were typed, wherever: a label or a button of Swing takes a text that begins with
     * {@code <html>} for markup and fetches the pictures it names, unless that is switched off in each.
     */
    @Test
    void no_place_or_menu_takes_a_text_for_markup_and_the_window_connects_nowhere() throws Exception {
        NetworkWatch watch = new NetworkWatch(folder);
        Shipped shipped = Shipped.through(WalkProgram.class, folder, watch::watched);
        assertThat(shipped.lines()).as(shipped.errors()).isNotEmpty();
        SoftAssertions.assertSoftly(softly -> {
            softly.assertThat(shipped.lines())
                    .filteredOn(line -> line.startsWith("markup"))
                    .isEmpty();
            String last = shipped.lines().get(shipped.lines().size() - 1);
            softly.assertThat(Integer.parseInt(last.substring("looked at ".length())))
                    .isGreaterThan(400);
        });
        assertThat(watch.connections()).isEmpty();
    }
}
