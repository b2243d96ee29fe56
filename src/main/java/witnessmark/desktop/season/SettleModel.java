package witnessmark.desktop.season;

import java.util.ArrayList;
import java.util.List;
import witnessmark.cost.result.ToSettle;
import witnessmark.cost.result.Unsettled;
import witnessmark.domain.Facts;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.wording.Measures;
import witnessmark.wording.SettleWords;
import witnessmark.wording.Texts;

/** Words what money is not settled yet: what can be asked back, what is to be charged, what is kept for later. */
final class SettleModel {
    private final SettleWords words;
    private final Facts facts;

    SettleModel(Texts texts, Measures measures, Facts facts) {
        this.words = new SettleWords(texts, measures);
        this.facts = facts;
    }

    /** What has a last day first, the nearest on top. */
    List<SettleLine> lines(SeasonPage page) {
        return page.settle().rows().stream().map(this::line).toList();
    }

    /** What each thing to do comes to, and what is in no sum or in two. */
    List<String> notes(SeasonPage page) {
        Unsettled all = page.settle();
        List<String> notes = new ArrayList<>(List.of(words.sums(all)));
        notes.addAll(words.notes(all));
        notes.removeIf(String::isEmpty);
        return notes;
    }

    private SettleLine line(ToSettle row) {
        return new SettleLine(
                row.line().id().text(),
                words.what(row),
                words.cost(row),
                words.where(facts, row.line().fact()),
                words.until(row),
                row.until(),
                new Amount(
                        words.amount(row), row.home() == null ? 0 : row.home().minor()));
    }
}
