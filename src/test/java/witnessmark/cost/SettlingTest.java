package witnessmark.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.ToSettle;
import witnessmark.cost.result.ToSettle.What;
import witnessmark.cost.result.Unsettled;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.Money;

/** What is still to be asked back, charged or used: sums done by hand, prices invented. */
class SettlingTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final LocalDate DAY = LocalDate.of(2026, 7, 8);
    private static final SeasonSpan SEASON =
            new SeasonSpan("2026", LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31), null);

    private final List<Entry<?>> entries = new ArrayList<>();

    /** 520 paid and 390 back leave 130; a customer's 272; 740 kept; late 75. In all 130 + 75 + 272 + 740 = 1 217. */
    @Test
    void what_has_a_last_day_stands_first_and_each_thing_to_do_has_its_sum() {
        add(new CostDraft(DAY.minusDays(30), "entry", euros(520))
                .gotBack(euros(390))
                .refundBy(DAY.plusDays(3)));
        add(new CostDraft(DAY.minusDays(30), "springs", euros(272)).forCustomer("customer C1"));
        add(new CostDraft(DAY.minusDays(20), "tyres", euros(740)).kept(euros(740), DAY.plusDays(200)));
        add(new CostDraft(DAY.minusDays(90), "core charge", euros(75)).refundBy(DAY.minusDays(9)));
        Unsettled all = unsettled();
        assertThat(all.rows())
                .extracting(ToSettle::what, ToSettle::home)
                .containsExactly(
                        tuple(What.ASK_BACK_LATE, euros(75)),
                        tuple(What.ASK_BACK_REST, euros(130)),
                        tuple(What.USE, euros(740)),
                        tuple(What.CHARGE, euros(272)));
        assertThat(all.sums())
                .isEqualTo(Map.of(What.ASK_BACK, euros(205), What.CHARGE, euros(272), What.USE, euros(740)));
        assertThat(all.total()).isEqualTo(euros(1_217));
        assertThat(all.noRate()).isZero();
        assertThat(all.twice()).isZero();
    }

    /** 100 GBP at 1.15 are 115 EUR; of 200 GBP without a rate nobody can say. */
    @Test
    void another_currency_counts_at_its_rate_and_without_one_in_no_sum() {
        add(new CostDraft(DAY.minusDays(9), "entry", Money.parse("100.00 GBP"))
                .rated(new BigDecimal("1.15"))
                .refundBy(DAY.plusDays(9)));
        add(new CostDraft(DAY.minusDays(9), "entry", Money.parse("200.00 GBP")).refundBy(DAY.plusDays(9)));
        Unsettled all = unsettled();
        assertThat(all.total()).isEqualTo(euros(115));
        assertThat(all.noRate()).isEqualTo(1);
        assertThat(all.rows()).extracting(ToSettle::home).containsExactly(euros(115), null);
    }

    /** One cost can be asked back from one and charged to another: it is told, as both sums hold it. */
    @Test
    void a_cost_in_two_rows_is_told() {
        add(new CostDraft(DAY.minusDays(9), "entry", euros(520))
                .refundBy(DAY.plusDays(9))
                .forCustomer("customer C1"));
        Unsettled all = unsettled();
        assertThat(all.rows()).extracting(ToSettle::what).containsExactly(What.ASK_BACK, What.CHARGE);
        assertThat(all.twice()).isEqualTo(1);
    }

    /** Whatever is written down, the sums are those of the rows, and what is to be asked back is what {@link Refunds} says. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void of_anything_the_sums_are_those_of_the_rows(long seed) {
        Facts facts = new CostGenerator(seed, 200).facts();
        AsOf asOf = new AsOf(DAY, ZONE);
        Unsettled all = Settling.of(facts, Costs.asOf(facts, asOf), asOf, SEASON);
        long rows = all.rows().stream()
                .map(ToSettle::home)
                .filter(home -> home != null)
                .mapToLong(Money::minor)
                .sum();
        assertThat(all.total().minor()).as("seed %d", seed).isEqualTo(rows);
        assertThat(all.rows().stream()
                        .filter(row -> row.what().together() == What.ASK_BACK)
                        .map(row -> row.line().id()))
                .as("seed %d", seed)
                .containsExactlyInAnyOrderElementsOf(Refunds.open(facts, asOf).stream()
                        .map(refund -> refund.line().id())
                        .toList());
    }

    private Unsettled unsettled() {
        Facts facts = Facts.none().with(entries);
        AsOf asOf = new AsOf(DAY, ZONE);
        return Settling.of(facts, Costs.asOf(facts, asOf), asOf, SEASON);
    }

    private static Money euros(long units) {
        return Money.parse(units + ".00 EUR");
    }

    private void add(CostDraft draft) {
        CostLine line = draft.line();
        entries.add(new Entry<>(new Id<CostLine>(UUID.randomUUID()), line, Standing.IN_FORCE, null, 1));
    }
}
