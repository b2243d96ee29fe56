package witnessmark.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.LostLife;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Span;
import witnessmark.cost.result.Switches;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.Car;
import witnessmark.domain.CostCategory;
import witnessmark.domain.CostLine;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.domain.Result;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;
import witnessmark.sample.SampleFacts;

/** The sample season told to its end, against the tables it was made from, whose sums were worked apart from this. */
class SampleCostsTest {
    private static final LocalDate WINTER = LocalDate.of(2026, 12, 18);
    private static final AsOf END = new AsOf(WINTER, java.time.ZoneId.of("Europe/London"));

    private static Facts facts = Facts.none();
    private static CostBook book = Costs.asOf(facts, END);
    private static SeasonSpan season = Seasons.of(facts, WINTER);

    @BeforeAll
    static void read() {
        facts = SampleFacts.end();
        book = Costs.asOf(facts, END);
        season = Seasons.of(facts, WINTER);
    }

    /**
     * What failures cost over the season, to the cent: the table of the sample's design. The fourth column is by hand: half
     * of a weekend of two races where one was lost (2 726, 2 655, 2 708 and 2 850), the whole of 2 794 where both were.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "INC-01,16.00,33.60,0.00,49.60,0.00",
        "INC-02,1208.00,1092.00,0.00,2300.00,1363.00",
        "INC-03,297.00,588.00,0.00,885.00,0.00",
        "INC-04,1073.00,1008.00,0.00,2081.00,2794.00",
        "INC-05,5642.00,2436.00,0.00,8078.00,1327.50",
        "INC-06,4379.00,2604.00,1037.00,8020.00,1354.00",
        "INC-07,762.00,252.00,0.00,1014.00,1425.00",
        "INC-08,50.00,105.00,0.00,155.00,0.00",
        "INC-09,721.00,336.00,0.00,1057.00,0.00",
    })
    void each_failure_costs_what_the_table_says(
            String mark, String cash, String labour, String missed, String total, String spoiled) {
        IncidentCost cost = cost(mark);
        assertThat(cost.column(Place.CASH, Switches.USUAL)).isEqualTo(euros(cash));
        assertThat(cost.column(Place.LABOUR, Switches.USUAL)).isEqualTo(euros(labour));
        assertThat(cost.column(Place.MISSED, Switches.USUAL)).isEqualTo(euros(missed));
        assertThat(cost.total(Switches.USUAL)).isEqualTo(euros(total));
        assertThat(cost.column(Place.SPOILED, Switches.USUAL)).isEqualTo(euros(spoiled));
    }

    @Test
    void the_columns_of_the_season_are_those_of_the_table() {
        SeasonCost cost = SeasonTotals.of(facts, book, END, season, RunningTime.NONE);
        assertThat(cost.cash()).isEqualTo(euros("14148.00"));
        assertThat(cost.labour()).isEqualTo(euros("8454.60"));
        assertThat(cost.missed()).isEqualTo(euros("1037.00"));
        Money all =
                costs().stream().map(each -> each.total(Switches.USUAL)).reduce(Money.none(book.home()), Money::plus);
        assertThat(all).isEqualTo(euros("23639.60"));
    }

    /** "696 to 1 037, depending on whether the truck's share counts." */
    @Test
    void the_missed_events_span_what_the_shared_truck_makes_of_them() {
        Switches only = new Switches(false, true, false, true, true);
        IncidentCost valve = cost("INC-06");
        assertThat(valve.column(Place.MISSED, only)).isEqualTo(euros("1037.00"));
        assertThat(valve.column(Place.MISSED, only.with(false, true))).isEqualTo(euros("696.00"));
        List<Piece> missed = valve.pieces().stream()
                .filter(piece -> piece.place() == Place.MISSED)
                .toList();
        IncidentCost alone = new IncidentCost(valve.incident(), book.home(), missed, java.util.Set.of());
        assertThat(alone.span(only)).isEqualTo(new Span(euros("696.00"), euros("1037.00")));
    }

