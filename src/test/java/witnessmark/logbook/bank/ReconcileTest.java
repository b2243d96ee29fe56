package witnessmark.logbook.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.cost.CostDraft;
import witnessmark.domain.BankLine;
import witnessmark.domain.BankMatch;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostCategory;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.IncomeKind;
import witnessmark.domain.IncomeLine;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.Money;
import witnessmark.sample.SampleBooks;

/** A statement made out of the costs and the income it pays is matched with just those; what it lacks is listed. */
class ReconcileTest {
    private static final Currency EUR = Currency.getInstance("EUR");
    private static final AsOf END = new AsOf(LocalDate.of(2027, 1, 1), ZoneId.of("Europe/London"));

    private final List<Entry<?>> entries = new ArrayList<>();
    /** Which cost or income a line of the statement was made from. */
    private final Map<Id<?>, Id<?>> truth = new HashMap<>();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void each_line_is_proposed_for_what_it_was_made_from_and_the_rest_is_left_over(long seed) {
        Random random = new Random(seed);
        List<Id<?>> without = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            LocalDate day = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(300));
            long minor = 1_000 + i * 1_000L + random.nextInt(900);
            boolean income = random.nextInt(4) == 0;
            Id<?> thing = income
                    ? add(new IncomeLine(
                            day, "prize " + i, IncomeKind.PRIZE, null, null, euros(minor), null, "series", ""))
                    : add(cost(day, "part " + i, minor, random.nextInt(3) == 0 ? minor / 5 : 0, "", ""));
            if (random.nextInt(5) == 0) {
                without.add(thing);
            } else {
                long due = income ? minor : -minor - tax(thing);
                Id<BankLine> line = add(line(day.plusDays(random.nextInt(9)), due, "booking " + i));
                truth.put(line, thing);
            }
        }
        Id<BankLine> stray = add(line(LocalDate.of(2026, 5, 5), -7, "account fee"));
        Reconciled found = Reconcile.of(Facts.none().with(entries), END);
        for (Reconciled.Line line : found.lines()) {
            if (line.bank().id().equals(stray)) {
                assertThat(line.proposed()).isFalse();
            } else {
                Id<?> proposed = line.cost() != null
                        ? line.cost().id()
                        : Objects.requireNonNull(line.earning()).id();
                assertThat(proposed).isEqualTo(truth.get(line.bank().id()));
            }
            Reconcile.agreed(line, SampleBooks.ids()).ifPresent(entries::add);
        }
        Reconciled after = Reconcile.of(Facts.none().with(entries), END);
        assertThat(after.lines().stream().filter(line -> !line.settled()))
                .singleElement()
                .satisfies(line -> assertThat(line.bank().id()).isEqualTo(stray));
        List<Id<?>> left = new ArrayList<>();
        after.costs().forEach(cost -> left.add(cost.id()));
        after.income().forEach(income -> left.add(income.id()));
        assertThat(left).containsExactlyInAnyOrderElementsOf(without);
    }

    @Test
    void what_fits_two_costs_equally_well_is_proposed_for_neither() {
        LocalDate day = LocalDate.of(2026, 4, 10);
        add(cost(day, "entry", 52_000, 0, "", ""));
        add(cost(day, "entry", 52_000, 0, "", ""));
        add(line(day.plusDays(2), -52_000, "card payment"));
        assertThat(Reconcile.of(Facts.none().with(entries), END).lines())
                .singleElement()
                .satisfies(line -> assertThat(line.proposed()).isFalse());
    }

    @Test
    void a_number_on_the_line_ties_what_days_would_not() {
        Id<CostLine> wanted = add(cost(LocalDate.of(2026, 1, 10), "crank", 245_000, 0, "R-4711", "crank maker C1"));
        add(cost(LocalDate.of(2026, 6, 1), "crank", 245_000, 0, "R-4800", "crank maker C1"));
        add(line(LocalDate.of(2026, 6, 2), -245_000, "C1 R-4711"));
        assertThat(Reconcile.of(Facts.none().with(entries), END).lines())
                .singleElement()
                .satisfies(line ->
                        assertThat(Objects.requireNonNull(line.cost()).id()).isEqualTo(wanted));
    }

    @Test
    void a_cost_that_is_too_far_away_is_not_proposed() {
        add(cost(LocalDate.of(2026, 1, 10), "gloves", 4_500, 0, "", ""));
        add(line(LocalDate.of(2026, 9, 2), -4_500, "card payment"));
        assertThat(Reconcile.of(Facts.none().with(entries), END).lines())
                .singleElement()
                .satisfies(line -> assertThat(line.proposed()).isFalse());
    }

    @Test
    void what_was_got_back_ties_money_that_came_in_after_it_was_paid() {
        CostLine entry = new CostDraft(LocalDate.of(2026, 6, 23), "entry", euros(52_000))
                .as(CostCategory.ENTRY, CostBasis.CASH)
                .gotBack(euros(39_000))
                .line();
        Id<CostLine> cost = add(entry);
        Id<BankLine> paid = add(line(LocalDate.of(2026, 6, 24), -52_000, "entry"));
        add(new BankMatch(paid, cost, null, euros(-52_000)));
        add(line(LocalDate.of(2026, 7, 1), 39_000, "refund"));
        Reconciled.Line back =
                Reconcile.of(Facts.none().with(entries), END).lines().get(1);
        assertThat(Objects.requireNonNull(back.cost()).id()).isEqualTo(cost);
        Reconcile.agreed(back, SampleBooks.ids()).ifPresent(entries::add);
        assertThat(Reconcile.of(Facts.none().with(entries), END).lines()).allMatch(Reconciled.Line::settled);
    }

    @Test
    void a_line_set_aside_is_settled_and_one_matched_in_part_keeps_its_rest() {
        Id<CostLine> cost = add(cost(LocalDate.of(2026, 4, 1), "fuel", 10_000, 0, "", ""));
        Id<BankLine> both = add(line(LocalDate.of(2026, 4, 2), -15_000, "fuel and cash"));
        add(new BankMatch(both, cost, null, euros(-10_000)));
        add(new BankLine(
                "team account", LocalDate.of(2026, 4, 3), euros(-900), "fee", "", 1, "april.csv", "bank's own"));
        List<Reconciled.Line> lines =
                Reconcile.of(Facts.none().with(entries), END).lines();
        assertThat(lines.get(0).left()).isEqualTo(euros(-5_000));
        assertThat(lines.get(0).settled()).isFalse();
        assertThat(lines.get(1).settled()).isTrue();
    }

    private long tax(Id<?> thing) {
        return entries.stream()
                .filter(entry -> entry.id().equals(thing) && entry.fact() instanceof CostLine)
                .map(entry -> ((CostLine) entry.fact()).tax())
                .filter(Objects::nonNull)
                .mapToLong(tax -> Objects.requireNonNull(tax).minor())
                .sum();
    }

    private static CostLine cost(LocalDate day, String what, long minor, long tax, String invoice, String supplier) {
        return new CostDraft(day, what, euros(minor))
                .taxed(tax == 0 ? null : euros(tax))
                .invoiced(invoice, supplier)
                .line();
    }

    private static BankLine line(LocalDate day, long minor, String text) {
        return new BankLine("team account", day, euros(minor), text, "", 1, "statement.csv", "");
    }

    private static Money euros(long minor) {
        return new Money(minor, EUR);
    }

    private <F extends Fact> Id<F> add(F fact) {
        Id<F> id = new Id<>(new UUID(1, entries.size() + 1));
        entries.add(new Entry<>(id, fact, Standing.IN_FORCE, null, 1));
        return id;
    }
}
