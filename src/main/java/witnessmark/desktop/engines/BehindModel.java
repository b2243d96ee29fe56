package witnessmark.desktop.engines;

import java.util.List;
import witnessmark.domain.Fact;
import witnessmark.domain.HowKnown;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.ToldRunning;
import witnessmark.logbook.engines.Behind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.wording.Amounts;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words a figure and every entry behind it. */
final class BehindModel {
    private final Texts texts;
    private final Measures measures;
    private final Amounts amounts;
    private final LifeWords lives;
    private final RecordWords records;

    BehindModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.amounts = new Amounts(texts, measures);
        this.lives = new LifeWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    BehindLines lines(Behind behind) {
        Counter counter = behind.figure().counter();
        List<BehindLine> rows =
                behind.lines().stream().map(line -> line(line, counter)).toList();
        long aside = rows.stream().filter(line -> !line.counts()).count();
        return new BehindLines(
                lives.life(behind.life()),
                of(behind),
                basis(behind),
                rows,
                shown -> sum(behind, rows, shown),
                aside == 0 ? "" : texts.get("engines.behind.notCounted", aside));
    }

    private String basis(Behind behind) {
        return behind.first() == null
                ? lives.basis(behind.life())
                : texts.get("engines.notYet", measures.date(behind.first().day()));
    }

    /** All of them add up to the figure itself; a part adds up by likely amounts, with the range where there is one. */
    private BehindLines.Sum sum(Behind behind, List<BehindLine> all, List<BehindLine> shown) {
        List<BehindLine> counted = shown.stream().filter(BehindLine::counts).toList();
        long ofAll = all.stream().filter(BehindLine::counts).count();
        if (shown.size() == all.size()) {
            return new BehindLines.Sum(texts.get("engines.behind.sum", ofAll), lives.life(behind.life()));
        }
        Counter counter = behind.figure().counter();
        long lowest = counted.stream().mapToLong(BehindLine::lowest).sum();
        long highest = counted.stream().mapToLong(BehindLine::highest).sum();
        long likely = counted.stream().mapToLong(BehindLine::amount).sum();
        return new BehindLines.Sum(
                texts.get("engines.behind.sum.shown", counted.size(), ofAll),
                amount(counter, likely, lowest, highest, counted.stream().anyMatch(BehindLine::about)));
    }

    private String amount(Counter counter, long likely, long lowest, long highest, boolean about) {
        if (lowest < highest) {
            return amounts.range(counter, lowest, highest);
        }
        String shown = amounts.amount(counter, likely);
        return about ? measures.about(shown) : shown;
    }

    /** A line in short, for saying what was done to it: "Race 2, Sun 5 Jul". */
    String named(BehindLine line) {
        return texts.get(
                "engines.comma",
                what(line.source().fact()),
                measures.shortDate(line.at().day()));
    }

    private String of(Behind behind) {
        String counter = records.counter(behind.figure().counter());
        Moment since = behind.figure().since();
        return since == null
                ? texts.get("engines.behind.whole", behind.figure().name(), counter)
                : texts.get(
                        "engines.behind.since",
                        behind.figure().name(),
                        counter,
                        measures.shortDate(since.day()),
                        Integer.toString(since.day().getYear()));
    }

    private BehindLine line(Behind.Line line, Counter counter) {
        String what = line.event() == null
                ? what(line.source().fact())
                : texts.get("engines.comma", what(line.source().fact()), line.event());
        String through = line.position() == null || line.place() == null
                ? ""
                : texts.get("engines.behind.through", line.position(), line.place());
        String how = line.counts() ? how(line) : why(line);
        String adds = line.counts() ? adds(line, counter) : texts.get("engines.behind.aside");
        return new BehindLine(
                line.source().id().text(),
                line.source(),
                line.at(),
                measures.date(line.at().day()),
                what,
                through,
                how,
                line.amount(),
                line.lowest(),
                line.highest(),
                about(line),
                adds,
                line.why(),
                measures.row(List.of(when(line), what, how, adds)));
    }

    private String when(Behind.Line line) {
        return line.source().fact() instanceof Run run ? measures.fullStart(run) : measures.fullMoment(line.at());
    }

    private String what(Fact fact) {
        if (fact instanceof Run run) {
            return run.name().isEmpty() ? records.label(records.word(run.kind())) : run.name();
        }
        if (fact instanceof PriorLife prior) {
            return prior.words().isEmpty()
                    ? texts.get("engines.behind.carriedIn")
                    : texts.get("engines.behind.carriedInFrom", prior.words());
        }
        if (fact instanceof ToldRunning told) {
            return texts.get("engines.behind.told", told.toldBy(), told.howHeKnows());
        }
        return records.one(fact.getClass());
    }

    private String how(Behind.Line line) {
        return line.how() == null ? texts.get("engines.behind.known") : records.word(line.how());
    }

    private String adds(Behind.Line line, Counter counter) {
        return amount(counter, line.amount(), line.lowest(), line.highest(), about(line));
    }

    private static boolean about(Behind.Line line) {
        return line.how() == HowKnown.TOLD || line.how() == HowKnown.ESTIMATED;
    }

    private String why(Behind.Line line) {
        return switch (line.why()) {
            case COUNTED -> "";
            case NOT_READ -> texts.get("engines.behind.why.notRead");
            case PERHAPS_SAME -> texts.get("engines.behind.why.perhapsSame", same(line));
            case BEFORE_PRIOR_LIFE -> texts.get("engines.behind.why.beforePrior");
            case STRUCK_OUT -> {
                String because = line.source().struckBecause();
                yield texts.get("engines.behind.why.struckOut", because == null ? "" : because);
            }
            case IN_CONFLICT -> texts.get("engines.behind.why.inConflict");
        };
    }

    private String same(Behind.Line line) {
        return line.same() != null && line.same().fact() instanceof Run run
                ? texts.get("engines.comma", what(run), measures.start(run))
                : texts.get("engines.behind.another");
    }
}