    /** Missed events of car 41, line by line: paid or committed, got back or carried on, net. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "'Round 7, Wendlestone',entry,520,390,130",
        "'Round 7, Wendlestone',travel,508,0,254",
        "'Round 7, Wendlestone',accommodation,408,408,0",
        "'Round 7, Wendlestone',tyres,740,740,0",
        "'Round 7, Wendlestone',fuel,238,238,0",
        "'Round 7, Wendlestone',hire,75,0,75",
        "'Round 7, Wendlestone',helper,120,0,120",
        "'Round 8, Brindlewick',entry,520,480,40",
        "'Round 8, Brindlewick',travel,174,0,87",
        "'Round 8, Brindlewick',accommodation,408,272,136",
        "'Round 8, Brindlewick',tyres,740,740,0",
        "'Round 8, Brindlewick',fuel,238,238,0",
        "'Round 8, Brindlewick',hire,75,0,75",
        "'Round 8, Brindlewick',helper,120,0,120",
    })
    void a_missed_event_nets_what_the_table_says_line_by_line(
            String event, String category, String paid, String back, String net) {
        List<Piece> missed = cost("INC-06").pieces().stream()
                .filter(piece -> piece.place() == Place.MISSED && is(piece, event, category))
                .toList();
        assertThat(missed).hasSize(1);
        CostLine line = facts.of(CostLine.class).get(missed.get(0).line());
        assertThat(line.paid()).isEqualTo(euros(paid));
        assertThat(line.recovered().plus(line.carried())).isEqualTo(euros(back));
        assertThat(missed.get(0).amount()).isEqualTo(euros(net));
        assertThat(line.allocated()).isEqualTo(category.equals("travel"));
    }

    /** The plan: 24 841 for each of two cars, and 518 for each of three car-days of testing. */
    @Test
    void the_budget_is_the_plan_of_the_weekends_and_the_tests() {
        Map<Object, Long> byCar = new HashMap<>();
        for (Entry<BudgetLine> line : facts.of(BudgetLine.class).all()) {
            byCar.merge(
                    facts.of(Car.class)
                            .get(java.util.Objects.requireNonNull(line.fact().car()))
                            .name(),
                    line.fact().amount().minor(),
                    Long::sum);
        }
        assertThat(byCar).isEqualTo(Map.of("41", 2_484_100L + 2 * 51_800, "57", 2_484_100L + 51_800));
        assertThat(SeasonTotals.of(facts, book, END, season, RunningTime.NONE).budget())
                .isEqualTo(euros("51236"));
    }

    /** The points of the table of events: car 41 113, car 57 124. */
    @Test
    void the_points_of_the_season_are_those_of_the_table() {
        Map<String, BigDecimal> points = new HashMap<>();
        for (Entry<Result> result : facts.of(Result.class).all()) {
            BigDecimal got = result.fact().points();
            if (got != null) {
                points.merge(facts.of(Car.class).get(result.fact().car()).name(), got, BigDecimal::add);
            }
        }
        assertThat(points).isEqualTo(Map.of("41", BigDecimal.valueOf(113), "57", BigDecimal.valueOf(124)));
    }

    /** 48.09 h of K03, K05 and K06: 492 an hour against a provision of 140. */
    @Test
    void an_hour_of_the_teams_own_engines_cost_what_the_table_says() {
        SeasonRunning running = new SeasonRunning(facts, season, END);
        RunningTime own = Stream.of("K03", "K05", "K06")
                .map(number ->
                        facts.of(Engine.class).named(number).orElseThrow().id())
                .map(id -> running.of(id).orElseThrow())
                .reduce(RunningTime.NONE, RunningTime::plus);
        assertThat(own.hours(2)).isEqualTo(new BigDecimal("48.09"));
        assertThat(Math.round(23_639.60 / own.hours(4).doubleValue())).isEqualTo(492);
        assertThat(Work.valued(euros("140.00"), own).minor() / 100).isEqualTo(6732);
    }

