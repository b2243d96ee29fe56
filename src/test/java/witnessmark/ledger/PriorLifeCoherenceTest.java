package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;
import static witnessmark.ledger.Story.minutes;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.PriorKind;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** A prior life covers everything before its moment, so a run before it would count twice. */
class PriorLifeCoherenceTest {
    private static final Moment MARCH = at("2026-03-01T08:00Z");
    private static final Moment APRIL = at("2026-04-01T08:00Z");
    private static final AsOf TODAY = asOf("2026-06-30");

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);
    private final Id<Car> car = story.car("12");
    private final Id<Position> rodsHere = story.position(design, PartKind.RODS, "rods", 1, true);
    private final Id<PartDesign> forged = story.partDesign("forged rods", PartKind.RODS, false);
    private final Id<Part> rods = story.part("R-1", forged);
    private final Id<Fitment> fitted = story.fit(rods, engine, rodsHere, MARCH, null);

    @BeforeEach
    void the_engine_is_in_its_car() {
        story.put(engine, car, MARCH, null);
    }

    @Test
    void a_prior_life_covers_everything_before_its_moment() {
        Id<Run> run = story.add(draft("2026-03-10T10:00Z", 20).named("Test 1").written());
        Id<PriorLife> later = story.prior(rods, Counter.RUNNING, PriorKind.KNOWN, 1, 1, 1, APRIL);
        Problem queried = problem(ProblemKind.PRIOR_LIFE_OVERLAPS_RUNS, "R-1", APRIL, "Test 1");
        assertThat(problems(later)).containsExactly(queried);
        assertThat(problems(run)).containsExactly(queried);
        assertThat(problems(fitted)).containsExactly(queried);

        Id<PriorLife> sameMoment = story.prior(rods, Counter.LAPS, PriorKind.KNOWN, 1, 1, 1, APRIL);
        assertThat(problems(later, sameMoment, run)).containsExactly(queried);
        story.rewrite(later, prior(at("2026-03-10T10:00Z")), Standing.IN_FORCE);
        assertThat(problems(later)).isEmpty();
    }

    @Test
    void an_engine_s_prior_life_covers_its_runs_too() {
        story.add(draft("2026-03-10T10:00Z", 20).named("Test 1").written());
        Id<PriorLife> later = story.enginePrior(engine, Counter.RUNNING, 1, APRIL);
        assertThat(problems(later))
                .containsExactly(problem(ProblemKind.PRIOR_LIFE_OVERLAPS_RUNS, "A1", APRIL, "Test 1"));
        assertThat(problems(story.enginePrior(engine, Counter.RUNNING, 1, MARCH)))
                .isEmpty();
    }

    @Test
    void a_member_s_prior_life_covers_the_runs_of_its_set() {
        story.add(draft("2026-03-10T10:00Z", 20).named("Test 1").written());
        Id<Part> member = story.split("R-1/3", forged, rods, APRIL);
        Id<PriorLife> later = story.prior(member, Counter.RUNNING, PriorKind.KNOWN, 1, 1, 1, APRIL);
        assertThat(problems(later))
                .containsExactly(problem(ProblemKind.PRIOR_LIFE_OVERLAPS_RUNS, "R-1/3", APRIL, "Test 1"));
    }

    /** The card of a set says nothing run, the old build sheet 26 h: somebody has to settle which is right. */
    @Test
    void two_lives_carried_in_for_one_moment_that_differ_are_to_be_settled() {
        long hour = 3_600_000;
        Id<PriorLife> card = story.prior(rods, Counter.RUNNING, PriorKind.KNOWN, 0, 0, 0, APRIL);
        Id<PriorLife> history =
                story.prior(rods, Counter.RUNNING, PriorKind.KNOWN, 26 * hour, 26 * hour, 26 * hour, APRIL);
        for (Id<PriorLife> changed : List.of(card, history)) {
            assertThat(problems(changed)).singleElement().satisfies(problem -> {
                assertThat(problem.kind()).isEqualTo(ProblemKind.PRIOR_LIVES_DIFFER);
                assertThat(problem.facts().subList(0, 2)).isEqualTo(List.of("R-1", APRIL));
                assertThat(problem.stops()).isFalse();
            });
        }
        story.prior(rods, Counter.LAPS, PriorKind.KNOWN, 5, 5, 5, APRIL);
        assertThat(problems(card, history)).as("told once").hasSize(1);

        story.rewrite(card, story.facts().of(PriorLife.class).get(card), Standing.STRUCK_OUT);
        assertThat(problems(history)).isEmpty();
    }

    private List<Problem> problems(Id<?>... changed) {
        return story.problems(TODAY, changed);
    }

    private static Problem problem(ProblemKind kind, Object... facts) {
        return Problem.of(kind, facts);
    }

    private RunDraft draft(String start, long minutes) {
        return new RunDraft(engine, car, at(start), minutes(minutes));
    }

    private PriorLife prior(Moment at) {
        return new PriorLife(rods, null, Counter.RUNNING, PriorKind.KNOWN, 1, 1, 1, at, "");
    }
}
