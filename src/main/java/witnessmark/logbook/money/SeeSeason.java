package witnessmark.logbook.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import witnessmark.cost.Bars;
import witnessmark.cost.Costs;
import witnessmark.cost.Failures;
import witnessmark.cost.KindCosts;
import witnessmark.cost.LifeLost;
import witnessmark.cost.SeasonRunning;
import witnessmark.cost.SeasonTotals;
import witnessmark.cost.Seasons;
import witnessmark.cost.Settling;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.LostLife;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Switches;
import witnessmark.domain.CostLine;
import witnessmark.domain.Decision;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncomeLine;
import witnessmark.domain.Season;
import witnessmark.ledger.AsOf;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;

/** Puts a season in money on one page. */
public final class SeeSeason {
    private final Facts facts;
    private final AsOf asOf;
    private final CostBook book;

    private SeeSeason(View view) {
        this.facts = view.facts();
        this.asOf = view.ledger().asOf();
        this.book = Costs.asOf(facts, asOf);
    }

    /** The season of the view's day. */
    public static SeasonSpan now(View view) {
        return Seasons.of(view.facts(), view.day());
    }

    /** The season that goes by a name, or a calendar year. */
    public static Optional<SeasonSpan> named(View view, String name) {
        return Seasons.named(view.facts(), name);
    }

    /**
     * The page of one season.
     *
     * @param view the logbook
     * @param season which season
     * @param switches what totals take in
     * @param by what the bars put failures under
     */
    public static SeasonPage of(View view, SeasonSpan season, Switches switches, BarsBy by) {
        SeeSeason see = new SeeSeason(view);
        return see.page(season, switches, by, new SeasonRunning(see.facts, season, see.asOf));
    }

    /** The page asked for; of the season of the view's day where that of the name is not there. */
    public static SeasonPage of(View view, SeasonAsked asked) {
        SeasonSpan season = named(view, asked.season()).orElseGet(() -> now(view));
        return of(view, season, asked.switches(), asked.by());
    }

    /**
     * Everything that is printed of the season asked about: the same page, and what its figures are made of.
     *
     * @param logbook whose it is
     * @param printed when
     */
    public static SeasonSheetFacts sheet(View view, SeasonAsked asked, String logbook, Moment printed) {
        SeasonSpan season = named(view, asked.season()).orElseGet(() -> now(view));
        SeeSeason see = new SeeSeason(view);
        SeasonRunning running = new SeasonRunning(see.facts, season, see.asOf);
        List<IncidentCost> costs = see.costs(season);
        Bars bars = new Bars(see.facts, running::of);
        Map<BarsBy, List<Bar>> each = new EnumMap<>(BarsBy.class);
        for (BarsBy by : BarsBy.values()) {
            each.put(by, bars.of(by, costs, asked.switches()));
        }
        return new SeasonSheetFacts(
                logbook,
                see.facts,
                view.day(),
                see.page(season, asked.switches(), asked.by(), running),
                each,
                SeasonTotals.pieces(see.facts, see.book, see.asOf, season),
                costs.stream()
                        .collect(Collectors.toMap(IncidentCost::incident, cost -> see.lost(cost.incident(), season))),
                printed);
    }

    /** Every piece of the costs of a season's own lines and days, in the order of the lines. */
    static List<Piece> pieces(View view, SeasonSpan season) {
        return new SeeSeason(view)
                .book.pieces().stream().filter(piece -> season.has(piece.day())).toList();
    }

    /** What each incident that happened in the season, or took money in it, took of it. */
    private List<IncidentCost> costs(SeasonSpan season) {
        return Failures.all(facts, book, asOf, piece -> season.has(piece.day())).stream()
                .filter(cost -> !cost.pieces().isEmpty() || season.has(at(cost.incident())))
                .toList();
    }

    /** Of prices that count in the season. */
    private List<LostLife> lost(Id<Incident> incident, SeasonSpan season) {
        return LifeLost.of(facts, incident).stream()
                .filter(lost -> {
                    LocalDate day = facts.of(CostLine.class).get(lost.line()).day();
                    return season.has(day) && !day.isAfter(asOf.day());
                })
                .toList();
    }

    private SeasonPage page(SeasonSpan season, Switches switches, BarsBy by, SeasonRunning running) {
        List<IncidentCost> costs = costs(season);
        IncidentCost together = new IncidentCost(
                new Id<>(new java.util.UUID(0, 0)),
                book.home(),
                costs.stream().flatMap(cost -> cost.pieces().stream()).toList(),
                Set.of());
        return new SeasonPage(
                SeasonTotals.of(facts, book, asOf, season, running.all()),
                switches,
                together.total(switches),
                together.span(switches),
                by,
                new Bars(facts, running::of).of(by, costs, switches),
                KindCosts.of(facts, book, season, costs, switches),
                failures(costs, switches),
                new BudgetRows(facts, book).of(season),
                decisions(season),
                income(season),
                Settling.of(facts, book, asOf, season),
                book.noRate(),
                beside());
    }

    private LocalDate at(Id<Incident> incident) {
        return facts.of(Incident.class).get(incident).at().day();
    }

    private List<Failure> failures(List<IncidentCost> costs, Switches switches) {
        Preventions preventions = new Preventions(facts, book.home(), asOf);
        return costs.stream()
                .sorted(Comparator.comparingLong(cost -> -cost.total(switches).minor()))
                .map(cost -> new Failure(
                        facts.of(Incident.class).find(cost.incident()).orElseThrow(),
                        cost,
                        preventions.together(cost.incident()),
                        facts.of(Decision.class)
                                .where(decision -> cost.incident().equals(decision.ledTo()))))
                .toList();
    }

    private List<Decided> decisions(SeasonSpan season) {
        return facts.of(Decision.class)
                .inForce()
                .filter(decision -> asOf.counts(decision.fact().asked())
                        && season.has(decision.fact().asked().day()))
                .sorted(Comparator.comparing(
                        (Entry<Decision> decision) -> decision.fact().asked()))
                .map(this::decided)
                .toList();
    }

    private Decided decided(Entry<Decision> decision) {
        return Decided.of(facts, decision, led -> SeeIncident.cost(facts, book, asOf, led));
    }

    private List<Entry<IncomeLine>> income(SeasonSpan season) {
        return facts.of(IncomeLine.class)
                .inForce()
                .filter(line ->
                        season.has(line.fact().day()) && !line.fact().day().isAfter(asOf.day()))
                .sorted(Comparator.comparing(
                        (Entry<IncomeLine> line) -> line.fact().day()))
                .toList();
    }

    private List<SeasonPage.Beside> beside() {
        List<SeasonPage.Beside> all = new ArrayList<>();
        for (SeasonSpan each : Seasons.all(facts, asOf.day())) {
            SeasonCost now = SeasonTotals.of(facts, book, asOf, each, new SeasonRunning(facts, each, asOf).all());
            Entry<Season> reported = Optional.ofNullable(each.season())
                    .flatMap(id -> facts.of(Season.class).find(id))
                    .filter(season -> season.fact().closed() != null
                            && asOf.counts(Objects.requireNonNull(season.fact().closed())))
                    .orElse(null);
            all.add(new SeasonPage.Beside(each, now, reported));
        }
        return all;
    }
}
