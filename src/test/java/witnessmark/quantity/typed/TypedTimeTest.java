package witnessmark.quantity.typed;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.quantity.RunningTime;

/** Expected seconds are worked out by hand from the text; the forms are common practice, no source. */
class TypedTimeTest {
    @ParameterizedTest(name = "{0} is {1} s")
    @CsvSource(
            delimiter = '|',
            value = {
                "1h20 | 4800",
                "1h 20m | 4800",
                "1h 20 | 4800",
                "1 h 20 min | 4800",
                "1H20 | 4800",
                "1h5 | 3900",
                "1h | 3600",
                "2 hrs 5 mins | 7500",
                "80 | 4800",
                "80 min | 4800",
                "80m | 4800",
                "80 minutes | 4800",
                "27.5 | 1650",
                "27,5 min | 1650",
                ".5 | 30",
                "1.33 h | 4788",
                "1,33 h | 4788",
                "1.33h | 4788",
                "95 s | 95",
                "95s | 95",
                "95.25 s | 95.25",
                "27:30 | 1650",
                "5:00 | 300",
                "90:05 | 5405",
                "1:20:30 | 4830",
                "0:27:30 | 1650",
                "0:27:30,5 | 1650.5",
                "1:20.5 | 80.5",
                "27'30\" | 1650",
                "27′30″ | 1650",
                "27 min 30 s | 1650",
                "27m30 | 1650",
                "1h20m30 | 4830",
                "1h 20m 30.5s | 4830.5",
                "1 200 s | 1200",
                "0 | 0",
                "0:00 | 0",
            })
    void a_running_time_is_read_as_the_trade_types_it(String text, String seconds) {
        assertThat(TypedTime.read(text)).isEqualTo(new Typed.Read<>(RunningTime.parse(seconds), text));
    }

    @ParameterizedTest(name = "{0} asks between {1} s and {2} s")
    @CsvSource({"1:20, 4800, 80", "4:59, 17940, 299", "0:45, 2700, 45", "01:20, 4800, 80"})
    void two_figures_with_a_small_first_are_asked_about(String text, String hours, String minutes) {
        assertThat(TypedTime.read(text))
                .isEqualTo(new Typed.Two<>(RunningTime.parse(hours), RunningTime.parse(minutes)));
    }

    @Test
    void two_figures_in_a_field_of_hours_are_always_asked_about() {
        assertThat(TypedTime.read("12:52", TimeUnit.HOUR))
                .isEqualTo(new Typed.Two<>(RunningTime.parse("46320"), RunningTime.parse("772")));
    }

    @ParameterizedTest(name = "{0} in a field of {1} is {2} s")
    @CsvSource({
        "12.87, HOUR, 46332",
        "80 min, HOUR, 4800",
        "12h52, HOUR, 46320",
        "90, SECOND, 90",
        "1m 30, SECOND, 90",
        "1h20, SECOND, 4800",
    })
    void a_bare_figure_is_in_the_unit_of_its_field(String text, TimeUnit own, String seconds) {
        assertThat(TypedTime.read(text, own)).isEqualTo(new Typed.Read<>(RunningTime.parse(seconds), text));
    }

    @ParameterizedTest(name = "\"{0}\" is not read")
    @ValueSource(
            strings = {
                "",
                "  ",
                "1h7x",
                "12abc",
                "abc",
                "-5",
                "−5 min",
                "+5",
                "1h80",
                "1h 60m",
                "20m 1h",
                "1h 1h",
                "1.5h20",
                "5 10",
                "9 15",
                "1h -5m",
                "1:2",
                "1:60",
                "1:20:60",
                "1:20:30:40",
                "1:20 h",
                ":30",
                "30:",
                "80.",
                "1,234.5",
                "1.2.3",
                "80 bar",
                "80 min.",
                "1e3",
                "0x10",
                "NaN",
                "٣٠",
                "95 s 5",
                "9999999999999999999 h",
            })
    void what_is_no_running_time_is_not_read_and_comes_with_an_example(String text) {
        Typed<RunningTime> read = TypedTime.read(text);
        assertThat(read).isInstanceOf(Typed.Unreadable.class);
        assertThat(((Typed.Unreadable<RunningTime>) read).examples()).hasSize(2);
    }

    @ParameterizedTest(name = "the examples of a field of {0} can be read")
    @org.junit.jupiter.params.provider.EnumSource
    void every_example_offered_can_be_read(TimeUnit own) {
        for (String example : own.examples()) {
            assertThat(TypedTime.read(example, own)).isInstanceOf(Typed.Read.class);
        }
    }

    @Test
    void spaces_of_every_kind_set_thousands_and_units_apart() {
        assertThat(TypedTime.read("1\u00A0200\u2009s").only()).contains(RunningTime.parse("1200"));
        assertThat(TypedTime.read("\u202F1\u202Fh\u00A020 ").only()).contains(RunningTime.parse("4800"));
    }

    @Test
    void a_figure_finer_than_a_millisecond_goes_to_the_nearest_with_halves_up() {
        assertThat(TypedTime.read("0.0005 s").only()).contains(new RunningTime(1));
        assertThat(TypedTime.read("0.0004 s").only()).contains(RunningTime.NONE);
    }
}
