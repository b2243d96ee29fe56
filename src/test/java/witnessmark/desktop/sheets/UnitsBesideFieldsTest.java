package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** Which unit a bare figure is in is seen before anything is typed. */
@UiTest
class UnitsBesideFieldsTest {
    @TempDir
    Path folder;

    /** Before anything is typed: a bare figure is in the unit at the edge of its field. */
    @Test
    void figures_of_fasteners_and_of_the_fit_at_speed_show_their_unit_beside_the_empty_field() {
        try (SheetsWindow window = open(Texts.in(Locale.UK))) {
            window.open("write_fastener");
            window.awaitIdle();
            window.lay(1366, 768);
            for (String field : List.of(
                    "Peak gas pressure, bar",
                    "Nominal diameter, mm",
                    "Pull the maker names, kN",
                    "Diameter that stretches, mm",
                    "Length that stretches, mm",
                    "Proof load, kN")) {
                assertThat(window.ui().field(field).getText()).as(field).isEmpty();
            }
            window.open("write_speed_figures");
            window.awaitIdle();
            window.lay(1366, 768);
            for (String field : List.of("Block, hot, °C", "Pistons, revved cold, °C", "To be left at speed, mm")) {
                assertThat(window.ui().field(field).getText()).as(field).isEmpty();
            }
        }
    }

    private SheetsWindow open(Texts texts) {
        return new SheetsWindow(folder, Looks.light(), texts);
    }
}
