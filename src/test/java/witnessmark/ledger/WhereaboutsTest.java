package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Chase;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;
import witnessmark.domain.SetMember;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.PutAside;
import witnessmark.ledger.result.Where;

/** Where parts are: told examples, and random histories lived through one thing after another. */
class WhereaboutsTest {
    private static final int HISTORIES_A_SEED = 100;

    private final Story story = new Story();
    private final Id<PartDesign> springs = story.partDesign("springs", PartKind.VALVE_SPRINGS, false);
    private final Id<Part> set = story.part("VS-03", springs);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 20);
    }

    @ParameterizedTest(name = "from seed {0}00")
    @MethodSource("seeds")
    void every_part_is_where_living_through_it_all_leaves_it(long block) {
        for (long seed = block * HISTORIES_A_SEED; seed < (block + 1) * HISTORIES_A_SEED; seed++) {
            History history = ShelfGenerator.history(seed);
            Facts facts = history.story().facts();
            PlainShelf plain = new PlainShelf(facts, history.asOf());
            List<Where> all = new Whereabouts(LifeLedger.of(facts, history.asOf())).all();
            assertThat(all.stream().map(where -> where.part().id()))
                    .as("seed " + seed)
                    .containsExactlyInAnyOrderElementsOf(plain.parts());
            for (Where where : all) {
                assertThat(said(where))
                        .as("seed %d, part %s", seed, where.part().fact().mark())
                        .isEqualTo(plain.of(where.part().id()));
            }
        }
    }

    @Test
    void the_histories_from_seed_100_to_199_put_parts_in_every_state_and_leave_some_late() {
        Map<Where.State, Integer> met = new EnumMap<>(Where.State.class);
        int late = 0;
        for (long seed = 100; seed < 200; seed++) {
            History history = ShelfGenerator.history(seed);
            for (Where where : new Whereabouts(LifeLedger.of(history.story().facts(), history.asOf())).all()) {
                met.merge(where.state(), 1, Integer::sum);
                late += where.late() ? 1 : 0;
            }
        }
        assertThat(met).containsOnlyKeys(Where.State.values());
        assertThat(met.values()).allSatisfy(times -> assertThat(times).isGreaterThan(5));
        assertThat(late).isGreaterThan(5);
    }

    private static PlainShelf.Said said(Where where) {
        return new PlainShelf.Said(
                where.state(),
                where.since() == null ? null : where.since().epochMillis(),
                where.fitment() == null ? null : where.fitment().id(),
                ids(where.asides()),
                ids(where.members()));
    }

    private static Set<Id<?>> ids(List<PutAside> asides) {
        return asides.stream().map(aside -> aside.entry().id()).collect(Collectors.toCollection(HashSet::new));
    }

    @ParameterizedTest(name = "from seed {0}00")
    @MethodSource("seeds")
    void what_is_out_is_late_by_the_last_promise_given(long block) {
        for (long seed = block * HISTORIES_A_SEED; seed < (block + 1) * HISTORIES_A_SEED; seed++) {
            History history = ShelfGenerator.history(seed);
            Facts facts = history.story().facts();
            LocalDate today = history.asOf().day();
            Map<Id<SentOut>, Away> out = new HashMap<>();
            new OutWithOthers(facts, history.asOf())
                    .all()
                    .forEach(away -> out.put(away.sent().id(), away));
            for (Entry<SentOut> sent : facts.of(SentOut.class).all()) {
                SentOut fact = sent.fact();
                long end = history.asOf().last().epochMillis();
                boolean isOut = sent.inForce()
                        && fact.from().epochMillis() <= end
                        && (fact.back() == null || fact.back().epochMillis() > end);
                assertThat(out.containsKey(sent.id())).as("seed " + seed).isEqualTo(isOut);
                if (!isOut) {
                    continue;
                }
                LocalDate promised = fact.promised();
                long promisedAt = Long.MIN_VALUE;
                for (Entry<Chase> chase : facts.of(Chase.class).all()) {
                    long at = chase.fact().at().epochMillis();
                    boolean counts = chase.inForce() && chase.fact().sentOut().equals(sent.id()) && at <= end;
                    if (counts && chase.fact().promised() != null && at >= promisedAt) {
                        promised = chase.fact().promised();
                        promisedAt = at;
                    }
                }
                Away away = out.get(sent.id());
                assertThat(away.promised()).as("seed " + seed).isEqualTo(promised);
                assertThat(away.late()).isEqualTo(promised != null && promised.isBefore(today));
                assertThat(away.daysLate()).isEqualTo(away.late() ? ChronoUnit.DAYS.between(promised, today) : 0);
            }
        }
    }

    @Test
    void a_part_never_fitted_is_a_spare_of_which_nothing_says_since_when() {
        Where where = where("2026-05-01");
        assertThat(where.state()).isEqualTo(Where.State.SPARE);
        assertThat(where.since()).isNull();
        assertThat(where.before()).isNull();
        assertThat(where.needsHand()).isFalse();
    }

    @Test
    void a_part_in_quarantine_needs_a_decision_until_it_is_let_out() {
        story.add(new Quarantine(
                set, "", Story.at("2026-05-02T18:00Z"), "over-rev", "M.", Story.at("2026-05-09T09:00Z"), "fit", "M."));
        assertThat(where("2026-05-01").state()).isEqualTo(Where.State.SPARE);
        assertThat(where("2026-05-02").state()).isEqualTo(Where.State.QUARANTINE);
        assertThat(where("2026-05-08").needsHand()).isTrue();
        Where out = where("2026-05-09");
        assertThat(out.state()).isEqualTo(Where.State.SPARE);
        assertThat(out.since()).isEqualTo(Story.at("2026-05-09T09:00Z"));
        assertThat(out.needsHand()).isFalse();
    }

    @Test
    void a_set_with_a_member_aside_is_a_spare_that_needs_a_hand_and_aside_itself_once_every_member_is() {
        member("1");
        member("2");
        scrap("1", "2026-05-03T10:00Z");
        assertThat(where("2026-05-03").state()).isEqualTo(Where.State.SPARE);
        assertThat(where("2026-05-03").needsHand()).isFalse();
        story.add(new Quarantine(set, "2", Story.at("2026-05-04T10:00Z"), "its neighbour broke", "", null, "", ""));
        Where aside = where("2026-05-04");
        assertThat(aside.state()).isEqualTo(Where.State.QUARANTINE);
        assertThat(aside.since()).isEqualTo(Story.at("2026-05-04T10:00Z"));
        assertThat(aside.needsHand()).isTrue();
        scrap("2", "2026-05-05T10:00Z");
        Where gone = where("2026-05-05");
        assertThat(gone.state()).isEqualTo(Where.State.SCRAPPED);
        assertThat(gone.needsHand()).isFalse();
    }

    @Test
    void splitting_a_set_in_quarantine_lets_no_member_out() {
        member("1");
        story.add(new Quarantine(set, "", Story.at("2026-05-02T10:00Z"), "over-rev", "", null, "", ""));
        Id<Part> one = story.split("1", springs, set, Story.at("2026-05-03T10:00Z"));
        List<Where> all = whereabouts("2026-05-03").all();
        assertThat(all).hasSize(2);
        assertThat(all.get(0).state()).isEqualTo(Where.State.SPLIT);
        assertThat(all.get(1).part().id()).isEqualTo(one);
        assertThat(all.get(1).state()).isEqualTo(Where.State.QUARANTINE);
        assertThat(all.get(1).since()).isEqualTo(Story.at("2026-05-02T10:00Z"));
        assertThat(whereabouts("2026-05-02").all()).hasSize(1);
    }

    @Test
    void a_part_away_is_late_the_day_after_the_last_promise_and_silence_is_counted_from_the_last_answer() {
        Id<SentOut> sent = story.add(new SentOut(
                set,
                null,
                null,
                null,
                "machinist G1",
                "test",
                "",
                Story.at("2026-05-05T08:00Z"),
                LocalDate.parse("2026-05-12"),
                null,
                "",
                "",
                ""));
        story.add(new Chase(
                sent, Story.at("2026-05-13T08:00Z"), "the day after tomorrow", LocalDate.parse("2026-05-15"), "M."));
        story.add(new Chase(sent, Story.at("2026-05-18T08:00Z"), "", null, "M."));
        assertThat(where("2026-05-12").late()).isFalse();
        assertThat(where("2026-05-12").away().daysSilent()).isEqualTo(7);
        assertThat(where("2026-05-13").late()).isFalse();
        Where late = where("2026-05-20");
        assertThat(late.state()).isEqualTo(Where.State.AWAY);
        assertThat(late.needsHand()).isTrue();
        assertThat(late.away().daysLate()).isEqualTo(5);
        assertThat(late.away().daysSilent()).isEqualTo(7);
        assertThat(late.away().chase().fact().answer()).isEmpty();
    }

    @Test
    void a_part_in_an_engine_that_is_away_stays_fitted_and_is_known_to_be_away_with_it() {
        Id<Engine> engine = story.engine("K05", story.design("four"));
        Id<Position> position = story.position(
                story.facts().of(Engine.class).get(engine).design(), PartKind.VALVE_SPRINGS, "springs", 1, true);
        Id<Fitment> fitment = story.fit(set, engine, position, Story.at("2026-05-01T08:00Z"), null);
        story.add(new SentOut(
                null,
                engine,
                null,
                null,
                "the builder",
                "",
                "",
                Story.at("2026-05-05T08:00Z"),
                LocalDate.parse("2026-05-06"),
                null,
                "",
                "",
                ""));
        Where where = where("2026-05-09");
        assertThat(where.state()).isEqualTo(Where.State.FITTED);
        assertThat(where.fitment().id()).isEqualTo(fitment);
        assertThat(where.away().sent().fact().sentTo()).isEqualTo("the builder");
        assertThat(where.needsHand()).isFalse();
    }

    @Test
    void a_part_scrapped_stays_scrapped_whatever_else_is_written_of_it() {
        scrap("", "2026-05-03T10:00Z");
        story.add(new Quarantine(set, "", Story.at("2026-05-02T10:00Z"), "blue", "", null, "", ""));
        Where where = where("2026-05-04");
        assertThat(where.state()).isEqualTo(Where.State.SCRAPPED);
        assertThat(where.undecided()).isFalse();
    }

    private void member(String mark) {
        story.add(new SetMember(set, mark, 1));
    }

    private void scrap(String member, String at) {
        story.add(new Scrapping(set, member, Story.at(at), "broken", "M."));
    }

    private Where where(String day) {
        return whereabouts(day).all().get(0);
    }

    private Whereabouts whereabouts(String day) {
        return new Whereabouts(LifeLedger.of(story.facts(), Story.asOf(day)));
    }
}
