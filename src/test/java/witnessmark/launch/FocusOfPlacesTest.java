package witnessmark.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.UiTest;

/** Who goes to a place by its key is in what one works on there, the first time already, while its rows are being read. */
@UiTest(display = true)
class FocusOfPlacesTest {
    private static final List<String> ROUND = List.of(
            "3 table Incidents",
            "8 table Failures, dearest first",
            "5 table Parts",
            "4 table Engines",
            "1 push button Held, Rods RS-03");

    @TempDir
    Path folder;

    @Test
    void each_place_gives_the_focus_to_its_list() throws Exception {
        Shipped said = Shipped.through(FocusProgram.class, folder);
        assertThat(said.lines())
                .as("the program's own words: %s", said.errors())
                .hasSize(2 * ROUND.size() + 1)
                .endsWith("done");
        for (int i = 0; i < 2 * ROUND.size(); i++) {
            assertThat(said.lines().get(i)).startsWith(ROUND.get(i % ROUND.size()));
        }
    }
}
