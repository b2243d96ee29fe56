package witnessmark.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.UiTest;

/**
 * Names are shown as they were typed, wherever: a label or a button of Swing takes a text that begins with {@code <html>}
 * for markup and fetches the pictures it names, unless that is switched off in each.
 */
@UiTest(display = true)
class MarkupTest {
    @TempDir
    Path folder;

    @Test
    void nothing_in_any_place_or_menu_takes_a_text_for_markup() throws Exception {
        Shipped shipped = Shipped.through(MarkupProgram.class, folder);
        assertThat(shipped.lines()).as(shipped.errors()).isNotEmpty();
        assertThat(shipped.lines())
                .filteredOn(line -> line.startsWith("markup"))
                .isEmpty();
        String last = shipped.lines().get(shipped.lines().size() - 1);
        assertThat(Integer.parseInt(last.substring("looked at ".length()))).isGreaterThan(400);
    }
}
