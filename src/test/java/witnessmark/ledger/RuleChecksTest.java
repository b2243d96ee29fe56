package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;
import static witnessmark.ledger.Story.minutes;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Clearance;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.RunOn;
import witnessmark.domain.Trigger;
import witnessmark.domain.TriggerKind;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** Limits, triggers and signatures that cannot stand. */
class RuleChecksTest {
    private static final Moment MARCH = at("2026-03-01T08:00Z");
    private static final LocalDate FIRST = LocalDate.parse("2026-01-01");

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);
    private final Id<Part> rods = story.part("R-1", story.partDesign("forged rods", PartKind.RODS, false));

    RuleChecksTest() {
        story.position(design, PartKind.RODS, "rods", 1, true);
    }

    private List<ProblemKind> problems(Id<?> changed) {
        return story.problems(asOf("2026-06-30"), changed).stream()
                .map(Problem::kind)
                .toList();
    }

    private Id<Limit> limit(LimitAction action, Counter counter, long amount, LimitRank rank) {
        return story.add(new Limit(
                action + " rods",
                action,
                design,
                PartKind.RODS,
                null,
                null,
                null,
                null,
                counter,
                amount,
                rank,
                "",
                FIRST,
                null));
    }

    private Id<RunOn> runOn(Id<Limit> limit, long upTo, String adviser) {
        return story.add(new RunOn(
                limit, null, rods, null, null, upTo, MARCH, "OW", adviser, adviser.isEmpty() ? "" : "go", ""));
    }

    @Test
    void a_limit_on_a_counter_that_no_run_says_is_queried_once_there_are_runs() {
        Id<Limit> limit = limit(LimitAction.LOOK, Counter.LOADED, 100, LimitRank.OWN);
        assertThat(problems(limit)).isEmpty();
        story.run(engine, null, MARCH, 20);
        assertThat(problems(limit)).containsExactly(ProblemKind.COUNTER_NOT_RECORDED);

        story.add(new RunDraft(engine, null, at("2026-03-02T08:00Z"), minutes(20))
                .with(Counter.LOADED, 60_000)
                .written());
        assertThat(problems(limit)).isEmpty();
    }

    @Test
    void a_part_renewed_no_later_than_it_is_looked_at_is_queried() {
        limit(LimitAction.RENEW, Counter.RUNNING, 100, LimitRank.OWN);
        assertThat(problems(limit(LimitAction.LOOK, Counter.RUNNING, 99, LimitRank.OWN)))
                .isEmpty();
        assertThat(problems(limit(LimitAction.LOOK, Counter.RUNNING, 100, LimitRank.OWN)))
                .containsExactly(ProblemKind.LIMITS_CONTRADICT);
        assertThat(problems(limit(LimitAction.LOOK, Counter.LAPS, 100, LimitRank.OWN)))
                .as("counted in something else")
                .isEmpty();
    }

    @Test
    void a_rule_book_limit_is_never_passed() {
        Id<Limit> limit = limit(LimitAction.RENEW, Counter.RUNNING, 100, LimitRank.RULE_BOOK);
        assertThat(problems(runOn(limit, 120, "the scrutineer"))).containsExactly(ProblemKind.RULE_BOOK_NOT_PASSED);
    }

    @Test
    void a_makers_or_builders_limit_says_that_nobody_was_asked() {
        Id<Limit> builders = limit(LimitAction.RENEW, Counter.RUNNING, 100, LimitRank.BUILDER);
        assertThat(problems(runOn(builders, 120, ""))).containsExactly(ProblemKind.NOBODY_ASKED);
        assertThat(ProblemKind.NOBODY_ASKED.stops()).isFalse();
        assertThat(problems(runOn(builders, 120, "the builder"))).isEmpty();
        assertThat(problems(runOn(limit(LimitAction.LOOK, Counter.RUNNING, 50, LimitRank.OWN), 120, "")))
                .isEmpty();
    }

    @Test
    void a_new_figure_lies_past_the_old_one() {
        Id<Limit> limit = limit(LimitAction.RENEW, Counter.RUNNING, 100, LimitRank.OWN);
        assertThat(problems(runOn(limit, 100, ""))).containsExactly(ProblemKind.RUN_ON_NOT_PAST_LIMIT);
        assertThat(problems(runOn(limit, 101, ""))).isEmpty();
    }

    @Test
    void a_trigger_for_parts_that_have_no_place_holds_nothing_and_is_queried() {
        assertThat(problems(trigger(EnumSet.of(PartKind.CAMSHAFTS))))
                .containsExactly(ProblemKind.TRIGGER_WITHOUT_PARTS);
        assertThat(problems(trigger(EnumSet.of(PartKind.CAMSHAFTS, PartKind.RODS))))
                .isEmpty();
        assertThat(problems(trigger(EnumSet.noneOf(PartKind.class)))).isEmpty();
    }

    private Id<Trigger> trigger(Set<PartKind> holds) {
        return story.add(new Trigger(
                "over-rev",
                TriggerKind.SPEED_ABOVE,
                design,
                8500L,
                null,
                null,
                null,
                holds,
                "",
                LimitRank.OWN,
                "",
                FIRST,
                null));
    }

    @Test
    void nothing_is_cleared_before_it_happened_and_ones_own_hold_is_cleared_with_a_word() {
        Id<Hold> hold = story.add(new Hold(engine, null, "", at("2026-04-01T08:00Z"), "water in 2", "", "CC"));
        assertThat(problems(clearance(hold, "2026-03-31T08:00Z", "OW"))).containsExactly(ProblemKind.CLEARED_BEFORE);
        assertThat(problems(clearance(hold, "2026-04-02T08:00Z", "CC"))).containsExactly(ProblemKind.CLEARS_OWN_HOLD);
        assertThat(ProblemKind.CLEARS_OWN_HOLD.stops()).isFalse();
        assertThat(problems(clearance(hold, "2026-04-02T08:00Z", "OW"))).isEmpty();
    }

    private Id<Clearance> clearance(Id<Hold> hold, String when, String by) {
        return story.add(new Clearance(hold, null, null, null, null, at(when), "looked", "dry", by, ""));
    }
}
