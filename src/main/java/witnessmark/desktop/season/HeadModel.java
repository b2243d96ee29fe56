package witnessmark.desktop.season;

import java.util.ArrayList;
import java.util.List;
import witnessmark.cost.result.Bar;
import witnessmark.domain.Facts;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.wording.Measures;
import witnessmark.wording.SeasonWords;
import witnessmark.wording.Texts;

/** Words the season in a sentence, its own figures, and what the total of failures rests on. */
final class HeadModel {
    private final Measures measures;
    private final SeasonWords words;

    HeadModel(Texts texts, Measures measures) {
        this.measures = measures;
        this.words = new SeasonWords(texts, measures);
    }

    /** @param kinds failures by the part that failed, dearest first */
    String finding(SeasonPage page, List<Bar> kinds, Facts facts) {
        return words.finding(page.costs(), page.switches(), page.cost(), kinds, facts);
    }

    List<String> notes(SeasonPage page, Facts facts) {
        List<String> notes = new ArrayList<>(words.notes(page.costs(), page.span(), page.switches(), page.cost()));
        words.leftOut(page.costs(), page.switches()).ifPresent(notes::add);
        words.unwritten(facts, page.costs(), page.switches()).ifPresent(notes::add);
        return notes;
    }

    /** Where all money spent went. */
    List<MoneyLine> money(SeasonPage page) {
        return words.figures(page.cost()).stream()
                .map(figure -> new MoneyLine(figure.label(), measures.amount(figure.amount()), figure.within()))
                .toList();
    }
}
