package witnessmark.desktop.season;

import java.util.ArrayList;
import java.util.List;
import witnessmark.cost.result.Bar;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Facts;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.quantity.Money;
import witnessmark.wording.Measures;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words the season in a sentence, its own figures, and what the total of failures rests on. */
final class HeadModel {
    /** So many kinds of part are named in the sentence. */
    private static final int NAMED = 2;

    private final Texts texts;
    private final Measures measures;
    private final MoneyWords words;

    HeadModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new MoneyWords(texts, measures);
    }

    /** @param kinds failures by the part that failed, dearest first */
    String finding(SeasonPage page, List<Bar> kinds, Facts facts) {
        String spent = measures.money(page.cost().spent());
        if (page.total().isNone()) {
            return texts.get("season.finding.none", spent);
        }
        List<Bar> named =
                kinds.stream().filter(bar -> bar.subject() != null).limit(NAMED).toList();
        String total = measures.money(page.total());
        String head = labour(page).isNone()
                ? texts.get("season.finding", total, spent)
                : texts.get("season.finding.labour", total, measures.amount(labour(page)), spent);
        if (named.isEmpty()) {
            return head;
        }
        Money together = named.stream()
                .map(Bar::amount)
                .reduce(Money::plus)
                .orElse(Money.none(page.total().currency()));
        return texts.get(
                "season.finding.parts",
                head,
                new RecordWords(texts)
                        .label(measures.all(named.stream()
                                .map(bar -> words.subject(facts, bar))
                                .toList())),
                words.share(together, page.total()));
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

    List<String> notes(SeasonPage page) {
        List<String> notes = new ArrayList<>();
        notes.add(texts.get("season.total.span", measures.money(page.total()), words.span(page.span())));
        notes.add(words.restsOn(page.switches()));
        SeasonCost cost = page.cost();
        if (cost.running().millis() > 0 && !page.total().isNone()) {
            String each = words.perHour(page.total(), cost.running());
            notes.add(
                    cost.provision() == null
                            ? texts.get("season.perHour", each, measures.hours(cost.running()))
                            : texts.get(
                                    "season.perHour.provision",
                                    each,
                                    measures.hours(cost.running()),
                                    measures.money(cost.provision())));
        }
        if (!cost.noRate().isEmpty()) {
            notes.add(texts.get(
                    "money.no_rate",
                    measures.row(cost.noRate().stream().map(measures::money).toList())));
        }
        return notes;
    }

    /** Where all money spent went. Parts of a figure stand under it. */
    List<MoneyLine> money(SeasonPage page) {
        SeasonCost cost = page.cost();
        List<MoneyLine> lines = new ArrayList<>();
        lines.add(line("season.money.planned", cost.budget(), false));
        lines.add(line("season.money.spent", cost.spent(), false));
        lines.add(line("season.money.failures", cost.cash().plus(cost.missed()), true));
        lines.add(line("season.money.running", cost.runningCosts().plus(cost.spoiled()), true));
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
