package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;
import static witnessmark.ledger.Story.minutes;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.PriorKind;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.Account;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Counted;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.Point;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** The rules of the ledger, one at a time; expected figures are added up by hand. */
class LifeLedgerTest {
    private static final long MINUTE = 60_000;
    private static final Moment MARCH = at("2026-03-01T08:00Z");

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);
    private final Id<Engine> other = story.engine("A2", design);
    private final Id<Car> car = story.car("12");
    private final Id<PartDesign> rods = story.partDesign("rods", PartKind.RODS, false);
    private final Id<Position> rodsHere = story.position(design, PartKind.RODS, "rods", 2, true);
    private final Id<Position> headHere = story.position(design, PartKind.HEAD, "head", 1, true);
    private final Id<Position> damperHere = story.position(design, PartKind.DAMPER, "damper", 3, false);
    private final Id<Part> set = story.part("R-1", rods);

    private LifeLedger ledger() {
        return LifeLedger.of(story.facts(), asOf("2026-12-31"));
    }

    private Life life() {
        return ledger().life(set, Counter.RUNNING);
    }

    @Test
    void a_run_belongs_wholly_to_what_was_fitted_when_it_went_out() {
        story.fit(set, engine, rodsHere, at("2026-03-01T10:00Z"), at("2026-03-01T11:00Z"));
        story.run(engine, car, at("2026-03-01T09:59:59.999Z"), 10);
        story.run(engine, car, at("2026-03-01T10:00Z"), 20);
        story.run(engine, car, at("2026-03-01T10:59:59.999Z"), 40);
        story.run(engine, car, at("2026-03-01T11:00Z"), 80);

        assertThat(life()).isEqualTo(new Life(Counter.RUNNING, 60 * MINUTE, 0, 0, 0, 0, false, 2, 0));
    }

    @Test
    void a_part_follows_the_engines_it_was_in() {
        story.fit(set, engine, rodsHere, MARCH, at("2026-04-01T00:00Z"));
        story.fit(set, other, rodsHere, at("2026-05-01T00:00Z"), null);
        story.run(engine, car, at("2026-03-10T10:00Z"), 1);
        story.run(other, car, at("2026-03-11T10:00Z"), 2);
        story.run(engine, car, at("2026-04-10T10:00Z"), 4);
        story.run(other, car, at("2026-05-10T10:00Z"), 8);

        assertThat(life().total()).isEqualTo(9 * MINUTE);
    }

    @Test
    void what_is_fitted_to_a_car_is_charged_that_cars_runs_with_any_engine_and_no_dyno_run() {
        Id<Position> clutchHere = story.carPosition(car, PartKind.CLUTCH, "clutch", 1);
        Id<Part> clutch = story.part("C-1", story.partDesign("plate", PartKind.CLUTCH, false));
        story.fitToCar(clutch, car, clutchHere, MARCH, null);
        story.run(engine, car, at("2026-03-10T10:00Z"), 1);
        story.run(other, car, at("2026-03-11T10:00Z"), 2);
        story.run(engine, null, at("2026-03-12T10:00Z"), 4);
        story.run(engine, story.car("14"), at("2026-03-13T10:00Z"), 8);

        LifeLedger ledger = ledger();
        assertThat(ledger.life(clutch, Counter.RUNNING).total()).isEqualTo(3 * MINUTE);
        assertThat(ledger.carLife(car, Counter.RUNNING).total()).isEqualTo(3 * MINUTE);
        assertThat(ledger.engineLife(engine, Counter.RUNNING).total()).isEqualTo(13 * MINUTE);
    }

    @Test
    void entries_struck_out_or_in_conflict_never_count() {
        story.fit(set, engine, rodsHere, MARCH, null);
        story.run(engine, car, at("2026-03-10T10:00Z"), 1);
        story.add(draft("2026-03-11T10:00Z", 2).written(), Standing.STRUCK_OUT);
        story.add(draft("2026-03-12T10:00Z", 4).written(), Standing.IN_CONFLICT);

        assertThat(life().total()).isEqualTo(MINUTE);
    }

    @Test
    void a_run_that_is_perhaps_the_same_counts_nowhere_but_is_shown() {
        story.fit(set, engine, rodsHere, MARCH, null);
        Id<Run> first = story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        story.add(draft("2026-03-10T10:00:30Z", 20).perhapsSame(first).written());

        LifeLedger ledger = ledger();
        assertThat(ledger.life(set, Counter.RUNNING).total()).isEqualTo(20 * MINUTE);
        assertThat(ledger.engineLife(engine, Counter.RUNNING).total()).isEqualTo(20 * MINUTE);
        assertThat(ledger.account(set, Counter.RUNNING).toSettle())
                .extracting(Charge::counted)
                .containsExactly(Counted.PERHAPS_SAME);
    }

    @Test
    void how_each_figure_is_known_is_kept_apart() {
        story.fit(set, engine, rodsHere, MARCH, null);
        story.add(draft("2026-03-10T10:00Z", 1)
                .knownBy(Counter.RUNNING, HowKnown.TRACE)
                .written());
        story.add(draft("2026-03-10T11:00Z", 2)
                .knownBy(Counter.RUNNING, HowKnown.HOUR_METER)
                .written());
        story.add(draft("2026-03-10T12:00Z", 4)
                .knownBy(Counter.RUNNING, HowKnown.TIMED)
                .written());
        story.add(draft("2026-03-10T13:00Z", 8)
                .knownBy(Counter.RUNNING, HowKnown.TOLD)
                .written());
        story.add(draft("2026-03-10T14:00Z", 16)
                .knownBy(Counter.RUNNING, HowKnown.ESTIMATED)
                .written());
        story.told(engine, at("2026-04-01T00:00Z"), at("2026-05-01T00:00Z"), 20, 32, 60);

        Life life = life();
        assertThat(life)
                .isEqualTo(new Life(
                        Counter.RUNNING, 7 * MINUTE, 40 * MINUTE, 28 * MINUTE, 68 * MINUTE, 16 * MINUTE, false, 6, 0));
        assertThat(life.total()).isEqualTo(63 * MINUTE);
        assertThat(life.lowest()).isEqualTo(51 * MINUTE);
        assertThat(life.highest()).isEqualTo(91 * MINUTE);
    }

    @Test
    void a_counter_a_run_does_not_say_is_not_read_and_never_zero() {
        story.fit(set, engine, rodsHere, MARCH, null);
        story.add(draft("2026-03-10T10:00Z", 20).with(Counter.OVER_REVS, 2).written());
        story.add(draft("2026-03-10T11:00Z", 20).written());
        story.told(engine, at("2026-04-01T00:00Z"), at("2026-05-01T00:00Z"), 20, 32, 60);

        Life overRevs = ledger().life(set, Counter.OVER_REVS);
        assertThat(overRevs).isEqualTo(new Life(Counter.OVER_REVS, 2, 0, 0, 0, 0, false, 3, 2));
        assertThat(overRevs.complete()).isFalse();
        assertThat(ledger().account(set, Counter.OVER_REVS).charges())
                .extracting(Charge::counted)
                .containsExactly(Counted.YES, Counted.NOT_READ, Counted.NOT_READ);
    }

    @Test
    void told_running_is_charged_wholly_where_it_begins() {
        Id<Part> later = story.part("R-2", rods);
        story.fit(set, engine, rodsHere, MARCH, at("2026-04-10T00:00Z"));
        story.fit(later, engine, rodsHere, at("2026-04-10T00:00Z"), null);
        story.told(engine, at("2026-04-01T00:00Z"), at("2026-05-01T00:00Z"), 20, 32, 60);

        LifeLedger ledger = ledger();
        assertThat(ledger.life(set, Counter.RUNNING).told()).isEqualTo(32 * MINUTE);
        assertThat(ledger.life(later, Counter.RUNNING).total()).isZero();
        assertThat(ledger.engineLife(engine, Counter.RUNNING).toldHighest()).isEqualTo(60 * MINUTE);
    }

    @Test
    void a_prior_life_adds_only_what_ran_from_its_moment_on() {
        story.fit(set, engine, rodsHere, MARCH, null);
        story.prior(set, Counter.RUNNING, PriorKind.KNOWN, 300, 300, 300, at("2026-03-05T00:00Z"));
        story.run(engine, car, at("2026-03-04T10:00Z"), 1);
        story.run(engine, car, at("2026-03-05T00:00Z"), 2);

        LifeLedger ledger = ledger();
        assertThat(ledger.life(set, Counter.RUNNING).total()).isEqualTo(300 + 2 * MINUTE);
        assertThat(ledger.account(set, Counter.RUNNING).charges())
                .extracting(Charge::counted)
                .containsExactly(Counted.YES, Counted.BEFORE_PRIOR_LIFE, Counted.YES);
    }

    @Test
    void an_unknown_prior_life_makes_every_figure_a_least() {
        story.fit(set, engine, rodsHere, MARCH, null);
        story.prior(set, Counter.RUNNING, PriorKind.UNKNOWN, 0, 5 * MINUTE, 0, MARCH);
        story.run(engine, car, at("2026-03-04T10:00Z"), 1);

        assertThat(life()).isEqualTo(new Life(Counter.RUNNING, MINUTE, 5 * MINUTE, 0, 5 * MINUTE, 0, true, 1, 0));
    }

    @Test
    void what_came_with_hours_but_no_word_of_its_over_revs_has_run_an_unknown_number_of_them() {
        story.fit(set, engine, rodsHere, MARCH, null);
        story.prior(set, Counter.RUNNING, PriorKind.KNOWN, 300, 300, 300, MARCH);
        story.add(draft("2026-03-10T10:00Z", 20).with(Counter.OVER_REVS, 2).written());

        assertThat(life().atLeast()).isFalse();
        assertThat(ledger().life(set, Counter.OVER_REVS).atLeast()).isTrue();
        assertThat(ledger().since(set, Counter.OVER_REVS, at("2026-03-02T00:00Z"))
                        .atLeast())
                .isFalse();
    }

    @Test
    void what_came_new_has_run_nothing_by_any_counter() {
        story.prior(set, Counter.RUNNING, PriorKind.KNOWN, 0, 0, 0, MARCH);

        assertThat(ledger().life(set, Counter.OVER_REVS)).isEqualTo(Life.none(Counter.OVER_REVS));
    }

    @Test
    void of_two_prior_lives_the_one_stated_last_holds() {
        story.prior(set, Counter.RUNNING, PriorKind.KNOWN, 900, 900, 900, at("2026-04-01T00:00Z"));
        story.prior(set, Counter.RUNNING, PriorKind.KNOWN, 300, 300, 300, MARCH);

        assertThat(life().total()).isEqualTo(900);
        assertThat(LifeLedger.of(story.facts(), asOf("2026-03-31"))
                        .life(set, Counter.RUNNING)
                        .total())
                .isEqualTo(300);
    }

    @Test
    void a_member_split_off_has_the_sets_life_to_then_and_its_own_from_then() {
        story.fit(set, engine, rodsHere, MARCH, null);
        story.prior(set, Counter.RUNNING, PriorKind.KNOWN, 300, 300, 300, MARCH);
        Moment splitAt = at("2026-04-01T00:00Z");
        Id<Part> member = story.split("R-1/3", rods, set, splitAt);
        story.fit(member, other, rodsHere, splitAt, null);
        story.run(engine, car, at("2026-03-31T23:59:59.999Z"), 1);
        story.run(engine, car, splitAt, 2);
        story.run(other, car, splitAt, 4);

        LifeLedger ledger = ledger();
        assertThat(ledger.life(member, Counter.RUNNING).total()).isEqualTo(300 + 5 * MINUTE);
        assertThat(ledger.life(set, Counter.RUNNING).total()).isEqualTo(300 + 3 * MINUTE);
        assertThat(ledger.whereIs(member, at("2026-03-20T00:00Z"))
                        .orElseThrow()
                        .fact()
                        .part())
                .isEqualTo(set);
        assertThat(ledger.whereIs(member, splitAt).orElseThrow().fact().part()).isEqualTo(member);
    }

    @Test
    void a_member_split_off_lies_on_the_shelf_whatever_becomes_of_its_set() {
        story.fit(set, engine, rodsHere, MARCH, null);
        Moment splitAt = at("2026-04-01T00:00Z");
        Id<Part> member = story.split("R-1/3", rods, set, splitAt);

        assertThat(ledger().whereIs(member, at("2026-04-02T00:00Z"))).isEmpty();
        assertThat(ledger().whereIs(set, at("2026-04-02T00:00Z"))).isPresent();
        assertThat(ledger().whereIs(set, at("2026-02-01T00:00Z"))).isEmpty();
    }

    @Test
    void work_on_a_set_and_its_closed_build_count_to_the_very_moment() {
        Moment splitAt = at("2026-04-01T00:00Z");
        story.fit(set, engine, rodsHere, MARCH, null);
        Id<Part> member = story.split("R-1/3", rods, set, splitAt);
        story.run(engine, car, at("2026-03-10T10:00Z"), 1);
        story.work(set, WorkKind.LOOK, splitAt, WorkResult.DONE);
        story.build(engine, 1, Set.of(Zone.HEAD), at("2026-12-31T08:00Z"), at("2026-12-31T23:59:59.999Z"));
        story.build(engine, 2, Set.of(Zone.SUMP), at("2026-12-31T08:00Z"), at("2027-01-01T00:00Z"));

        assertThat(ledger().sinceWork(member, WorkKind.LOOK, Counter.RUNNING)).isEqualTo(Life.none(Counter.RUNNING));
        assertThat(ledger().lastClosed(engine, Set.of(Zone.HEAD))).isPresent();
        assertThat(ledger().lastClosed(engine, Set.of(Zone.SUMP))).isEmpty();
    }

    @Test
    void a_day_counts_to_its_end_and_what_came_later_is_not_known_yet() {
        story.fit(set, engine, rodsHere, MARCH, at("2026-04-01T00:00Z"));
        story.run(engine, car, at("2026-03-10T23:59:59.999Z"), 1);
        story.run(engine, car, at("2026-03-11T00:00Z"), 2);

        LifeLedger tenth = LifeLedger.of(story.facts(), asOf("2026-03-10"));
        assertThat(tenth.life(set, Counter.RUNNING).total()).isEqualTo(MINUTE);
        assertThat(LifeLedger.of(story.facts(), asOf("2026-03-11"))
                        .life(set, Counter.RUNNING)
                        .total())
                .isEqualTo(3 * MINUTE);
    }

    @Test
    void failed_work_resets_nothing() {
        story.fit(set, engine, rodsHere, MARCH, null);
        story.run(engine, car, at("2026-03-10T10:00Z"), 1);
        story.work(set, WorkKind.CRACK_TEST, at("2026-03-11T10:00Z"), WorkResult.DONE);
        story.run(engine, car, at("2026-03-12T10:00Z"), 2);
        story.work(set, WorkKind.CRACK_TEST, at("2026-03-13T10:00Z"), WorkResult.FAILED);
        story.run(engine, car, at("2026-03-14T10:00Z"), 4);

        LifeLedger ledger = ledger();
        assertThat(ledger.sinceWork(set, WorkKind.CRACK_TEST, Counter.RUNNING).total())
                .isEqualTo(6 * MINUTE);
        assertThat(ledger.sinceWork(set, WorkKind.LOOK, Counter.RUNNING).total())
                .isEqualTo(7 * MINUTE);
        assertThat(ledger.sinceWork(set, Set.of(WorkKind.LOOK, WorkKind.CRACK_TEST), Counter.RUNNING)
                        .total())
                .isEqualTo(6 * MINUTE);
    }

    @Test
    void work_on_a_set_resets_the_member_split_off_later_but_not_the_one_split_off_before() {
        Moment splitAt = at("2026-04-01T00:00Z");
        story.fit(set, engine, rodsHere, MARCH, null);
        Id<Part> member = story.split("R-1/3", rods, set, splitAt);
        story.run(engine, car, at("2026-03-10T10:00Z"), 1);
        story.work(set, WorkKind.LOOK, at("2026-03-11T10:00Z"), WorkResult.DONE);
        story.run(engine, car, at("2026-03-12T10:00Z"), 2);
        story.work(set, WorkKind.LOOK, at("2026-05-01T10:00Z"), WorkResult.DONE);

        assertThat(ledger().sinceWork(member, WorkKind.LOOK, Counter.RUNNING).total())
                .isEqualTo(2 * MINUTE);
    }

    @Test
    void of_a_prior_life_stated_after_the_moment_asked_from_all_or_nothing_may_have_come_since() {
        story.prior(set, Counter.RUNNING, PriorKind.KNOWN, 300, 300, 300, at("2026-03-20T00:00Z"));
        story.work(set, WorkKind.LOOK, at("2026-03-10T10:00Z"), WorkResult.DONE);

        assertThat(ledger().sinceWork(set, WorkKind.LOOK, Counter.RUNNING))
                .isEqualTo(new Life(Counter.RUNNING, 0, 300, 0, 300, 0, false, 0, 0));
        assertThat(ledger().since(set, Counter.RUNNING, at("2026-03-20T00:00Z")))
                .isEqualTo(Life.none(Counter.RUNNING));
    }

    @Test
    void since_rebuild_counts_from_the_last_closed_build_that_opened_these_zones() {
        story.enginePrior(engine, Counter.RUNNING, 500 * MINUTE, MARCH);
        story.run(engine, car, at("2026-03-10T10:00Z"), 1);
        story.build(engine, 1, Set.of(Zone.HEAD, Zone.BOTTOM_END), at("2026-03-11T08:00Z"), at("2026-03-12T08:00Z"));
        story.run(engine, car, at("2026-03-13T10:00Z"), 2);
        story.build(engine, 2, Set.of(Zone.HEAD), at("2026-03-14T08:00Z"), at("2026-03-15T08:00Z"));
        story.run(engine, car, at("2026-03-16T10:00Z"), 4);
        story.build(engine, 3, Set.of(Zone.BOTTOM_END), at("2026-03-17T08:00Z"), null);

        LifeLedger ledger = ledger();
        assertThat(ledger.engineLife(engine, Counter.RUNNING).total()).isEqualTo(507 * MINUTE);
        assertThat(ledger.sinceRebuild(engine, Set.of(Zone.BOTTOM_END), Counter.RUNNING)
                        .total())
                .isEqualTo(6 * MINUTE);
        assertThat(ledger.sinceRebuild(engine, Set.of(Zone.HEAD), Counter.RUNNING)
                        .total())
                .isEqualTo(4 * MINUTE);
        assertThat(ledger.sinceRebuild(engine, Set.of(Zone.FRONT), Counter.RUNNING)
                        .total())
                .isEqualTo(507 * MINUTE);
    }

    @Test
    void an_account_lists_every_entry_in_order_and_adds_up() {
        story.prior(set, Counter.RUNNING, PriorKind.TOLD, 100, 200, 400, MARCH);
        var fitment = story.fit(set, engine, rodsHere, MARCH, null);
        Id<Run> second = story.run(engine, car, at("2026-03-11T10:00Z"), 2);
        Id<Run> first = story.run(engine, car, at("2026-03-10T10:00Z"), 1);

        Account account = ledger().account(set, Counter.RUNNING);
        assertThat(account.charges()).extracting(Charge::amount).containsExactly(200L, MINUTE, 2 * MINUTE);
        assertThat(account.charges().get(1).source().id()).isEqualTo(first);
        assertThat(account.charges().get(2).source().id()).isEqualTo(second);
        assertThat(account.charges().get(1).fitment().id()).isEqualTo(fitment);
        assertThat(account.charges())
                .extracting(Charge::how)
                .containsExactly(HowKnown.TOLD, HowKnown.TIMED, HowKnown.TIMED);
        assertThat(account.life()).isEqualTo(life());
    }

    @Test
    void the_line_of_an_engine_rises_where_each_run_comes_back() {
        story.enginePrior(engine, Counter.RUNNING, 500, MARCH);
        story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        story.told(engine, at("2026-04-01T00:00Z"), at("2026-05-01T00:00Z"), 1, 2, 4);

        List<Point> line = ledger().line(engine);
        assertThat(line)
                .extracting(Point::at)
                .extracting(Moment::instant)
                .containsExactly(
                        MARCH.instant(),
                        at("2026-03-10T10:20Z").instant(),
                        at("2026-05-01T00:00Z").instant());
        assertThat(line).extracting(Point::likely).containsExactly(500L, 500 + 20 * MINUTE, 500 + 22 * MINUTE);
        assertThat(line.get(2).lowest()).isEqualTo(500 + 21 * MINUTE);
        assertThat(line.get(2).highest()).isEqualTo(500 + 24 * MINUTE);
    }

    @Test
    void positions_are_read_out_in_turn_and_the_needed_ones_missed() {
        Id<Part> damper = story.part("D-1", story.partDesign("damper", PartKind.DAMPER, false));
        story.fit(damper, engine, damperHere, MARCH, null);
        story.fit(set, engine, rodsHere, MARCH, at("2026-04-01T00:00Z"));

        LifeLedger ledger = ledger();
        assertThat(ledger.fittedAt(engine, MARCH).keySet()).containsExactly(rodsHere, damperHere);
        assertThat(ledger.emptyPositions(engine, MARCH)).extracting(Entry::id).containsExactly(headHere);
        assertThat(ledger.emptyPositions(engine, at("2026-04-01T00:00Z")))
                .extracting(Entry::id)
                .containsExactly(headHere, rodsHere);
    }

    @Test
    void an_engine_is_in_the_car_it_was_put_in_until_it_comes_out() {
        story.put(engine, car, MARCH, at("2026-04-01T00:00Z"));
        story.put(other, car, at("2026-04-01T00:00Z"), null);

        LifeLedger ledger = ledger();
        assertThat(ledger.carOf(engine, MARCH).orElseThrow().fact().car()).isEqualTo(car);
        assertThat(ledger.carOf(engine, at("2026-04-01T00:00Z"))).isEmpty();
        assertThat(ledger.engineIn(car, at("2026-04-01T00:00Z"))
                        .orElseThrow()
                        .fact()
                        .engine())
                .isEqualTo(other);
        assertThat(ledger.engineIn(car, at("2026-02-01T00:00Z"))).isEmpty();
    }

    private RunDraft draft(String start, long minutes) {
        return new RunDraft(engine, car, at(start), minutes(minutes));
    }
}
