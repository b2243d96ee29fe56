package witnessmark.desktop.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import witnessmark.cost.result.KindCost;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.wording.Measures;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words what went on each kind of part, failed or not. */
final class KindModel {
    private final Texts texts;
    private final MoneyWords money;

    KindModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.money = new MoneyWords(texts, measures);
    }

    List<KindLine> lines(SeasonPage page, CostRows rows) {
        return page.kinds().stream().map(kind -> line(kind, rows)).toList();
    }

    private KindLine line(KindCost kind, CostRows rows) {
        String name = new RecordWords(texts).label(money.kind(kind));
        Amount together = rows.amount(kind.together());
        return new KindLine(
                name,
                rows.amount(kind.sumDue()),
                rows.amount(kind.sumBought()),
                rows.amount(kind.sumRest()),
                together,
                new Behind(texts.get("season.kinds.behind", name), together, behind(kind, rows)));
    }

    private static List<CostRow> behind(KindCost kind, CostRows rows) {
        List<CostRow> all = new ArrayList<>();
        Stream.concat(kind.due().stream(), kind.bought().stream()).map(rows::of).forEach(all::add);
        kind.rest().forEach(rest -> all.addAll(rows.of(rest)));
        all.sort(Comparator.comparing(CostRow::at));
        return all;
    }
}
