package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.RunKind;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** What is planned has to be possible; whoever reads a season folder in hears of it too. Cases by hand. */
class EventCoherenceTest {
    private static final LocalDate SATURDAY = LocalDate.of(2026, 3, 14);
    private static final LocalDate SUNDAY = SATURDAY.plusDays(1);
    private static final AsOf TODAY = Story.asOf("2026-03-10");

    private final Story story = new Story();

    private Id<Event> event(@Nullable Moment truck) {
        return story.add(new Event("Round 1", "Ashdown", SATURDAY, SUNDAY, ZoneOffset.UTC, truck, ""));
    }

    private Id<PlannedRun> planned(Id<Event> event, int turn, LocalDate day, @Nullable String out, int minutes) {
        return story.add(new PlannedRun(
                event,
                turn,
                RunKind.PRACTICE,
                "Practice " + turn,
                day,
                out == null ? null : LocalTime.parse(out),
                minutes == 0 ? null : Story.minutes(minutes)));
    }

    @Test
    void a_run_planned_outside_its_event_is_asked_and_one_on_its_last_day_is_not() {
        Id<Event> event = event(null);
        Id<PlannedRun> inside = planned(event, 1, SUNDAY, "09:00", 25);
        Id<PlannedRun> outside = planned(event, 2, SUNDAY.plusDays(1), "09:00", 25);
        assertThat(story.problems(TODAY, inside)).isEmpty();
        assertThat(story.problems(TODAY, event, inside, outside))
                .containsExactly(Problem.of(
                        ProblemKind.PLANNED_OUTSIDE_EVENT, "Practice 2", SUNDAY.plusDays(1), SATURDAY, SUNDAY));
        assertThat(ProblemKind.PLANNED_OUTSIDE_EVENT.stops()).isFalse(); // what ran in it is read in all the same
    }

    @ParameterizedTest(name = "{0} for {1} min, then {2} for {3}: {4}")
    @CsvSource({
        "09:00, 25, 09:10, 25, true",
        "09:00, 25, 09:25, 25, false",
        "09:10, 25, 09:00, 11, true",
        "09:00, 0, 09:00, 0, true",
        "09:00, 0, 09:01, 0, false",
        "09:05, 0, 09:00, 25, true"
    })
    void two_runs_at_once_are_asked_once(String out, int minutes, String other, int otherMinutes, boolean asked) {
        Id<Event> event = event(null);
        Id<PlannedRun> first = planned(event, 1, SATURDAY, out, minutes);
        Id<PlannedRun> second = planned(event, 2, SATURDAY, other, otherMinutes);
        planned(event, 3, SUNDAY, other, otherMinutes);
        assertThat(story.problems(TODAY, first, second))
                .extracting(Problem::kind)
                .isEqualTo(asked ? List.of(ProblemKind.PLANNED_RUNS_OVERLAP) : List.of());
        assertThat(story.problems(TODAY, first)).hasSize(asked ? 1 : 0);
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "2026-03-13, 18:00, false",
        "2026-03-14, , false",
        "2026-03-14, 06:00, false",
        "2026-03-14, 09:30, true",
        "2026-03-15, , true"
    })
    void a_truck_that_leaves_once_the_event_has_begun_is_asked(LocalDate day, @Nullable LocalTime time, boolean asked) {
        Id<Event> event =
                event(time == null ? Moment.endOf(day, ZoneOffset.UTC) : Moment.of(day.atTime(time), ZoneOffset.UTC));
        planned(event, 1, SATURDAY, "09:00", 25);
        assertThat(story.problems(TODAY, event))
                .extracting(Problem::kind)
                .isEqualTo(asked ? List.of(ProblemKind.TRUCK_AFTER_BEGIN) : List.of());
    }
}
