package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;
import static witnessmark.ledger.Story.minutes;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.Grade;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.LimitRank;
import witnessmark.domain.OverRev;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Run;
import witnessmark.domain.Severity;
import witnessmark.domain.SpeedSource;
import witnessmark.domain.Trigger;
import witnessmark.domain.TriggerKind;
import witnessmark.domain.Warmth;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.RunDraft;
import witnessmark.ledger.Story;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.study.cases.WayThere;

/** Every sign of a day is told: a run by each rule it broke, a reading by what was read. The rules are made up here. */
class WayWordsTest {
    private static final Texts TEXTS = Texts.in(Locale.UK);
    private static final Temperature HOT = new Temperature(391_150);

    private final Story story = new Story();
    private final Id<Engine> engine = story.engine("A1", story.design("Four"));
    private Entry<Incident> failure;

    @BeforeEach
    void fails() {
        rule("water too hot", TriggerKind.WATER_ABOVE, 383_150L);
        rule("over-rev", TriggerKind.SPEED_ABOVE, 8_500L);
        Id<Incident> id = story.add(new Incident(
                "I1",
                "gasket gone",
                at("2026-05-01T12:00Z[UTC]"),
                FoundWhen.AT_A_CHECK,
                null,
                null,
                null,
                engine,
                Severity.RETIRED,
                "",
                null,
                "",
                null,
                "",
                "",
                ""));
        failure = story.facts().of(Incident.class).find(id).orElseThrow();
    }

    private void rule(String name, TriggerKind kind, long figure) {
        story.add(new Trigger(
                name,
                kind,
                null,
                figure,
                null,
                null,
                null,
                Set.of(),
                "look at it",
                LimitRank.OWN,
                "",
                LocalDate.parse("2026-01-01"),
                null));
    }

    private RunDraft run(String name, String time) {
        return new RunDraft(engine, null, at("2026-04-12T" + time + "Z[UTC]"), minutes(20)).named(name);
    }

    private WayLines.Point day() {
        return day("12 Apr");
    }

    private WayLines.Point day(String day) {
        return new WayWords(TEXTS, new Measures(TEXTS, Units.METRIC))
                        .lines(
                                story.facts(),
                                new WayThere(LifeLedger.of(story.facts(), asOf("2026-05-02"))).of(failure))
                        .points()
                        .stream()
                        .filter(point -> point.day().equals(day))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void two_runs_of_a_day_above_the_same_rule_are_both_told_with_it() {
        story.add(run("Warm-up", "09:00").water(HOT).written());
        story.add(run("Race 1", "14:00").water(HOT).written());

        assertThat(day().seen()).isEqualTo("Warm-up: water too hot and Race 1: water too hot");
        assertThat(day().whole()).contains("Signs: Warm-up: water too hot and Race 1: water too hot.");
    }

    /** Where there is no room for all, the end is cut. */
    @Test
    void the_incident_is_named_before_the_signs_of_its_day() {
        story.add(new RunDraft(engine, null, at("2026-05-01T10:00Z[UTC]"), minutes(20))
                .named("Race 2")
                .water(HOT)
                .written());

        assertThat(day("1 May").seen()).isEqualTo("I1; Race 2: water too hot");
    }

    @Test
    void a_hot_run_is_told_beside_a_filter_with_specks_read_that_day() {
        story.add(run("Race 1", "14:00").water(HOT).written());
        story.add(new Reading(
                ReadingKind.FILTER,
                at("2026-04-12T18:00Z[UTC]"),
                engine,
                null,
                "",
                null,
                Grade.FEW_SPECKS,
                "",
                Warmth.COLD,
                false,
                "Ada",
                "",
                null));

        assertThat(day().whole()).contains("Race 1: water too hot").contains("few specks");
    }

    @Test
    void an_over_rev_is_told_once_by_its_speed_and_what_else_that_run_broke_beside_it() {
        Id<Run> run = story.add(run("Race 1", "14:00")
                .water(HOT)
                .highest(new EngineSpeed(9_340))
                .written());
        story.add(new OverRev(run, new EngineSpeed(9_340), new RunningTime(420), "", SpeedSource.LOGGER, ""));

        assertThat(day().whole())
                .contains("Race 1: water too hot")
                .containsOnlyOnce("over-rev")
                .contains("9");
    }

    @Test
    void a_speed_read_from_the_tell_tale_alone_is_told_by_its_rule() {
        story.add(run("Race 1", "14:00").highest(new EngineSpeed(9_340)).written());

        assertThat(day().seen()).isEqualTo("Race 1: over-rev");
    }
}
