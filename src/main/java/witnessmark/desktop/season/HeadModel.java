package witnessmark.desktop.season;

import java.util.ArrayList;
import java.util.List;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Facts;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.quantity.Money;
import witnessmark.wording.Measures;
import witnessmark.wording.SeasonWords;
import witnessmark.wording.Texts;

/** Words the season in a sentence, its own figures, and what the total of failures rests on. */
final class HeadModel {
    private final Texts texts;
    private final Measures measures;
    private final SeasonWords words;

    HeadModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new SeasonWords(texts, measures);
    }

    /** @param kinds failures by the part that failed, dearest first */
    String finding(SeasonPage page, List<Bar> kinds, Facts facts) {
        return words.finding(page.total(), labour(page), page.cost().spent(), kinds, facts);
    }

    private static Money labour(SeasonPage page) {
        Switches switches = page.switches();
        return switches.labour()
                ? sum(page, Place.LABOUR)
                : Money.none(page.total().currency());
    }

    private static Money sum(SeasonPage page, Place place) {
        return page.failures().stream()
                .map(failure -> failure.cost().column(place, page.switches()))
                .reduce(Money.none(page.total().currency()), Money::plus);
    }

    List<String> notes(SeasonPage page, Facts facts) {
        List<String> notes = new ArrayList<>(words.notes(page.total(), page.span(), page.switches(), page.cost()));
        words.unwritten(facts, page.failures().stream().map(Failure::cost).toList(), page.switches())
                .ifPresent(notes::add);
        return notes;
    }

    /** Where all money spent went. Parts of a figure stand under it. */
    List<MoneyLine> money(SeasonPage page) {
        SeasonCost cost = page.cost();
        List<MoneyLine> lines = new ArrayList<>();
        lines.add(line("season.money.planned", cost.budget(), false));
        lines.add(line("season.money.spent", cost.spent(), false));
        lines.add(line("season.money.failures", cost.cash(), true));
        lines.add(line("season.money.missed", cost.missed(), true));
        lines.add(line("season.money.spoiled", cost.spoiled(), true));
        lines.add(line("season.money.running", cost.runningCosts(), true));
        lines.add(line("season.money.kept", cost.kept(), true));
        if (!cost.broughtIn().isNone()) {
            lines.add(line("season.money.brought", cost.broughtIn().negated(), true));
        }
        lines.add(line("season.money.committed", cost.committed(), false));
        lines.add(line("season.money.income", cost.income(), false));
        return lines;
    }

    private MoneyLine line(String key, Money money, boolean within) {
        return new MoneyLine(texts.get(key), measures.amount(money), within);
    }
}
