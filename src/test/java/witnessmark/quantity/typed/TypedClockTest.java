package witnessmark.quantity.typed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedClockTest {
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "10:40, 10:40",
        "1040, 10:40",
        "9, 09:00",
        "9.30, 09:30",
        "10h40, 10:40",
        "10H40, 10:40",
        "9h, 09:00",
        "930, 09:30",
        "0930, 09:30",
        "0, 00:00",
        "00:00, 00:00",
        "23:59, 23:59",
        "10:40:15, 10:40:15",
        "9 pm, 21:00",
        "9:30pm, 21:30",
        "1 am, 01:00",
        "12 am, 00:00",
        "12 pm, 12:00",
    })
    void a_time_of_day_is_read(String text, LocalTime time) {
        assertThat(TypedClock.read(text)).isEqualTo(new Typed.Read<>(time, text));
    }

    @ParameterizedTest(name = "\"{0}\" is not read")
    @ValueSource(
            strings = {
                "",
                " ",
                "24",
                "24:00",
                "2460",
                "10:60",
                "10:4",
                "9.3",
                "99",
                "12345",
                "10:40x",
                "x",
                "-9",
                "13 pm",
                "0 am",
                "10:40:60",
                "10::40",
                "10 40 50"
            })
    void what_is_no_time_of_day_is_not_read(String text) {
        assertThat(TypedClock.read(text)).isInstanceOfSatisfying(Typed.Unreadable.class, unreadable -> {
            for (Object example : unreadable.examples()) {
                assertThat(TypedClock.read(example.toString())).isInstanceOf(Typed.Read.class);
            }
        });
    }
}
