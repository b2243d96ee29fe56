package witnessmark.desktop.beforewego;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.JLabel;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.testing.UiTest;
import witnessmark.quantity.Moment;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** How long until a run, by a clock that is given: java.time in the zone of the event is what it is held against. */
@UiTest
class CountdownTest {
    private static final ZoneId THERE = ZoneId.of("Europe/London");
    private static final Texts TEXTS = Texts.in(Locale.UK);

    private static Countdown countdown(String seen, @Nullable String out) {
        Moment at = out == null ? null : Moment.of(LocalDateTime.parse(out), THERE);
        return new Countdown(TEXTS, new Measures(TEXTS, Units.METRIC), LocalDate.parse(seen), at);
    }

    private static Instant clock(String now) {
        return LocalDateTime.parse(now).atZone(THERE).toInstant();
    }

    private static String said(String seen, @Nullable String out, String now) {
        return countdown(seen, out).at(clock(now));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "12:45:00, 'In 1 h 20 min, 14:05'",
        "12:45:59, 'In 1 h 20 min, 14:05'",
        "14:04:10, 'In 1 min, 14:05'",
        "14:05:30, 'Now, 14:05'",
        "14:09:30, '4 min ago, 14:05'"
    })
    void it_counts_whole_minutes_of_the_clock(String clock, String said) {
        assertThat(said("2026-07-26", "2026-07-26T14:05", "2026-07-26T" + clock))
                .isEqualTo(said);
    }

    /** The sample is seen on a day of its story, and anything as of an earlier day: there is no now on it. */
    @Test
    void on_another_day_than_the_clock_shows_there_nothing_is_counted() {
        assertThat(said("2026-07-26", "2026-07-26T14:05", "2026-11-29T12:45")).isEmpty();
        assertThat(said("2026-07-25", "2026-07-26T14:05", "2026-07-26T12:45")).isEmpty();
        assertThat(said("2026-07-25", "2026-07-26T14:05", "2026-07-25T15:05")).isNotEmpty();
        assertThat(said("2026-07-26", null, "2026-07-26T12:45")).isEmpty();
    }

    @Test
    void the_page_says_it_and_goes_on_counting() {
        NextRunSheet sheet = new NextRunSheet(TEXTS, tick -> {}, run -> {});
        Countdown countdown = countdown("2026-07-26", "2026-07-26T14:05");
        sheet.show(List.of(new NextRunLines("Car 41", "Race 1", countdown, List.of())), clock("2026-07-26T12:45"));
        assertThat(labels(sheet.component())).contains("In 1 h 20 min, 14:05");
        sheet.tell(clock("2026-07-26T12:46"));
        assertThat(labels(sheet.component())).contains("In 1 h 19 min, 14:05");
        sheet.tell(clock("2026-07-27T12:46"));
        assertThat(labels(sheet.component())).containsOnly("Before the next run", "Car 41", "Race 1");
    }

    private static List<String> labels(Container in) {
        return Arrays.stream(in.getComponents())
                .flatMap(each -> each instanceof JLabel label
                        ? (label.isVisible() ? Stream.of(label.getText()) : Stream.empty())
                        : each instanceof Container inner ? labels(inner).stream() : Stream.empty())
                .toList();
    }
}
