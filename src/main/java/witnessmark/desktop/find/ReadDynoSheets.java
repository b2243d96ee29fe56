package witnessmark.desktop.find;

import java.util.Comparator;
import java.util.List;
import witnessmark.desktop.engines.EnginePage;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Makes dyno sheets findable: each opens the engine it is of, with its curve. */
final class ReadDynoSheets {
    private final Texts texts;
    private final Measures measures;

    ReadDynoSheets(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    /** Every one in force whose run is there, the latest first. */
    List<Indexed> all(Facts facts) {
        return facts.of(DynoSheet.class)
                .inForce()
                .filter(sheet -> facts.of(Run.class).find(sheet.fact().run()).isPresent())
                .sorted(Comparator.comparing((Entry<DynoSheet> sheet) ->
                                facts.of(Run.class).get(sheet.fact().run()).start())
                        .reversed())
                .map(sheet -> one(facts, sheet))
                .toList();
    }

    private Indexed one(Facts facts, Entry<DynoSheet> sheet) {
        Run run = facts.of(Run.class).get(sheet.fact().run());
        String title = texts.get(
                "beforewego.find.dyno", facts.of(Engine.class).get(run.engine()).number());
        String note = measures.row(
                List.of(measures.date(run.start().day()), sheet.fact().dyno()));
        return new Indexed(
                title,
                note,
                "",
                ReadRecords.words(
                        title,
                        note,
                        run.start().day().toString(),
                        sheet.fact().verdict(),
                        sheet.fact().note(),
                        sheet.fact().map()),
                PlaceId.ENGINES,
                EnginePage.ofDynoSheet(sheet.id().text()));
    }
}
