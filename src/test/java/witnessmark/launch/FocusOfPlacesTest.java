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
    void each_place_gives_the_focus_to_its_list_and_has_it_back_from_a_sheet() throws Exception {
        Shipped said = Shipped.through(FocusProgram.class, folder);
        assertThat(said.lines())
                .as("the program's own words: %s", said.errors())
                .hasSize(2 * ROUND.size() + 7)
                .endsWith("done");
        for (int i = 0; i < 2 * ROUND.size(); i++) {
            assertThat(said.lines().get(i)).startsWith(ROUND.get(i % ROUND.size()));
        }
        List<String> after = said.lines().subList(2 * ROUND.size(), said.lines().size() - 1);
        String list = "at table Incidents, row 2";
        assertThat(after.stream().filter(line -> line.startsWith("at "))).containsOnly(list);
        assertThat(after.stream().filter(line -> line.startsWith("on ")))
                .hasSize(2)
                .doesNotContain("on table Incidents, row 2");
    }
}
