package witnessmark.desktop.season;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import witnessmark.chart.SeasonLine;
import witnessmark.logbook.money.SeasonAsked;

/**
 * A season in words.
 *
 * @param asked what was asked
 * @param season which season it is
 * @param seasons those there are
 * @param heading beside the title
 * @param currency of all amounts without one of their own
 * @param empty whether nothing of money or failures is written down
 * @param finding the season in a sentence
 * @param notes what the total rests on
 * @param money the season's own figures
 * @param failures dearest first
 * @param bars what it went on
 * @param kinds what went on each kind of part, failed or not; none where no kind is named
 * @param perHour whether any bar has running
 * @param line the season along a line for each car
 * @param lineWords the same in two sentences
 * @param budget by event and car
 * @param decisions in the order they were put
 * @param settle what is not settled yet
 * @param settleNotes what that comes to
 * @param income what came in, as rows of cost
 * @param beside the seasons
 * @param totals words what stands under columns
 */
record SeasonLines(
        SeasonAsked asked,
        String season,
        List<String> seasons,
        String heading,
        String currency,
        boolean empty,
        String finding,
        List<String> notes,
        List<MoneyLine> money,
        List<FailureLine> failures,
        List<BarLine> bars,
        List<KindLine> kinds,
        boolean perHour,
        SeasonLine line,
        String lineWords,
        List<BudgetLine> budget,
        List<DecisionLine> decisions,
        List<SettleLine> settle,
        List<String> settleNotes,
        List<CostRow> income,
        List<BesideLine> beside,
        Totals totals) {
    /** Before anything was read. */
    static final SeasonLines NONE = new SeasonLines(
            SeasonAsked.USUAL,
            "",
            List.of(),
            "",
            "",
            true,
            "",
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            false,
            new SeasonLine(0, 0, List.of(), List.of()),
            "",
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            String::valueOf);

    SeasonLines {
        seasons = List.copyOf(seasons);
        notes = List.copyOf(notes);
        money = List.copyOf(money);
        failures = List.copyOf(failures);
        bars = List.copyOf(bars);
        kinds = List.copyOf(kinds);
        budget = List.copyOf(budget);
        decisions = List.copyOf(decisions);
        settle = List.copyOf(settle);
        settleNotes = List.copyOf(settleNotes);
        income = List.copyOf(income);
        beside = List.copyOf(beside);
    }

    /** The figure of that name, as it is now: a failure, a bar, a kind of part, or a row of the budget. */
    Optional<Behind> behind(String name) {
        return Stream.of(
                        failures.stream().map(FailureLine::behind),
                        bars.stream().map(BarLine::behind),
                        kinds.stream().map(KindLine::behind),
                        budget.stream().map(BudgetLine::behind))
                .flatMap(each -> each)
                .filter(each -> each.name().equals(name))
                .findFirst();
    }

    /** Words totals under a column. */
    interface Totals {
        /** The sum of minor units as the amount it is. */
        String of(long minor);
    }
}
