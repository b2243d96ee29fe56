package witnessmark.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import witnessmark.cost.result.Refund;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.RunDraft;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** Common practice, no source: an entry can be asked back until two weeks before its event; prices are invented. */
class RefundsTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final LocalDate EVENT = LocalDate.of(2026, 8, 22);
    private static final LocalDate LAST = EVENT.minusDays(14);
    private static final Currency EUR = Currency.getInstance("EUR");

    private final List<Entry<?>> entries = new ArrayList<>();
    private final Id<Car> car = add(new Car("41", ""));
    private final Id<Car> other = add(new Car("57", ""));
    private final Id<Event> event = add(new Event("Round 7", "", EVENT, EVENT.plusDays(1), ZONE, null, ""));

    @Test
    void until_its_last_day_all_of_it_can_be_asked_back() {
        add(entry(car).line());
        assertThat(on(LAST.minusDays(3)))
                .extracting(Refund::still, Refund::daysLeft, Refund::late, Refund::begun)
                .containsExactly(tuple(euros(520), 3L, false, false));
        assertThat(on(LAST)).extracting(Refund::daysLeft, Refund::late).containsExactly(tuple(0L, false));
        assertThat(on(LAST.minusDays(60))).as("not paid yet").isEmpty();
    }

    @Test
    void what_came_back_in_part_or_is_kept_for_later_is_not_to_come() {
        add(entry(car).gotBack(euros(390)).line());
        assertThat(on(LAST)).extracting(Refund::still, Refund::begun).containsExactly(tuple(euros(130), true));
        add(entry(car).kept(euros(500), null).line());
        assertThat(on(LAST)).extracting(Refund::still).containsExactlyInAnyOrder(euros(130), euros(20));
        add(entry(other).gotBack(euros(520)).line());
        assertThat(on(LAST)).hasSize(2);
    }

    @Test
    void what_is_for_no_event_stays_late_until_all_of_it_came_back() {
        add(new CostDraft(LAST.minusDays(40), "core charge", euros(75))
                .refundBy(LAST)
                .line());
        assertThat(on(LAST.plusDays(200)))
                .extracting(Refund::late, Refund::daysLeft)
                .containsExactly(tuple(true, -200L));
    }

    @Test
    void an_entry_still_to_be_driven_is_not_late_and_one_given_up_is() {
        Id<EventEntry> going = add(new EventEntry(event, car, null));
        add(entry(car).line());
        add(entry(other).line());
        assertThat(on(LAST.plusDays(1)))
                .as("car 57 is entered no more")
                .extracting(refund -> refund.line().fact().car())
                .containsExactly(other);
        entries.removeIf(each -> each.id().equals(going));
        assertThat(on(LAST.plusDays(1))).hasSize(2).allMatch(Refund::late);
        assertThat(on(EVENT.plusDays(1))).as("while the event runs").hasSize(2);
    }

    @Test
    void an_entry_that_was_driven_on_is_used_and_one_that_was_not_is_late() {
        add(new EventEntry(event, car, null));
        add(new EventEntry(event, other, null));
        add(entry(car).line());
        add(entry(other).line());
        ran(other, EVENT);
        assertThat(on(EVENT.plusDays(2)))
                .extracting(refund -> refund.line().fact().car())
                .containsExactly(car);
        ran(car, EVENT.plusDays(30));
        assertThat(on(EVENT.plusDays(2))).as("a run of a day to come").hasSize(1);
    }

    @Test
    void what_is_for_no_car_is_used_by_any_and_what_an_organiser_kept_is_not_waited_for() {
        add(entry(null).line());
        add(entry(car).gotBack(euros(390)).line());
        assertThat(on(EVENT.plusDays(2)))
                .extracting(refund -> refund.line().fact().car())
                .containsExactly((Id<Car>) null);
        ran(other, EVENT);
        assertThat(on(EVENT.plusDays(2))).isEmpty();
    }

    @Test
    void the_first_last_day_is_first() {
        add(entry(car).refundBy(LAST.plusDays(2)).line());
        add(entry(car).refundBy(LAST).line());
        add(entry(car).refundBy(LAST.plusDays(1)).line());
        add(entry(car).refundBy(null).line());
        assertThat(on(LAST)).extracting(Refund::by).containsExactly(LAST, LAST.plusDays(1), LAST.plusDays(2));
    }

    private CostDraft entry(@Nullable Id<Car> whose) {
        return new CostDraft(LAST.minusDays(40), "entry", euros(520))
                .at(event, whose)
                .refundBy(LAST);
    }

    private void ran(Id<Car> whose, LocalDate day) {
        Id<EngineDesign> design = new Id<>(UUID.randomUUID());
        Id<Engine> engine = add(new Engine("K03", design, null, ""));
        add(new RunDraft(engine, whose, Moment.of(day.atTime(11, 0), ZONE), new RunningTime(1_200_000))
                .planned(event, null)
                .written());
    }

    private List<Refund> on(LocalDate day) {
        return Refunds.open(Facts.none().with(entries), new AsOf(day, ZONE));
    }

    private static Money euros(long units) {
        return new Money(units * 100, EUR);
    }

    private <F extends Fact> Id<F> add(F fact) {
        Id<F> id = new Id<>(UUID.randomUUID());
        entries.add(new Entry<>(id, fact, Standing.IN_FORCE, null, 1));
        return id;
    }
}