    /** The shells of April: 84 ran 6.08 of 20 h, so that 26 was used and 58 lost; the springs of August were at their limit. */
    @Test
    void planned_life_is_split_as_the_table_says() {
        LostLife shells = lost("INC-03", "BE-05a");
        assertThat(java.util.Objects.requireNonNull(shells.used()).units().doubleValue())
                .isBetween(25.5, 26.49);
        assertThat(java.util.Objects.requireNonNull(shells.lost()).units().doubleValue())
                .isBetween(57.5, 58.49);
        assertThat(lost("INC-07", "VS-06a").lost()).isEqualTo(euros("0.00"));
        assertThat(cost("INC-07").planned(Place.CASH)).isEqualTo(euros("272.00"));
    }

    /** Hours that were written with an incident are those the ledger has for that day. */
    @Test
    void the_lives_written_with_incidents_are_the_ledgers() {
        for (Entry<IncidentPart> named : facts.of(IncidentPart.class).all()) {
            Incident incident = facts.of(Incident.class).get(named.fact().incident());
            LifeLedger then = LifeLedger.of(facts, new AsOf(incident.at().day(), END.zone()));
            assertThat(named.fact().ran())
                    .as(
                            "%s %s",
                            incident.mark(),
                            facts.of(Part.class).get(named.fact().part()).mark())
                    .isEqualTo(new RunningTime(
                            then.life(named.fact().part(), Counter.RUNNING).total()));
        }
    }

    /** What the springs cost: three quarters of the dropped valve by blame, all of it by the part that failed. */
    @Test
    void failures_are_put_together_by_area_part_car_and_engine() {
        assertThat(amount(BarsBy.CAUSE_AREA, witnessmark.domain.CauseArea.RUN_PAST_ITS_LIMIT))
                .isEqualTo(euros("6015.00"));
        assertThat(amount(BarsBy.PART_KIND, witnessmark.domain.PartKind.VALVE_SPRINGS))
                .isEqualTo(euros("8020.00"));
        assertThat(amount(BarsBy.PART_KIND, witnessmark.domain.PartKind.BIG_END_SHELLS))
                .isEqualTo(euros("4924.00"));
        assertThat(amount(
                        BarsBy.CAR,
                        facts.of(Car.class).named("41").orElseThrow().id()))
                .isEqualTo(euros("12401.00"));
        assertThat(amount(
                        BarsBy.ENGINE,
                        facts.of(Engine.class).named("K05").orElseThrow().id()))
                .isEqualTo(euros("9012.60"));
    }

    private static Money amount(BarsBy by, Object subject) {
        return new Bars(facts, each -> java.util.Optional.empty())
                .of(by, costs(), Switches.USUAL).stream()
                        .filter(bar -> subject.equals(bar.subject()))
                        .map(Bar::amount)
                        .findFirst()
                        .orElseThrow();
    }

    private static boolean is(Piece piece, String event, String category) {
        Id<Event> id = facts.of(Event.class).named(event).orElseThrow().id();
        CostCategory kind = witnessmark.domain.Coded.of(CostCategory.class, category);
        return id.equals(piece.event())
                && facts.of(CostLine.class).get(piece.line()).category() == kind
                && facts.of(Car.class).named("41").orElseThrow().id().equals(piece.car());
    }

    private static LostLife lost(String mark, String part) {
        Id<Part> id = facts.of(Part.class).named(part).orElseThrow().id();
        return LifeLost.of(facts, incident(mark)).stream()
                .filter(split -> split.part().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static IncidentCost cost(String mark) {
        return costs().stream()
                .filter(each -> each.incident().equals(incident(mark)))
                .findFirst()
                .orElseThrow();
    }

    private static List<IncidentCost> costs() {
        return Failures.all(facts, book, END, piece -> season.has(piece.day()));
    }

    private static Id<Incident> incident(String mark) {
        return facts.of(Incident.class).named(mark).orElseThrow().id();
    }

    private static Money euros(String units) {
        return Money.of(new BigDecimal(units), java.util.Currency.getInstance("EUR"));
    }
}
