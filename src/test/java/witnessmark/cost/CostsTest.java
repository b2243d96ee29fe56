package witnessmark.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Switches;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.MissedRun;
import witnessmark.domain.MissedShare;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** Costs of seeded random years against sums over their lines one by one, and against themselves. */
class CostsTest {
    private static final LocalDate END = LocalDate.of(2028, 1, 1);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    private Facts facts = Facts.none();
    private AsOf asOf = new AsOf(END, CostGenerator.ZONE);
    private CostBook book = new CostBook(java.util.Currency.getInstance("EUR"), List.of(), List.of());

    private void begin(long seed) {
        facts = new CostGenerator(seed).facts();
        Random random = new Random(seed);
        LocalDate day = random.nextBoolean() ? END : LocalDate.of(2026, 1, 1).plusDays(random.nextInt(540));
        asOf = new AsOf(day, CostGenerator.ZONE);
        book = Costs.asOf(facts, asOf);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void the_pieces_of_a_line_are_what_was_paid_less_what_was_got_back(long seed) {
        begin(seed);
        for (Entry<CostLine> entry : facts.of(CostLine.class).all()) {
            CostLine line = entry.fact();
            List<Piece> pieces = book.pieces().stream()
                    .filter(piece -> piece.line().equals(entry.id()))
                    .toList();
            boolean later = line.day().isAfter(asOf.day());
            boolean noRate = !line.paid().currency().equals(book.home()) && line.rate() == null;
            assertThat(book.noRate().stream().anyMatch(missing -> missing.line().equals(entry.id())))
                    .isEqualTo(noRate && !later);
            if (later || noRate) {
                assertThat(pieces).isEmpty();
            } else {
                assertThat(sum(pieces)).isEqualTo(home(line.paid(), line).minus(home(line.recovered(), line)));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void what_names_an_incident_is_owed_to_it_and_to_nothing_else(long seed) {
        begin(seed);
        for (Entry<Incident> incident : facts.of(Incident.class).all()) {
            for (Place place : List.of(Place.CASH, Place.LABOUR)) {
                Money expected = Money.none(book.home());
                for (Entry<CostLine> entry : facts.of(CostLine.class).all()) {
                    CostLine line = entry.fact();
                    boolean its = incident.inForce()
                            && incident.id().equals(line.incident())
                            && (line.basis() == CostBasis.VALUED) == (place == Place.LABOUR)
                            && !line.day().isAfter(asOf.day())
                            && (line.rate() != null || line.paid().currency().equals(book.home()));
                    if (its) {
                        expected = expected.plus(home(line.paid(), line)).minus(home(line.recovered(), line));
                        LocalDate until = line.carriedUntil();
                        LocalDate used = line.carriedUsed();
                        boolean wasUsed = used != null && !used.isAfter(asOf.day());
                        boolean lost = !wasUsed && until != null && until.isBefore(asOf.day());
                        expected = lost ? expected : expected.minus(home(line.carried(), line));
                    }
                }
                Money owed = sum(book.pieces().stream()
                        .filter(piece -> piece.place() == place && incident.id().equals(piece.incident()))
                        .toList());
                assertThat(owed).isEqualTo(expected);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_weekend_is_shared_by_the_shares_that_were_entered_and_by_nothing_else(long seed) {
        begin(seed);
        for (Entry<MissedRun> missed : facts.of(MissedRun.class).all()) {
            List<Piece> weekend = book.pieces().stream()
                    .filter(piece -> missed.fact().event().equals(piece.event())
                            && missed.fact().car().equals(piece.car())
                            && List.of(Place.MISSED, Place.SPOILED, Place.RUNNING)
                                    .contains(piece.place()))
                    .toList();
            long whole = sum(weekend).minor();
            long shares = 0;
            for (Share share : shares(missed.fact())) {
                shares += share.share();
            }
            for (Share share : shares(missed.fact())) {
                Place place = share.whole() ? Place.MISSED : Place.SPOILED;
                long same = shares(missed.fact()).stream()
                        .filter(other -> other.incident().equals(share.incident()) && other.whole() == share.whole())
                        .mapToLong(Share::share)
                        .sum();
                long got = sum(weekend.stream()
                                .filter(piece -> piece.place() == place
                                        && share.incident().equals(piece.incident()))
                                .toList())
                        .minor();
                double exact = (double) whole * same / Math.max(10_000, shares);
                assertThat((double) got).isBetween(exact - weekend.size(), exact + weekend.size());
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_switch_moves_exactly_what_it_names(long seed) {
        begin(seed);
        for (IncidentCost cost : all()) {
            for (int bits = 0; bits < 32; bits++) {
                Switches on =
                        new Switches((bits & 1) > 0, (bits & 2) > 0, (bits & 4) > 0, (bits & 8) > 0, (bits & 16) > 0);
                Money total = cost.total(on);
                Money expected = cost.column(Place.CASH, on);
                expected = on.labour() ? expected.plus(cost.column(Place.LABOUR, on)) : expected;
                expected = on.missed() ? expected.plus(cost.column(Place.MISSED, on)) : expected;
                expected = on.spoiled() ? expected.plus(cost.column(Place.SPOILED, on)) : expected;
                assertThat(total).isEqualTo(expected);
                assertThat(cost.span(on).low().minor()).isLessThanOrEqualTo(total.minor());
                assertThat(cost.span(on).high().minor()).isGreaterThanOrEqualTo(total.minor());
            }
            Switches all = new Switches(true, true, true, true, true);
            for (Place column : List.of(Place.CASH, Place.LABOUR, Place.MISSED, Place.SPOILED)) {
                assertThat(cost.column(column, all).minus(cost.column(column, all.with(true, false))))
                        .isEqualTo(cost.planned(column));
                assertThat(cost.column(column, all).minus(cost.column(column, all.with(false, true))))
                        .isEqualTo(cost.allocated(column));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void however_failures_are_put_together_they_come_to_the_same(long seed) {
        begin(seed);
        List<IncidentCost> costs = all();
        Money whole =
                costs.stream().map(cost -> cost.total(Switches.USUAL)).reduce(Money.none(book.home()), Money::plus);
        for (BarsBy by : BarsBy.values()) {
            List<Bar> bars = new Bars(facts, subject -> Optional.empty()).of(by, costs, Switches.USUAL);
            assertThat(bars.stream().map(Bar::amount).reduce(Money.none(book.home()), Money::plus))
                    .as(by.name())
                    .isEqualTo(whole);
            for (Bar bar : bars) {
                assertThat(bar.parts().stream().map(Bar.Part::amount).reduce(Money.none(book.home()), Money::plus))
                        .isEqualTo(bar.amount());
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void what_a_season_spent_is_what_failures_and_running_took_and_what_is_kept(long seed) {
        begin(seed);
        Money counted = Money.none(book.home());
        for (int year = 2026; year <= 2029; year++) {
            SeasonSpan season = Seasons.named(facts, Integer.toString(year)).orElseThrow();
            SeasonCost cost = SeasonTotals.of(facts, book, asOf, season, RunningTime.NONE);
            Money took = cost.cash().plus(cost.missed()).plus(cost.spoiled()).plus(cost.runningCosts());
            assertThat(cost.spent().minus(cost.kept()).plus(cost.broughtIn())).isEqualTo(took);
            counted = counted.plus(took).plus(cost.labour()).plus(cost.ownWork());
        }
        assertThat(counted)
                .isEqualTo(sum(book.pieces().stream()
                        .filter(piece -> piece.place() != Place.KEPT)
                        .toList()));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void the_order_in_which_lines_were_written_does_not_matter(long seed) {
        begin(seed);
        List<Entry<?>> shuffled = new ArrayList<>();
        List<Entry<CostLine>> lines = new ArrayList<>(facts.of(CostLine.class).all());
        Collections.shuffle(lines, new Random(seed));
        witnessmark.domain.image.RecordTypes.all().stream()
                .filter(type -> type.kind() != CostLine.class)
                .forEach(type -> shuffled.addAll(facts.of(type.kind()).all()));
        shuffled.addAll(lines);
        assertThat(Costs.asOf(Facts.none().with(shuffled), asOf).pieces())
                .containsExactlyInAnyOrderElementsOf(book.pieces());
    }

    private List<IncidentCost> all() {
        return Failures.all(facts, book, asOf, piece -> true);
    }

    /** The shares of that weekend that stand on the day. */
    private List<Share> shares(MissedRun weekend) {
        List<Share> shares = new ArrayList<>();
        for (Entry<MissedShare> share : facts.of(MissedShare.class).all()) {
            MissedRun missed = facts.of(MissedRun.class).get(share.fact().missed());
            boolean stands = missed.event().equals(weekend.event())
                    && missed.car().equals(weekend.car())
                    && !missed.at().isAfter(asOf.last())
                    && facts.of(Incident.class)
                            .find(share.fact().incident())
                            .orElseThrow()
                            .inForce();
            if (stands) {
                shares.add(new Share(share.fact().incident(), share.fact().share(), missed.planned() == null));
            }
        }
        return shares;
    }

    private Money home(Money amount, CostLine line) {
        return Costs.home(amount, line.rate(), book.home()).orElseThrow();
    }

    private Money sum(Collection<Piece> pieces) {
        return pieces.stream().map(Piece::amount).reduce(Money.none(book.home()), Money::plus);
    }

    private record Share(Id<Incident> incident, int share, boolean whole) {}
}
