package witnessmark.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.LostLife;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Car;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostCategory;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.MissedHow;
import witnessmark.domain.MissedRun;
import witnessmark.domain.MissedShare;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartHarm;
import witnessmark.domain.PartKind;
import witnessmark.domain.Severity;
import witnessmark.domain.Standing;
import witnessmark.domain.Team;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** Worked cases of the trade handbook, 8.2 and 8.3: its figures, worked by hand there; invented prices. */
class WorkedCostsTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final LocalDate EVENT = LocalDate.of(2026, 8, 22);
    private static final Currency EUR = Currency.getInstance("EUR");

    private final List<Entry<?>> entries = new ArrayList<>();
    private final Id<Car> car = add(new Car("41", ""));
    private final Id<Event> event = add(new Event("Round 7", "", EVENT, EVENT.plusDays(1), ZONE, null, ""));
    private final Id<Incident> incident = add(new Incident(
            "I1",
            "valve dropped",
            Moment.of(EVENT.minusDays(27).atTime(11, 0), ZONE),
            FoundWhen.ON_A_RUN,
            null,
            null,
            car,
            null,
            Severity.ENGINE_DESTROYED,
            "",
            null,
            "",
            null,
            "",
            "",
            ""));

    WorkedCostsTest() {
        EngineSpeed any = new EngineSpeed(500);
        add(new Team("Team", ZONE, "EUR", any, any, any));
        Id<MissedRun> missed = add(
                new MissedRun(event, car, null, null, Moment.of(EVENT.atTime(9, 0), ZONE), MissedHow.NOT_ENTERED, ""));
        add(new MissedShare(missed, null, incident, 10_000, ""));
    }

    /** Handbook 8.3: a weekend missed, decided nine days before: paid 2 241, got back or carried 1 510, net 731. */
    @Test
    void a_missed_weekend_nets_what_the_handbook_works_out() {
        line("entry", CostCategory.ENTRY, 520, 260, 0, null);
        line("Friday test", CostCategory.TEST_DAY, 260, 0, 0, null);
        line("hotel", CostCategory.ACCOMMODATION, 408, 272, 0, null);
        line("tyres, unmounted", CostCategory.TYRES, 740, 0, 740, LocalDate.of(2027, 3, 31));
        line("fuel", CostCategory.FUEL, 238, 0, 238, null);
        line("garage deposit", CostCategory.HIRE, 75, 0, 0, null);
        CostBook book = book(LocalDate.of(2026, 10, 31));
        IncidentCost cost = cost(book);
        assertThat(cost.total(Switches.USUAL)).isEqualTo(euros(731));
        assertThat(cost.column(Place.MISSED, Switches.USUAL)).isEqualTo(euros(731));
        assertThat(book.pieces().stream()
                        .filter(piece -> piece.place() == Place.KEPT)
                        .map(piece -> piece.amount().minor()))
                .containsExactlyInAnyOrder(74_000L, 23_800L);
    }

    /** Unmounted tyres whose last day has passed unused are lost where they were bought for, the day after. */
    @Test
    void what_was_carried_on_is_lost_when_its_last_day_has_passed_unused() {
        line("tyres", CostCategory.TYRES, 740, 0, 740, LocalDate.of(2027, 3, 31));
        assertThat(cost(book(LocalDate.of(2027, 3, 31))).total(Switches.USUAL)).isEqualTo(euros(0));
        CostBook after = book(LocalDate.of(2027, 4, 1));
        assertThat(cost(after).total(Switches.USUAL)).isEqualTo(euros(740));
        assertThat(after.pieces().stream().filter(piece -> !piece.amount().isNone()))
                .singleElement()
                .satisfies(piece -> assertThat(piece.day()).isEqualTo(LocalDate.of(2027, 4, 1)));
    }

    /** Handbook 8.2: shells of 180 with a limit of 20 h fail at 6.4 h: 58 was used, 122 is lost, to whole units there. */
    @Test
    void life_lost_is_a_split_of_the_price_and_adds_nothing() {
        Id<PartDesign> design = add(new PartDesign("shells", PartKind.BIG_END_SHELLS, "", "", false, true, "", null));
        Id<Part> part = add(new Part("BE-1", design, "", "", null, null, null, null, null, null, ""));
        add(new IncidentPart(
                incident,
                part,
                "",
                PartHarm.FAILED,
                new RunningTime(6 * 3_600_000L + 24 * 60_000),
                false,
                new RunningTime(20 * 3_600_000L),
                ""));
        add(new CostDraft(EVENT, "shells", euros(180))
                .because(incident)
                .of(part)
                .line());
        Facts facts = Facts.none().with(entries);
        assertThat(LifeLost.of(facts, incident)).singleElement().satisfies(split -> {
            assertThat(split.used()).isEqualTo(Money.parse("57.60 EUR"));
            assertThat(split.lost()).isEqualTo(Money.parse("122.40 EUR"));
        });
        assertThat(cost(book(EVENT)).total(Switches.USUAL)).isEqualTo(euros(180));
    }

    @Test
    void a_life_that_is_not_known_is_not_split() {
        Id<PartDesign> design = add(new PartDesign("head", PartKind.HEAD, "", "", false, true, "", null));
        Id<Part> part = add(new Part("HD-9", design, "", "", null, null, null, null, null, null, ""));
        add(new IncidentPart(incident, part, "", PartHarm.FAILED, new RunningTime(1), true, new RunningTime(20), ""));
        add(new CostDraft(EVENT, "head", euros(900)).because(incident).of(part).line());
        assertThat(LifeLost.of(Facts.none().with(entries), incident))
                .singleElement()
                .extracting(LostLife::lost)
                .isNull();
    }

    /** Nothing written is not none: hours of 0 say that there was no own work, and then it is 0. */
    @Test
    void what_nobody_has_written_is_told_from_what_was_none() {
        assertThat(cost(book(EVENT)).unwritten()).containsExactlyInAnyOrder(Place.CASH, Place.LABOUR);
        assertThat(cost(book(EVENT)).isUnwritten()).isTrue();
        add(new CostDraft(EVENT, "shells", Money.parse("180.00 GBP"))
                .because(incident)
                .line());
        assertThat(cost(book(EVENT)).unwritten())
                .as("without a rate it counts nowhere, and is written all the same")
                .containsExactly(Place.LABOUR);
        add(new CostDraft(EVENT, "no own work", euros(0))
                .as(CostCategory.LABOUR, CostBasis.VALUED)
                .because(incident)
                .line());
        assertThat(cost(book(EVENT)).unwritten()).isEmpty();
        assertThat(cost(book(EVENT)).column(Place.LABOUR, Switches.USUAL)).isEqualTo(euros(0));
        assertThat(cost(book(EVENT)).isUnwritten()).as("0 was written").isFalse();
    }

    private void line(
            String what, CostCategory category, long paid, long recovered, long carried, @Nullable LocalDate until) {
        add(new CostDraft(EVENT.minusDays(9), what, euros(paid))
                .as(category, CostBasis.CASH)
                .at(event, car)
                .gotBack(euros(recovered))
                .kept(euros(carried), until)
                .line());
    }

    private CostBook book(LocalDate day) {
        return Costs.asOf(Facts.none().with(entries), new AsOf(day, ZONE));
    }

    private IncidentCost cost(CostBook book) {
        return Failures.all(Facts.none().with(entries), book, new AsOf(LocalDate.of(2028, 1, 1), ZONE), piece -> true)
                .get(0);
    }

    private static Money euros(long whole) {
        return new Money(whole * 100, EUR);
    }

    private <F extends Fact> Id<F> add(F fact) {
        Id<F> id = new Id<>(new UUID(1, entries.size() + 1));
        entries.add(new Entry<>(id, fact, Standing.IN_FORCE, null, 1));
        return id;
    }
}
