package witnessmark.cost;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.SeasonPieces;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.HourRate;
import witnessmark.domain.IncomeLine;
import witnessmark.domain.RateKind;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** One season in money, as sums of pieces. */
public final class SeasonTotals {
    private final Facts facts;
    private final CostBook book;
    private final AsOf asOf;
    private final SeasonSpan season;
    private final List<Money> noRate = new ArrayList<>();

    private SeasonTotals(Facts facts, CostBook book, AsOf asOf, SeasonSpan season) {
        this.facts = facts;
        this.book = book;
        this.asOf = asOf;
        this.season = season;
    }

    /**
     * Sums one season up.
     *
     * @param facts everything written
     * @param book all costs up to the day
     * @param asOf the day; what comes after it is not counted, but all of the season's budget is
     * @param season which season
     * @param running of all engines in it
     */
    public static SeasonCost of(Facts facts, CostBook book, AsOf asOf, SeasonSpan season, RunningTime running) {
        return new SeasonTotals(facts, book, asOf, season).sum(running);
    }

    /** What the season's figures are sums of, with the arguments of its sum. */
    public static SeasonPieces pieces(Facts facts, CostBook book, AsOf asOf, SeasonSpan season) {
        SeasonTotals totals = new SeasonTotals(facts, book, asOf, season);
        return new SeasonPieces(
                totals.list(totals::counted), totals.list(totals::kept), totals.list(totals::broughtIn));
    }

    private SeasonCost sum(RunningTime running) {
        book.noRate().stream()
                .filter(missing -> season.has(line(missing.line()).day()))
                .forEach(missing -> noRate.add(missing.amount()));
        return new SeasonCost(
                season,
                budget(),
                pieces(this::ofItsLines),
                pieces(piece -> ofItsLines(piece) && line(piece.line()).basis() == CostBasis.COMMITTED),
                pieces(this::kept),
                pieces(this::broughtIn),
                income(),
                place(Place.CASH),
                place(Place.LABOUR),
                place(Place.MISSED),
                place(Place.SPOILED),
                place(Place.RUNNING),
                place(Place.OWN_WORK),
                running,
                provision(running),
                noRate);
    }

    /** Whether a piece of money, of a line of this season. */
    private boolean ofItsLines(Piece piece) {
        return !piece.place().valued() && season.has(line(piece.line()).day());
    }

    /** Whether a piece counts in this season. */
    private boolean counted(Piece piece) {
        return piece.place() != Place.KEPT && season.has(piece.day());
    }

    /** Of its own lines, and counted in no season yet or in a later one. */
    private boolean kept(Piece piece) {
        return ofItsLines(piece) && !counted(piece);
    }

    /** Of lines of an earlier season, and counted in this one. */
    private boolean broughtIn(Piece piece) {
        return !ofItsLines(piece) && !piece.place().valued() && counted(piece);
    }

    private Money place(Place place) {
        return pieces(piece -> piece.place() == place && counted(piece));
    }

    private List<Piece> list(Predicate<Piece> which) {
        return book.pieces().stream().filter(which).toList();
    }

    private Money pieces(Predicate<Piece> which) {
        return list(which).stream().map(Piece::amount).reduce(Money.none(book.home()), Money::plus);
    }

    private Money budget() {
        return inHome(facts.of(BudgetLine.class)
                .inForce()
                .map(Entry::fact)
                .filter(line -> season.has(line.day()))
                .map(line -> new Due(line.amount(), line.rate())));
    }

    private Money income() {
        return inHome(facts.of(IncomeLine.class)
                .inForce()
                .map(Entry::fact)
                .filter(line -> season.has(line.day()) && !line.day().isAfter(asOf.day()))
                .map(line -> new Due(line.amount(), line.rate())));
    }

    private Money inHome(Stream<Due> amounts) {
        Money sum = Money.none(book.home());
        for (Due due : amounts.toList()) {
            Optional<Money> home = Costs.home(due.amount(), due.rate(), book.home());
            if (home.isPresent()) {
                sum = sum.plus(home.get());
            } else {
                noRate.add(due.amount());
            }
        }
        return sum;
    }

    /** Hours run, at the rate that stands at the end of the season. */
    private @Nullable Money provision(RunningTime running) {
        LocalDate last = season.last().isAfter(asOf.day()) ? asOf.day() : season.last();
        return rate(facts, RateKind.ENGINE_RUNNING, last)
                .filter(rate -> rate.amount().currency().equals(book.home()))
                .map(rate -> Work.valued(rate.amount(), running))
                .orElse(null);
    }

    /** The rate of a kind that stands on a day: the latest that has begun. */
    public static Optional<HourRate> rate(Facts facts, RateKind kind, LocalDate day) {
        return facts.of(HourRate.class)
                .inForce()
                .map(Entry::fact)
                .filter(rate -> rate.kind() == kind && !rate.from().isAfter(day))
                .max(Comparator.comparing(HourRate::from));
    }

    private CostLine line(witnessmark.domain.Id<CostLine> id) {
        return facts.of(CostLine.class).get(id);
    }

    private record Due(Money amount, java.math.@Nullable BigDecimal rate) {}
}
