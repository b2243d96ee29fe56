package witnessmark.desktop.engines;

import java.time.YearMonth;
import java.util.List;
import witnessmark.desktop.engines.CurvesModel.Drawn;
import witnessmark.desktop.engines.CurvesModel.Which;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.Work;
import witnessmark.logbook.engines.Curve;
import witnessmark.logbook.engines.EngineRow;
import witnessmark.logbook.engines.Engines;
import witnessmark.quantity.Moment;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Every sentence on the chart of running time since rebuild and skim. */
final class CurveWords {
    private final Texts texts;
    private final Measures measures;
    private final LifeWords lives;
    private final RecordWords records;

    CurveWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.lives = new LifeWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    /** What the chart shows, as a sentence. */
    String finding(Which which, List<Drawn> drawn) {
        if (which == Which.THIS) {
            return drawn.size() == 1
                    ? texts.get("engines.curves.finding.one", one(drawn.get(0)))
                    : texts.get("engines.curves.finding.two", one(drawn.get(0)), one(drawn.get(1)));
        }
        Drawn most = drawn.get(0);
        for (Drawn line : drawn) {
            most = line.curve().last().total() > most.curve().last().total() ? line : most;
        }
        return texts.get(
                which == Which.ENGINES ? "engines.curves.finding.engines" : "engines.curves.finding.heads",
                most.curve().name(),
                lives.life(most.curve().last()));
    }

    private String one(Drawn line) {
        boolean set = line.curve().steps().stream().anyMatch(step -> back(step.source()));
        String key = line.skim()
                ? set ? "engines.curves.sinceSkim" : "engines.curves.noSkim"
                : set ? "engines.curves.sinceRebuild" : "engines.curves.noRebuild";
        return texts.get(key, line.curve().name(), lives.life(line.curve().last()));
    }

    /** Source, days and count. */
    String note(Engines engines, List<Drawn> drawn) {
        long entries = drawn.stream()
                .flatMap(line -> line.curve().steps().stream())
                .filter(step -> step.source().fact() instanceof Run)
                .map(step -> step.source().id())
                .distinct()
                .count();
        return texts.get("engines.curves.note", entries, measures.date(engines.day()));
    }

    /** The chart for those who do not see it. */
    String description(EngineRow row, List<Drawn> drawn) {
        List<String> ends = drawn.stream().map(this::one).toList();
        Drawn first = drawn.get(0);
        long backs = first.curve().steps().stream()
                .filter(step -> back(step.source()))
                .count();
        Curve.Step begin = first.curve().steps().get(0);
        return texts.get(
                "engines.curves.description",
                drawn.size(),
                measures.all(ends),
                row.engine().fact().number(),
                measures.date(begin.at().day()),
                backs);
    }

    /** The name at the end of a line. */
    String name(Curve curve, boolean skim) {
        return texts.get(skim ? "engines.curves.name.skim" : "engines.curves.name.rebuild", curve.name());
    }

    /** The label of a setting back: "rebuilt 28 Jan". */
    String setBack(Curve curve, Curve.Step step) {
        String day = measures.shortDate(step.at().day());
        return step.source().fact() instanceof Build
                ? texts.get("engines.curves.rebuilt", day)
                : texts.get("engines.curves.skimmed", curve.name(), day);
    }

    /** The readout of a step. */
    String step(Curve curve, Curve.Step step) {
        return texts.get(
                "engines.curves.step",
                curve.name(),
                source(step.source()),
                measures.fullMoment(step.at()),
                since(step));
    }

    String today(Curve curve, Moment end) {
        return texts.get("engines.curves.today", curve.name(), measures.date(end.day()), lives.life(curve.last()));
    }

    /** The figure of a step, with the word that it is not exact where it is not. */
    String since(Curve.Step step) {
        return lives.life(step.since());
    }

    String source(Entry<?> source) {
        Fact fact = source.fact();
        if (fact instanceof Run run) {
            return run.name().isEmpty() ? records.word(run.kind()) : run.name();
        }
        if (fact instanceof Build build) {
            return texts.get("engines.curves.build", build.number());
        }
        if (fact instanceof Work work) {
            return records.word(work.kind());
        }
        return fact instanceof PriorLife ? texts.get("engines.curves.carriedIn") : records.one(fact.getClass());
    }

    String month(YearMonth month) {
        String day = measures.shortDate(month.atDay(1));
        return month.getMonthValue() == 1 ? Integer.toString(month.getYear()) : day;
    }

    private static boolean back(Entry<?> source) {
        return source.fact() instanceof Build || source.fact() instanceof Work;
    }
}
