package witnessmark.quantity.typed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Weekdays and leap days are those of the Gregorian calendar; 2026-07-08 is a Wednesday. */
class TypedDateTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 7, 8);

    @ParameterizedTest(name = "on 8 July 2026, {0} is {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "5/12 | 2025-12-05",
                "8/7 | 2026-07-08",
                "9/7 | 2026-07-09",
                "8 Aug | 2025-08-08",
                "7 Aug | 2026-08-07",
                "5.12. | 2025-12-05",
                "5.12 | 2025-12-05",
                "5-12 | 2025-12-05",
                "5 Dec | 2025-12-05",
                "5dec | 2025-12-05",
                "5 December | 2025-12-05",
                "5th Dec | 2025-12-05",
                "Dec 5 | 2025-12-05",
                "December 5th | 2025-12-05",
                "Dec 5, 2026 | 2026-12-05",
                "7 July | 2026-07-07",
                "3 Sept | 2025-09-03",
                "5.12.26 | 2026-12-05",
                "5/12/2026 | 2026-12-05",
                "5 Dec 26 | 2026-12-05",
                "5-Dec-2026 | 2026-12-05",
                "5 Dec, 2026 | 2026-12-05",
                "Sat 5 Dec 2026 | 2026-12-05",
                "Saturday, 5 December 2026 | 2026-12-05",
                "Sun 5 Jul | 2026-07-05",
                "2026-12-05 | 2026-12-05",
                "2026/12/5 | 2026-12-05",
                "5.12.99 | 1999-12-05",
                "5.12.46 | 2046-12-05",
                "5.12.47 | 1947-12-05",
                "29 Feb | 2024-02-29",
                "1 Jan 1900 | 1900-01-01",
                "31 Dec 2199 | 2199-12-31",
                "today | 2026-07-08",
                "TODAY | 2026-07-08",
                "yesterday | 2026-07-07",
                "tomorrow | 2026-07-09",
                "sat | 2026-07-04",
                "wed | 2026-07-08",
                "thu | 2026-07-02",
                "Thursday | 2026-07-02",
            })
    void a_day_that_has_been_is_read(String text, LocalDate day) {
        assertThat(TypedDate.read(text, TODAY, DayOrder.DAY_FIRST)).isEqualTo(new Typed.Read<>(day, text));
    }

    @ParameterizedTest(name = "on 8 July 2026, {0} ahead is {1}")
    @CsvSource({
        "5/12, 2026-12-05",
        "8/7, 2026-07-08",
        "7 Jul, 2027-07-07",
        "sat, 2026-07-11",
        "wed, 2026-07-08",
        "29 Feb, 2028-02-29",
        "5.12.25, 2025-12-05",
    })
    void a_day_planned_is_read_from_today_on(String text, LocalDate day) {
        assertThat(TypedDate.readAhead(text, TODAY, DayOrder.DAY_FIRST)).isEqualTo(new Typed.Read<>(day, text));
    }

    @Test
    void the_month_may_stand_first() {
        assertThat(TypedDate.read("12/5/26", TODAY, DayOrder.MONTH_FIRST).only())
                .contains(LocalDate.of(2026, 12, 5));
        assertThat(TypedDate.read("5/12", TODAY, DayOrder.MONTH_FIRST).only()).contains(LocalDate.of(2026, 5, 12));
    }

    @ParameterizedTest(name = "\"{0}\" is not read")
    @ValueSource(
            strings = {
                "",
                " ",
                "12abc",
                "5",
                "5/",
                "5/13",
                "32/1",
                "0/5",
                "5/0",
                "30 Feb",
                "29 Feb 2026",
                "5/12.26",
                "5/12/",
                "5.12.26.",
                "5/12/026",
                "5 De",
                "5 Decx",
                "5 Dec x",
                "Sun 5 Dec 2026",
                "xyz 5 Dec 2026",
                "sa",
                "satx",
                "2026-13-05",
                "2026-12-32",
                "26-12-05-01",
                "31 Dec 1899",
                "1 Jan 2200",
                "1 Jan 9999",
                "5 Dec 2026 10:40",
            })
    void what_is_no_day_is_not_read(String text) {
        assertThat(TypedDate.read(text, TODAY, DayOrder.DAY_FIRST))
                .isInstanceOfSatisfying(Typed.Unreadable.class, unreadable -> {
                    for (Object example : unreadable.examples()) {
                        assertThat(TypedDate.read(example.toString(), TODAY, DayOrder.DAY_FIRST))
                                .isInstanceOf(Typed.Read.class);
                    }
                });
    }

    @Test
    void a_29_february_is_found_across_a_century_without_a_leap_day() {
        assertThat(TypedDate.read("29 Feb", LocalDate.of(1904, 1, 20), DayOrder.DAY_FIRST)
                        .only())
                .isEmpty(); // 1896 lies before the first year a logbook takes
        assertThat(TypedDate.readAhead("29 Feb", LocalDate.of(2096, 3, 1), DayOrder.DAY_FIRST)
                        .only())
                .contains(LocalDate.of(2104, 2, 29));
    }
}
