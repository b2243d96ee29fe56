package witnessmark.desktop.season;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Decision;
import witnessmark.domain.DecisionOption;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.logbook.money.Decided;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.DecisionWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Puts what was decided, the other ways and what came of it into a row. */
final class DecisionModel {
    private final Measures measures;
    private final DecisionWords words;

    DecisionModel(Texts texts, Measures measures) {
        this.measures = measures;
        this.words = new DecisionWords(texts, measures);
    }

    DecisionLine line(Decided decided, Switches switches, Facts facts) {
        Decision fact = decided.decision().fact();
        List<DecisionOption> options =
                decided.options().stream().map(Entry::fact).toList();
        @Nullable
        Incident led = fact.ledTo() == null ? null : facts.of(Incident.class).get(fact.ledTo());
        @Nullable IncidentCost cost = decided.cost();
        return new DecisionLine(
                decided.decision().id().text(),
                measures.shortDate(fact.asked().day()),
                fact.asked().day(),
                fact.question(),
                words.taken(fact, options),
                String.join("; ", words.others(options)),
                words.cameOf(fact, led, cost, switches),
                next(decided.decision()),
                words.asked(fact));
    }

    private static @Nullable Prefilled next(Entry<Decision> decision) {
        Decision fact = decision.fact();
        if (fact.decided() == null) {
            return Prefilled.decide(decision.id());
        }
        return fact.verdict() == null && fact.outcome().isBlank() ? Prefilled.cameOf(decision.id()) : null;
    }
}
