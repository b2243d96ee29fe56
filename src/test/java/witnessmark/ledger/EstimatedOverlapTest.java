package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;
import static witnessmark.ledger.Story.minutes;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.ledger.result.About;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** An estimated time never keeps a run that is known from being written; two known times do as before. */
class EstimatedOverlapTest {
    private static final AsOf TODAY = asOf("2026-06-30");

    private final Story story = new Story();
    private final Id<Engine> engine = story.engine("A1", story.design("four"));
    private final Id<Car> car = story.car("12");

    @BeforeEach
    void the_engine_is_in_its_car() {
        story.put(engine, car, at("2026-03-01T08:00Z"), null);
    }

    private RunDraft draft(String start, long length) {
        return new RunDraft(engine, car, at(start), minutes(length));
    }

    @Test
    void a_known_run_over_an_estimated_one_is_asked() {
        story.add(draft("2026-03-10T12:00Z", 25).named("Practice 1").estimated().written());
        Id<Run> known = story.add(draft("2026-03-10T12:10Z", 20).written());
        assertThat(story.problems(TODAY, known))
                .containsExactly(Problem.of(
                        ProblemKind.RUNS_OVERLAP_ABOUT,
                        "A1",
                        "Practice 1",
                        new About(at("2026-03-10T12:00Z")),
                        new About(at("2026-03-10T12:25Z"))));
        assertThat(ProblemKind.RUNS_OVERLAP_ABOUT.stops()).isFalse();
    }

    @Test
    void an_estimated_run_over_a_known_one_is_asked_too() {
        story.add(draft("2026-03-10T12:10Z", 20).named("Practice 1").written());
        Id<Run> estimated = story.add(draft("2026-03-10T12:00Z", 25).estimated().written());
        assertThat(story.problems(TODAY, estimated))
                .containsExactly(Problem.of(
                        ProblemKind.RUNS_OVERLAP_ABOUT,
                        "A1",
                        "Practice 1",
                        at("2026-03-10T12:10Z"),
                        at("2026-03-10T12:30Z")));
    }

    @Test
    void of_two_estimated_ones_nothing_is_asked() {
        story.add(draft("2026-03-10T12:00Z", 25).named("Practice 1").estimated().written());
        Id<Run> later = story.add(draft("2026-03-10T12:03Z", 20).estimated().written());
        assertThat(story.problems(TODAY, later)).isEmpty();
    }

    @Test
    void an_estimated_run_hides_no_known_one_that_stops() {
        story.add(draft("2026-03-10T12:00Z", 90).estimated().written());
        story.add(draft("2026-03-10T12:10Z", 20).named("Practice 1").written());
        Id<Run> known = story.add(draft("2026-03-10T12:20Z", 19).written());
        assertThat(story.problems(TODAY, known))
                .extracting(Problem::kind)
                .containsExactlyInAnyOrder(ProblemKind.RUNS_OVERLAP, ProblemKind.RUNS_OVERLAP_ABOUT);
    }
}
