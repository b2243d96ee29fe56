package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindowStateTest {
    private static final Rectangle SMALL = new Rectangle(0, 0, 1366, 768);
    private static final Rectangle RIGHT_OF_IT = new Rectangle(1366, 0, 1920, 1080);

    @Test
    void the_first_time_the_window_fits_the_first_screen() {
        assertThat(WindowState.place(Optional.empty(), List.of(SMALL))).isEqualTo(SMALL);
        Rectangle large = new Rectangle(0, 0, 2560, 1440);
        assertThat(WindowState.place(Optional.empty(), List.of(large))).isEqualTo(new Rectangle(597, 336, 1366, 768));
    }

    @ParameterizedTest(name = "at {0}, {1}: kept {2}")
    @CsvSource({
        "100, 50, true",
        "-900, 50, true",
        "-1000, 50, false",
        "1286, 700, true",
        "1287, 700, false",
        "100, 768, false",
        "100, -14, true",
        "100, -40, false"
    })
    void it_is_kept_where_enough_of_its_title_bar_can_be_seized(int x, int y, boolean kept) {
        Rectangle wanted = new Rectangle(x, y, 1000, 650);
        Rectangle placed = WindowState.place(Optional.of(wanted), List.of(SMALL));
        assertThat(placed.equals(wanted)).isEqualTo(kept);
        assertThat(placed.intersects(SMALL)).isTrue();
    }

    @Test
    void a_window_from_a_screen_that_is_gone_comes_to_the_middle_of_the_first() {
        Rectangle wanted = new Rectangle(1500, 100, 1200, 700);
        assertThat(WindowState.place(Optional.of(wanted), List.of(SMALL, RIGHT_OF_IT)))
                .isEqualTo(wanted);
        assertThat(WindowState.place(Optional.of(wanted), List.of(SMALL))).isEqualTo(new Rectangle(83, 34, 1200, 700));
    }

    @ParameterizedTest(name = "''{0}''")
    @ValueSource(strings = {"", "1,2,3", "1,2,3,4,5", "a,2,3,4", "1,2,0,4", "1,2,3,-4", "1,2,3,99999999999"})
    void bounds_that_cannot_be_read_are_no_bounds(String text) {
        assertThat(WindowState.read(text)).isEmpty();
    }

    @Test
    void bounds_read_back_as_written() {
        assertThat(WindowState.read("-5,10,1200,700")).contains(new Rectangle(-5, 10, 1200, 700));
    }
}
