package witnessmark.study.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.ActionCarried;
import witnessmark.domain.ActionKind;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.ProofBy;
import witnessmark.domain.ProofSeen;
import witnessmark.domain.ProofWanted;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Severity;
import witnessmark.domain.Zone;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Story;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.study.result.ProofLine;
import witnessmark.study.result.ProofOfCase;
import witnessmark.study.result.ProofState;

/** Proof of a fix against sums made by hand, and what must hold however a season went. */
class ProofsTest {
    private static final LocalDate FIRST = LocalDate.parse("2026-01-01");

    private final Story story = new Story();
    private final Id<Engine> engine = story.engine("A1", story.design("Four"));
    private final TreeMap<Integer, Long> ran = new TreeMap<>();
    private int marks;

    private static Moment morning(int day) {
        return at(FIRST.plusDays(day) + "T08:00Z[UTC]");
    }

    private static Moment evening(int day) {
        return at(FIRST.plusDays(day) + "T20:00Z[UTC]");
    }

    private void run(int day, long minutes) {
        story.run(engine, null, at(FIRST.plusDays(day) + "T12:00Z[UTC]"), minutes);
        ran.put(day, minutes);
    }

    private Id<Incident> fails(int day, @Nullable Id<Incident> before) {
        marks++;
        return story.add(new Incident(
                "I" + marks,
                "broke",
                evening(day),
                FoundWhen.AT_A_CHECK,
                null,
                null,
                null,
                engine,
                Severity.LOST_TIME,
                "",
                before,
                "",
                null,
                "",
                "",
                ""));
    }

    private Id<CaseAction> repaired(Id<Incident> incident, ActionKind kind, int day) {
        Id<CaseAction> action =
                story.add(new CaseAction(incident, null, kind, "made anew", "", null, morning(day), ""));
        story.add(new ActionCarried(action, engine, null, morning(day), ""));
        return action;
    }

    private Id<ProofWanted> wanted(Id<Incident> incident, ProofBy kind, @Nullable Integer minutes, int times, int day) {
        return story.add(new ProofWanted(
                incident,
                null,
                kind,
                "as new",
                minutes == null ? null : Story.minutes(minutes),
                times,
                kind == ProofBy.READING ? ReadingKind.FILTER : null,
                morning(day),
                ""));
    }

    private void seen(Id<ProofWanted> wanted, int day, boolean met) {
        story.add(new ProofSeen(wanted, evening(day), engine, null, met, null, null, "seen", ""));
    }

    private ProofOfCase proof(Id<Incident> incident, int day) {
        LifeLedger ledger =
                LifeLedger.of(story.facts(), asOf(FIRST.plusDays(day).toString()));
        Entry<Incident> entry = story.facts().of(Incident.class).find(incident).orElseThrow();
        return new Proofs(ledger).of(entry);
    }

    /** Of the days after one up to another: those at the ends run between the morning and the evening. */
    private long minutes(int from, int to) {
        return ran.subMap(from, true, to, true).values().stream()
                .mapToLong(each -> each)
                .sum();
    }

