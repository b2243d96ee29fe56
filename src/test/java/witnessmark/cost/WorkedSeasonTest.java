package witnessmark.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Switches;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.Car;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseArea;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostCategory;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.HourRate;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncomeKind;
import witnessmark.domain.IncomeLine;
import witnessmark.domain.MissedShare;
import witnessmark.domain.RateKind;
import witnessmark.domain.Run;
import witnessmark.domain.Severity;
import witnessmark.domain.Standing;
import witnessmark.domain.Team;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.RunDraft;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** Seasons and bars of a handful of lines, every sum worked by hand beside them; invented prices. */
class WorkedSeasonTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final LocalDate DAY = LocalDate.of(2026, 6, 13);
    private static final SeasonSpan SEASON =
            new SeasonSpan("2026", LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31), null);

    private final List<Entry<?>> entries = new ArrayList<>();
    private final Id<Car> car = add(new Car("41", ""));
    private final Id<Event> event = add(new Event("Round 4", "", DAY, DAY.plusDays(1), ZONE, null, ""));
    private final Id<Incident> first = incident("I1");
    private final Id<Incident> second = incident("I2");

    WorkedSeasonTest() {
        EngineSpeed any = new EngineSpeed(500);
        add(new Team("Team", ZONE, "EUR", any, any, any));
    }

    /** Of income 300 + 50 at 1.20 = 360 by that day; 70 comes later and 999 was the year before. 40 has no rate. */
    @Test
    void what_came_in_is_of_the_season_and_of_no_day_to_come_and_turned_at_the_rate_of_its_day() {
        income(DAY, "300.00 EUR", null);
        income(DAY, "50.00 GBP", new BigDecimal("1.20"));
        income(DAY, "40.00 GBP", null);
        income(DAY.plusDays(1), "70.00 EUR", null);
        income(DAY.minusYears(1), "999.00 EUR", null);
        SeasonCost on = season(DAY);
        assertThat(on.income()).isEqualTo(euros(360));
        assertThat(on.noRate()).containsExactly(Money.parse("40.00 GBP"));
        assertThat(season(DAY.plusDays(1)).income()).isEqualTo(euros(430));
    }

    /** The whole budget of the season counts, its days to come too: 200 + 100; that of the next year does not. */
    @Test
    void the_budget_is_that_of_the_whole_season() {
        budget(DAY.minusDays(30), 200);
        budget(DAY.plusDays(90), 100);
        budget(LocalDate.of(2027, 1, 1), 5_000);
        assertThat(season(DAY).budget()).isEqualTo(euros(300));
    }

    /** 500 cash and 80 still to be paid were spent; own work of 60 is none of it. Of the year before 900 is none. */
    @Test
    void what_is_spent_is_money_of_the_season_and_what_is_still_to_be_paid_is_named_of_it() {
        add(new CostDraft(DAY, "entry", euros(500)).line());
        add(new CostDraft(DAY, "tyres", euros(80))
                .as(CostCategory.TYRES, CostBasis.COMMITTED)
                .line());
        add(new CostDraft(DAY, "strip", euros(60))
                .as(CostCategory.LABOUR, CostBasis.VALUED)
                .line());
        add(new CostDraft(DAY.minusYears(1), "old", euros(900)).line());
        add(new CostDraft(DAY.minusYears(1), "old, abroad", Money.parse("7.00 GBP")).line());
        add(new CostDraft(DAY, "abroad", Money.parse("9.00 GBP")).line());
        add(new CostDraft(DAY.plusDays(1), "tomorrow", euros(33)).line());
        SeasonCost cost = season(DAY);
        assertThat(cost.spent()).isEqualTo(euros(580));
        assertThat(cost.committed()).isEqualTo(euros(80));
        assertThat(cost.ownWork()).isEqualTo(euros(60));
        assertThat(cost.runningCosts()).isEqualTo(euros(580));
        assertThat(cost.noRate()).as("of this season alone").containsExactly(Money.parse("9.00 GBP"));
    }

    /** 10 h at the rate from 1 June, 55, are 550; that of July has not begun, and one in pounds is none. */
    @Test
    void running_is_put_aside_for_at_the_rate_that_stands_on_the_last_day() {
        RunningTime ten = new RunningTime(36_000_000);
        assertThat(season(DAY, ten).provision()).isNull();
        add(new HourRate(RateKind.ENGINE_RUNNING, euros(40), LocalDate.of(2026, 1, 1), ""));
        add(new HourRate(RateKind.ENGINE_RUNNING, euros(55), LocalDate.of(2026, 6, 1), ""));
        add(new HourRate(RateKind.ENGINE_RUNNING, euros(70), LocalDate.of(2026, 7, 1), ""));
        add(new HourRate(RateKind.OWN_LABOUR, euros(42), LocalDate.of(2026, 6, 10), ""));
        assertThat(season(DAY, ten).provision()).isEqualTo(euros(550));
        assertThat(season(LocalDate.of(2027, 3, 1), ten).provision())
                .as("the season is over: the rate of its last day")
                .isEqualTo(euros(700));
        add(new HourRate(RateKind.ENGINE_RUNNING, Money.parse("1.00 GBP"), LocalDate.of(2026, 6, 12), ""));
        assertThat(season(DAY, ten).provision()).isNull();
    }

    /** A race lost took 40 % of a weekend that cost 1 000: 400 spoiled, 600 is what racing costs. */
    @Test
    void a_race_that_was_lost_spoils_its_share_of_that_cars_weekend() {
        Id<Engine> engine = add(new Engine("K05", new Id<EngineDesign>(UUID.randomUUID()), null, ""));
        Id<Run> race = add(new RunDraft(engine, car, at(), new RunningTime(600_000))
                .planned(event, null)
                .written());
        add(new MissedShare(null, race, first, 4_000, ""));
        add(new CostDraft(DAY, "weekend", euros(1_000)).at(event, car).line());
        CostBook book = book(DAY);
        assertThat(book.pieces())
                .extracting(piece -> piece.place(), piece -> piece.amount())
                .containsExactlyInAnyOrder(tuple(Place.SPOILED, euros(400)), tuple(Place.RUNNING, euros(600)));
        assertThat(book(DAY.minusDays(1)).pieces()).as("not paid yet").isEmpty();
    }

    /** The share of a race that is struck out, or lies ahead, is nobody's: all 1 000 is what racing costs. */
    @Test
    void a_race_that_does_not_stand_or_was_not_run_yet_spoils_nothing() {
        Id<Engine> engine = add(new Engine("K05", new Id<EngineDesign>(UUID.randomUUID()), null, ""));
        add(new CostDraft(DAY.minusDays(3), "entry", euros(1_000))
                .at(event, car)
                .line());
        Run race = new RunDraft(engine, car, at(), new RunningTime(600_000))
                .planned(event, null)
                .written();
        Id<Run> id = add(race);
        add(new MissedShare(null, id, first, 4_000, ""));
        assertThat(book(DAY.minusDays(1)).pieces())
                .extracting(piece -> piece.amount())
                .containsExactly(euros(1_000));
        assertThat(book(DAY).pieces()).hasSize(2);
        entries.removeIf(entry -> entry.id().equals(id));
        entries.add(new Entry<>(id, race, Standing.STRUCK_OUT, "the other car", 2));
        assertThat(book(DAY).pieces()).extracting(piece -> piece.amount()).containsExactly(euros(1_000));
    }

    /** Of tyres for 740 in 2025, 300 is kept and used in 2026; of 500 in 2026, 120 is kept still. */
    @Test
    void what_is_kept_is_of_the_season_that_paid_and_what_is_used_is_brought_into_the_season_that_uses_it() {
        SeasonSpan before = new SeasonSpan("2025", LocalDate.of(2025, 1, 1), LocalDate.of(2025, 12, 31), null);
        add(new CostDraft(LocalDate.of(2025, 9, 1), "tyres", euros(740))
                .kept(euros(300), null)
                .used(DAY, event)
                .line());
        add(new CostDraft(DAY, "fuel", euros(500)).kept(euros(120), null).line());
        SeasonCost now = season(DAY);
        assertThat(now.spent()).isEqualTo(euros(500));
        assertThat(now.kept()).isEqualTo(euros(120));
        assertThat(now.broughtIn()).isEqualTo(euros(300));
        assertThat(now.runningCosts()).as("380 of its own and 300 brought").isEqualTo(euros(680));
        SeasonCost then =
                SeasonTotals.of(Facts.none().with(entries), book(DAY), new AsOf(DAY, ZONE), before, RunningTime.NONE);
        assertThat(then.spent()).isEqualTo(euros(740));
        assertThat(then.kept()).as("for the season after").isEqualTo(euros(300));
        assertThat(then.broughtIn()).isEqualTo(euros(0));
    }

    /** Of two incidents of 900 and 100: the first 60 % wear and 40 % said by nobody, the second wholly run past its limit. */
    @Test
    void bars_stand_dearest_first_with_what_nobody_said_last_and_add_up() {
        add(new CostDraft(DAY, "crank", euros(900)).because(first).line());
        add(new CostDraft(DAY, "hose", euros(100)).because(second).line());
        add(new Cause(first, "worn", CauseArea.WEAR, 6_000, "", "", null));
        add(new Cause(first, "perhaps", CauseArea.PART_AS_MADE, 0, "", "", null));
        add(new Cause(first, "asked", CauseArea.PART_AS_MADE, null, "", "", null));
        add(new Cause(second, "loose", CauseArea.RUN_PAST_ITS_LIMIT, 10_000, "", "", null));
        assertThat(bars(BarsBy.CAUSE_AREA))
                .extracting(Bar::subject, Bar::amount, Bar::running)
                .containsExactly(
                        tuple(CauseArea.WEAR, euros(540), new RunningTime(1)),
                        tuple(CauseArea.RUN_PAST_ITS_LIMIT, euros(100), new RunningTime(1)),
                        tuple(null, euros(360), null));
        add(new Cause(second, "worn too", CauseArea.WEAR, 10_000, "", "", null));
        Bar wear = bars(BarsBy.CAUSE_AREA).get(0);
        assertThat(wear.amount()).as("540 and half of 100").isEqualTo(euros(590));
        assertThat(wear.parts()).extracting(Bar.Part::amount).containsExactly(euros(540), euros(50));
        assertThat(bars(BarsBy.INCIDENT)).extracting(Bar::subject).containsExactly(first, second);
        add(new CostDraft(DAY, "engine", euros(5_000)).because(second).line());
        assertThat(bars(BarsBy.INCIDENT)).extracting(Bar::subject).containsExactly(second, first);
        assertThat(bars(BarsBy.CAUSE_AREA).get(0).parts())
                .extracting(Bar.Part::incident)
                .as("the dearer part first, though its incident came second")
                .containsExactly(second, first);
    }

    private List<Bar> bars(BarsBy by) {
        Facts facts = Facts.none().with(entries);
        return new Bars(facts, subject -> Optional.of(new RunningTime(1)))
                .of(by, Failures.all(facts, book(DAY), new AsOf(DAY, ZONE), piece -> true), Switches.USUAL);
    }

    private SeasonCost season(LocalDate day) {
        return season(day, RunningTime.NONE);
    }

    private SeasonCost season(LocalDate day, RunningTime running) {
        return SeasonTotals.of(Facts.none().with(entries), book(day), new AsOf(day, ZONE), SEASON, running);
    }

    private CostBook book(LocalDate day) {
        return Costs.asOf(Facts.none().with(entries), new AsOf(day, ZONE));
    }

    private void income(LocalDate day, String amount, @Nullable BigDecimal rate) {
        add(new IncomeLine(day, "prize", IncomeKind.PRIZE, null, null, Money.parse(amount), rate, "", ""));
    }

    private void budget(LocalDate day, long units) {
        add(new BudgetLine(day, event, car, CostCategory.ENTRY, euros(units), null, ""));
    }

    private Id<Incident> incident(String mark) {
        return add(new Incident(
                mark,
                "broke",
                at(),
                FoundWhen.ON_A_RUN,
                null,
                event,
                car,
                null,
                Severity.RETIRED,
                "",
                null,
                "",
                null,
                "",
                "",
                ""));
    }

    private static Moment at() {
        return Moment.of(DAY.atTime(11, 0), ZONE);
    }

    private static Money euros(long units) {
        return Money.parse(units + ".00 EUR");
    }

    private <F extends Fact> Id<F> add(F fact) {
        Id<F> id = new Id<>(UUID.randomUUID());
        entries.add(new Entry<>(id, fact, Standing.IN_FORCE, null, 1));
        return id;
    }
}
