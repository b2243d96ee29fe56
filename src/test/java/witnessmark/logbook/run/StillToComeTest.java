package witnessmark.logbook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Car;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Today;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** A time out that the clock has not come to is asked about, and only where the clock keeps the day of the logbook. */
class StillToComeTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");

    private record Clock(LocalDate day, Instant now) implements Today {}

    private static @Nullable Problem asked(Instant now, LocalDate day, String outAt) {
        Desk book = new Desk(new MemoryLogbook(SampleBook.facts()), new Clock(SATURDAY, now), "TE");
        RunSheet sheet = new RunSheet(book, SampleBook.ids(), SampleBook.UNITS);
        var car = book.view().facts().of(Car.class).named("41").orElseThrow();
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(car.id()));
        typed.put(RunField.DATE, day.toString());
        typed.put(RunField.OUT_AT, outAt);
        typed.put(RunField.RUNNING, "20");
        return sheet.read(typed).of(RunField.OUT_AT).problem();
    }

    /** At 15:00 British summer time, which is 14:00 in UTC. */
    @ParameterizedTest
    @CsvSource({"14:59, false", "15:00, false", "15:01, true", "23:59, true"})
    void today_is_held_against_the_clock_where_the_people_stand(String outAt, boolean isAsked) {
        Problem asked = asked(Instant.parse("2026-07-25T14:00:00Z"), SATURDAY, outAt);

        if (isAsked) {
            assertThat(asked).isNotNull();
            assertThat(asked.kind()).isEqualTo(ProblemKind.RUN_STILL_TO_COME);
            assertThat(asked.stops()).as("the clock may be wrong").isFalse();
            assertThat(((Moment) asked.facts().get(1)).wallClock().toLocalTime())
                    .hasToString("15:00");
        } else {
            assertThat(asked).isNull();
        }
    }

    @Test
    void an_earlier_day_is_not() {
        assertThat(asked(Instant.parse("2026-07-25T08:00:00Z"), SATURDAY.minusDays(7), "23:00"))
                .isNull();
    }

    @Test
    void the_day_of_a_story_is_not() {
        assertThat(asked(Instant.parse("2027-02-03T08:00:00Z"), SATURDAY, "23:59"))
                .isNull();
    }
}