    /** The bottom end closed, three hours, the head renewed, two hours, it failed: what failed tells which of the two it ran. */
    @ParameterizedTest
    @CsvSource({
        "BIG_END_SHELL, WIPED, 300",
        "FIRE_RING, CRACKED, 120",
        "BORE, SCORED, 120",
        "OIL_FILTER, FLAKES, 120",
        "BIG_END_SHELL, NO_MARK, 120",
        "HOSE, CRACKED, 120",
        ", , 120"
    })
    void running_before_a_failure_begins_where_what_failed_was_last_laid_open(
            @Nullable FindingPlace place, @Nullable FindingMark mark, long minutes) {
        story.build(engine, 1, Set.of(Zone.SUMP, Zone.BOTTOM_END), morning(0), morning(1));
        run(2, 180);
        story.build(engine, 2, Set.of(Zone.COVERS, Zone.HEAD), morning(3), morning(4));
        run(5, 120);
        Id<Incident> failed = fails(5, null);
        if (place != null && mark != null) {
            HowMarked how = mark == FindingMark.NO_MARK ? HowMarked.NONE : HowMarked.HEAVY;
            story.add(new Finding(
                    failed,
                    engine,
                    null,
                    null,
                    "",
                    place,
                    2,
                    "",
                    mark,
                    how,
                    null,
                    null,
                    null,
                    null,
                    evening(6),
                    "",
                    "",
                    null,
                    null));
        }

        assertThat(proof(failed, 8).failed())
                .singleElement()
                .satisfies(each -> assertThat(each.ran()).isEqualTo(Story.minutes(minutes)));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void running_before_and_since_is_what_a_sum_over_the_runs_gives(long seed) {
        Random random = new Random(seed);
        int days = 60;
        for (int day = 0; day < days; day++) {
            if (random.nextInt(3) > 0) {
                run(day, 1 + random.nextInt(90));
            }
        }
        TreeSet<Integer> failures = new TreeSet<>();
        while (failures.size() < 1 + random.nextInt(3)) {
            failures.add(5 + random.nextInt(45));
        }
        List<Long> intervals = new ArrayList<>();
        Id<Incident> last = null;
        int from = 0;
        for (int day : failures) {
            intervals.add(minutes(from, day));
            last = fails(day, last);
            from = day + 1;
            repaired(last, random.nextBoolean() ? ActionKind.CORRECTIVE : ActionKind.PREVENTIVE, from);
        }
        int today = from + random.nextInt(days - from);

        ProofOfCase proof = proof(java.util.Objects.requireNonNull(last), today);

        long since = minutes(from, today);
        long before = intervals.stream().mapToLong(each -> each).sum();
        assertThat(proof.failed())
                .extracting(each -> each.ran().millis() / 60_000)
                .containsExactlyElementsOf(intervals);
        assertThat(proof.ran().millis()).isEqualTo(since * 60_000);
        assertThat(proof.state()).isEqualTo(since > 0 ? ProofState.HOLDING : ProofState.DONE);
        if (before > 0) {
            assertThat(proof.chance())
                    .isCloseTo(Math.pow(1 + (double) since / before, -intervals.size()), within(1e-12));
            assertThat(new RunningTime(2 * intervals.get(intervals.size() - 1) * 60_000))
                    .satisfies(twice ->
                            assertThat(twice.millis() == 0 ? null : twice).isEqualTo(proof.needed()));
            assertThat(proof.byRule()).isTrue();
        }
        assertThat(proof.allThere()).as("nothing was asked for").isFalse();
    }

    @Test
    void containment_proves_nothing() {
        run(0, 60);
        Id<Incident> incident = fails(1, null);
        repaired(incident, ActionKind.CONTAINMENT, 2);
        run(3, 60);

        assertThat(proof(incident, 4).state()).isEqualTo(ProofState.OPEN);
        assertThat(proof(incident, 4).ran().millis()).isZero();
    }

    @Test
    void a_look_counts_only_at_the_running_asked_for_and_the_last_one_decides() {
        run(0, 60);
        Id<Incident> incident = fails(1, null);
        Id<ProofWanted> look = wanted(incident, ProofBy.LOOK, 100, 1, 2);
        repaired(incident, ActionKind.CORRECTIVE, 3);
        run(4, 60);
        seen(look, 4, true);

        assertThat(line(incident, 4).state()).isEqualTo(ProofLine.State.NOT_YET);
        assertThat(line(incident, 4).met()).as("too early").isZero();
        run(5, 60);
        assertThat(line(incident, 5).state()).isEqualTo(ProofLine.State.DUE);
        seen(look, 6, true);
        assertThat(line(incident, 6).state()).isEqualTo(ProofLine.State.MET);
        seen(look, 7, false);
        assertThat(line(incident, 7).state()).isEqualTo(ProofLine.State.NOT_MET);
        assertThat(proof(incident, 7).state()).as("it does not hold").isEqualTo(ProofState.DONE);
    }

    private ProofLine line(Id<Incident> incident, int day) {
        return proof(incident, day).lines().get(0);
    }

    @Test
    void everything_is_there_with_the_running_and_every_look() {
        run(0, 60);
        Id<Incident> incident = fails(1, null);
        Id<ProofWanted> filter = wanted(incident, ProofBy.READING, null, 2, 2);
        wanted(incident, ProofBy.RUNNING, 90, 1, 2);
        repaired(incident, ActionKind.CORRECTIVE, 3);
        run(4, 60);
        seen(filter, 4, true);
        seen(filter, 5, true);

        assertThat(proof(incident, 5).allThere()).as("60 of 90 minutes").isFalse();
        run(6, 30);
        ProofOfCase there = proof(incident, 6);
        assertThat(there.allThere()).isTrue();
        assertThat(there.reachedItsAge()).isTrue();
        assertThat(there.byRule()).isFalse();
        assertThat(there.lines()).noneMatch(ProofLine::setLate);
    }

    @Test
    void proof_set_when_the_engine_had_run_already_is_marked() {
        run(0, 60);
        Id<Incident> incident = fails(1, null);
        repaired(incident, ActionKind.CORRECTIVE, 3);
        run(4, 60);
        wanted(incident, ProofBy.RUNNING, 90, 1, 5);

        assertThat(line(incident, 6).setLate()).isTrue();
    }

    @Test
    void two_actions_with_no_running_between_them_cannot_be_told_apart() {
        run(0, 60);
        Id<Incident> incident = fails(1, null);
        Id<CaseAction> first = repaired(incident, ActionKind.CORRECTIVE, 3);
        Id<CaseAction> second = repaired(incident, ActionKind.CORRECTIVE, 4);
        assertThat(proof(incident, 5).together()).extracting(Entry::id).containsExactlyInAnyOrder(first, second);

        run(6, 10);
        repaired(incident, ActionKind.CORRECTIVE, 7);
        assertThat(proof(incident, 8).together()).hasSize(2);
    }

    @Test
    void incidents_that_are_each_other_again_by_mistake_end() {
        run(0, 60);
        Id<Incident> first = fails(1, null);
        Id<Incident> second = fails(2, first);
        Incident fact = story.facts().of(Incident.class).get(first);
        story.rewrite(
                first,
                new Incident(
                        fact.mark(),
                        fact.title(),
                        fact.at(),
                        fact.found(),
                        null,
                        null,
                        null,
                        engine,
                        fact.severity(),
                        "",
                        second,
                        "",
                        null,
                        "",
                        "",
                        ""),
                witnessmark.domain.Standing.IN_FORCE);

        assertThat(proof(second, 3).failed()).isNotEmpty();
    }
}
