package witnessmark.desktop.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Decision;
import witnessmark.domain.DecisionOption;
import witnessmark.domain.Entry;
import witnessmark.logbook.money.Decided;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.RunningTime;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words what was decided, the other ways with what they would have cost, and what came of it. */
final class DecisionModel {
    private static final long MINUTE = 60_000;

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    DecisionModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    DecisionLine line(Decided decided, Switches switches, CostRows rows) {
        Decision fact = decided.decision().fact();
        return new DecisionLine(
                decided.decision().id().text(),
                measures.shortDate(fact.asked().day()),
                fact.asked().day(),
                fact.question(),
                taken(decided),
                others(decided),
                cameOf(decided, switches, rows),
                next(decided.decision()),
                fact.adviser().isBlank() ? texts.get("season.decision.nobody") : fact.adviser());
    }

    private static @Nullable Prefilled next(Entry<Decision> decision) {
        Decision fact = decision.fact();
        if (fact.decided() == null) {
            return Prefilled.decide(decision.id());
        }
        return fact.verdict() == null && fact.outcome().isBlank() ? Prefilled.cameOf(decision.id()) : null;
    }

    private String taken(Decided decided) {
        Decision fact = decided.decision().fact();
        if (fact.decided() == null) {
            return texts.get("season.decision.open");
        }
        String option = option(decided).map(this::priced).orElseGet(() -> texts.get("season.decision.noOption"));
        return fact.decidedBy().isBlank() ? option : texts.get("season.decision.by", option, fact.decidedBy());
    }

    private static Optional<DecisionOption> option(Decided decided) {
        return decided.options().stream()
                .map(Entry::fact)
                .filter(DecisionOption::taken)
                .findFirst();
    }

    private String others(Decided decided) {
        List<String> others = decided.options().stream()
                .map(Entry::fact)
                .filter(option -> !option.taken())
                .map(this::priced)
                .toList();
        return others.isEmpty() ? "" : String.join("; ", others);
    }

    /** {@code renew 272.00 EUR and 6 h}. */
    private String priced(DecisionOption option) {
        List<String> price = new ArrayList<>();
        if (option.money() != null && !option.money().isNone()) {
            price.add(measures.money(option.money()));
        }
        Integer minutes = option.minutes();
        if (minutes != null && minutes > 0) {
            price.add(measures.roughHours(new RunningTime(minutes * MINUTE)));
        }
        return price.isEmpty()
                ? option.name()
                : texts.get("season.decision.priced", option.name(), measures.all(price));
    }

    private String cameOf(Decided decided, Switches switches, CostRows rows) {
        Decision fact = decided.decision().fact();
        List<String> said = new ArrayList<>();
        if (fact.verdict() != null) {
            said.add(records.word(fact.verdict()));
        }
        if (decided.cost() != null && fact.ledTo() != null) {
            said.add(texts.get(
                    "season.decision.cost",
                    rows.mark(fact.ledTo()),
                    measures.money(decided.cost().total(switches))));
        }
        if (!fact.outcome().isBlank()) {
            said.add(fact.outcome());
        }
        if (said.isEmpty()) {
            return fact.decided() == null ? "" : texts.get("season.decision.notYet");
        }
        String all = said.get(0);
        for (String each : said.subList(1, said.size())) {
            all = texts.get("season.colon", all, each);
        }
        return all;
    }
}
