package witnessmark.desktop.engines;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import witnessmark.chart.Dot;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.View;
import witnessmark.logbook.dyno.SeeDyno;
import witnessmark.logbook.engines.Curve;
import witnessmark.logbook.engines.EngineSheet;
import witnessmark.logbook.engines.Engines;
import witnessmark.logbook.engines.SeeEngine;
import witnessmark.study.result.DynoAnswer;

/**
 * All that is read of the engine in hand.
 *
 * @param sheet the engine itself; empty when it is not there any more
 * @param dyno its dyno sheets, the newest first
 */
record EngineInHand(Optional<EngineSheet> sheet, List<DynoAnswer> dyno) {
    static EngineInHand of(View view, Id<Engine> engine) {
        return new EngineInHand(SeeEngine.of(view, engine), SeeDyno.of(view, engine));
    }

    /** The entry a point of the lines since rebuild and skim stands for. */
    static Optional<Entry<? extends Fact>> behind(Engines all, Dot point) {
        return Stream.of(all.sinceRebuild(), all.sinceSkim())
                .flatMap(List::stream)
                .flatMap(curve -> curve.steps().stream())
                .<Entry<? extends Fact>>map(Curve.Step::source)
                .filter(source -> source.id().text().equals(point.record()))
                .findFirst();
    }

    /** The engine a dyno sheet is of, by the text forms of their identities. */
    static Optional<String> ofDynoSheet(View view, String sheet) {
        return view.facts()
                .of(DynoSheet.class)
                .find(Id.parse(sheet))
                .flatMap(entry -> view.facts().of(Run.class).find(entry.fact().run()))
                .map(run -> run.fact().engine().text());
    }
}
