package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/** Lines of a timetable as people write them. Oracle: the parts a line was written from, and cases read by hand. */
class TimetableTest {
    private static final LocalDate SATURDAY = LocalDate.of(2026, 3, 14);
    private static final SheetField FIELD = AddEvent.TIMETABLE;

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "P1 Sat 09:00 25 min, practice, Practice 1, 2026-03-14, 09:00, 25",
        "FP2 sat 9.40 25, practice, Practice 2, 2026-03-14, 09:40, 25",
        "Free practice Sun 10:00 1h, practice, Free practice, 2026-03-15, 10:00, 60",
        "R2 15 Mar 16:05 40m, race, Race 2, 2026-03-15, 16:05, 40",
        "Warm-up Sunday 08:15, warm-up, Warm-up, 2026-03-15, 08:15, -1",
        "Q Sat, qualifying, Qualifying, 2026-03-14, -, -1",
        "Quali Sat 14:00 20 min, qualifying, Quali, 2026-03-14, 14:00, 20",
        "Qualy 2 Sun 9:00 20 min, qualifying, Qualy 2, 2026-03-15, 09:00, 20",
        "Q2 Sun 9:00 20 min, qualifying, Qualifying 2, 2026-03-15, 09:00, 20",
        "Parade Sun 12:30 10 min, other, Parade, 2026-03-15, 12:30, 10",
        "Race 1 2026-03-15 15:00 0.5 h, race, Race 1, 2026-03-15, 15:00, 30"
    })
    void a_line_says(String text, String kind, String name, LocalDate day, String out, int minutes) {
        Timetable.Line line =
                new Timetable(FIELD, SATURDAY, SATURDAY.plusDays(1)).read(text).line();
        assertThat(line).isNotNull();
        assertThat(line.kind().code()).isEqualTo(kind);
        assertThat(line.name()).isEqualTo(name);
        assertThat(line.day()).isEqualTo(day);
        assertThat(line.out()).isEqualTo(out.equals("-") ? null : LocalTime.parse(out));
        assertThat(line.expected()).isEqualTo(minutes < 0 ? null : new RunningTime(minutes * 60_000L));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 5, 8})
    void a_line_written_from_its_parts_reads_back_to_them(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            LocalDate first = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(700));
            LocalDate last = first.plusDays(1 + random.nextInt(4));
            LocalDate day = first.plusDays(random.nextInt(1 + (int) (last.toEpochDay() - first.toEpochDay())));
            LocalTime out = LocalTime.of(random.nextInt(24), random.nextInt(60));
            int minutes = 1 + random.nextInt(180);
            String pattern = List.of("EEE", "d MMM", "uuuu-MM-dd", "EEE d MMM").get(random.nextInt(4));
            String line = "Run " + i + " "
                    + DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH).format(day) + " " + out + " " + minutes
                    + (random.nextBoolean() ? " min" : "");
            Timetable.Line read = new Timetable(FIELD, first, last).read(line).line();
            assertThat(read).as(line).isNotNull();
            assertThat(read.name()).as(line).isEqualTo("Run " + i);
            assertThat(read.day()).as(line).isEqualTo(day);
            assertThat(read.out()).as(line).isEqualTo(out);
            assertThat(read.expected()).as(line).isEqualTo(new RunningTime(minutes * 60_000L));
        }
    }

    @ParameterizedTest(name = "{0}: outside, {1}")
    @CsvSource({
        "P1 Fri 09:00 25 min, 2026-03-13",
        "P1 13 Mar 09:00 25 min, 2026-03-13",
        "P1 Mon 09:00 25 min, 2026-03-16",
        "P1 2026-04-14 09:00 25 min, 2026-04-14"
    })
    void a_line_outside_the_event_is_told_with_the_day_nearest_to_it(String text, LocalDate day) {
        assertThat(table().read(text).problem())
                .isEqualTo(Problem.of(ProblemKind.OUTSIDE_EVENT, text, day, SATURDAY, SATURDAY.plusDays(1)));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"Quali 14:00 20 min", "P1 09:00", "Race 1"})
    void a_line_that_lacks_its_day_is_asked_for_it(String text) {
        assertThat(table().read(text).problem())
                .isEqualTo(Problem.of(
                        ProblemKind.LINE_WITHOUT_DAY, text, SATURDAY, SATURDAY.plusDays(1), Timetable.EXAMPLE));
        assertThat(table().read("25 min").problem().kind()).isEqualTo(ProblemKind.CANNOT_READ);
    }

    @Test
    void a_length_that_is_none_is_told_as_such() {
        assertThat(table().read("P1 Sat 09:00 -5 min").problem())
                .isEqualTo(Problem.of(ProblemKind.LESS_THAN_NOTHING, FIELD, "-5 min", "25 min"));
        assertThat(table().read("P1 Sat 09:00 0 min").problem())
                .isEqualTo(Problem.of(ProblemKind.RUN_OF_NO_LENGTH, new RunningTime(0)));
    }

    private static Timetable table() {
        return new Timetable(FIELD, SATURDAY, SATURDAY.plusDays(1));
    }

    @ParameterizedTest(name = "line: {0}")
    @ValueSource(
            strings = {"", "09:00 25 min", "Sat 09:00", "P1 Mon 09:00 25 min", "P1 Sat 09:75", "P1 Sat 09:00 1:20"})
    void a_line_that_says_no_one_thing_is_not_read(String text) {
        Timetable.Read read = new Timetable(FIELD, SATURDAY, SATURDAY.plusDays(1)).read(text);
        assertThat(read.line()).isNull();
        assertThat(read.problem()).isNotNull();
    }
}
