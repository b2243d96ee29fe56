package witnessmark.logbook.money;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.KindCost;
import witnessmark.cost.result.NoRate;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Span;
import witnessmark.cost.result.Switches;
import witnessmark.cost.result.Unsettled;
import witnessmark.domain.Entry;
import witnessmark.domain.IncomeLine;
import witnessmark.domain.Season;
import witnessmark.quantity.Money;

/**
 * The season on one page.
 *
 * @param cost the season in money
 * @param switches what the totals take in
 * @param total of all failures
 * @param span the lowest and highest that total can be
 * @param by what the bars put failures under
 * @param bars dearest first
 * @param kinds what went on each kind of part, failed or not, dearest first
 * @param failures dearest first
 * @param budget by event and car, in the order of the calendar
 * @param decisions of the season, in the order they were put
 * @param income in the order of its days
 * @param settle what can be asked back, is to be charged or is kept for later
 * @param noRate costs that are in no total
 * @param beside the seasons there are, this one among them
 */
public record SeasonPage(
        SeasonCost cost,
        Switches switches,
        Money total,
        Span span,
        BarsBy by,
        List<Bar> bars,
        List<KindCost> kinds,
        List<Failure> failures,
        List<BudgetRow> budget,
        List<Decided> decisions,
        List<Entry<IncomeLine>> income,
        Unsettled settle,
        List<NoRate> noRate,
        List<Beside> beside) {
    public SeasonPage {
        bars = List.copyOf(bars);
        kinds = List.copyOf(kinds);
        failures = List.copyOf(failures);
        budget = List.copyOf(budget);
        decisions = List.copyOf(decisions);
        income = List.copyOf(income);
        noRate = List.copyOf(noRate);
        beside = List.copyOf(beside);
    }

    /** What each failure cost, dearest first. */
    public List<IncidentCost> costs() {
        return failures.stream().map(Failure::cost).toList();
    }

    /**
     * A season beside others.
     *
     * @param season which one
     * @param now as the logbook has it today
     * @param reported as it was reported when it was closed, or null while it is open
     */
    public record Beside(
            SeasonSpan season, SeasonCost now, @Nullable Entry<Season> reported) {}
}
