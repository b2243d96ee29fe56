package witnessmark.desktop.engines;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Trial;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.engines.Figure;
import witnessmark.logbook.engines.FittedTime;
import witnessmark.logbook.engines.PartRow;
import witnessmark.logbook.engines.PartSheet;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.WhereWords;

/** Words the parts that are in no engine, and one part in full. The same answer always gives the same lines. */
final class PartModel {
    private final Texts texts;
    private final Measures measures;
    private final EngineWords words;
    private final WhereWords whereabouts;

    PartModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new EngineWords(texts, measures);
        this.whereabouts = new WhereWords(texts, measures);
    }

    PartLine line(PartRow row) {
        return new PartLine(
                row.part().id().text(),
                row.part().fact().mark(),
                row.first() == null ? brief(row.last()) : words.firstEntry(row.first()),
                words.shown(row.running(), words.figure(row.part(), null)),
                null);
    }

    private String firstEntry(Moment first) {
        return texts.get("engines.firstEntry", date(first));
    }

    private String brief(@Nullable FittedTime last) {
        if (last == null) {
            return texts.get("engines.head.never");
        }
        Moment to = last.stay().to();
        if (to != null) {
            return texts.get("engines.head.off", place(last), words.day(to));
        }
        return last.engine() == null ? texts.get("engines.part.in", place(last)) : place(last);
    }

    PartLines lines(PartSheet sheet) {
        PartRow row = sheet.row();
        return new PartLines(
                row.part().id().text(),
                row.part().fact().mark(),
                row.first() == null ? there(sheet.where(), row.last()) : firstEntry(row.first()),
                what(sheet),
                EngineWords.state(sheet.worst()),
                stands(sheet),
                sheet.times().stream().map(this::line).toList(),
                sheet.lives().stream().map(life -> line(row, life)).toList());
    }

    /** A trial of its design, and what came of it so far. */
    PartView.TrialWay trial(Entry<Trial> trial) {
        Trial fact = trial.fact();
        return new PartView.TrialWay(
                trial.id().text(),
                fact.verdict() == null
                        ? texts.get("engines.part.trial", fact.name(), measures.date(fact.from()))
                        : texts.get(
                                "engines.part.trial.judged",
                                fact.name(),
                                words.records().word(fact.verdict())));
    }

    private String stands(PartSheet sheet) {
        Moment first = sheet.row().first();
        MarkOn worst = sheet.worst();
        String state = texts.get(EngineWords.state(worst).key());
        return texts.get(
                "engines.state",
                state,
                first != null
                        ? words.notYet(first)
                        : worst == null ? texts.get("engines.build.noLimitRecorded") : words.left(worst));
    }

    /** "on the shelf since 14 Jun 2026, off K05", "in K03 since 28 Jan 2026, as valve springs", "with machinist G1 since …". */
    private String there(Where where, @Nullable FittedTime last) {
        if (last != null && last.lasts()) {
            return texts.get("engines.part.there", place(last), date(last.stay().from()), last.position());
        }
        Moment since = where.since();
        if (where.state() == Where.State.SPARE && last == null) {
            return texts.get("engines.part.never");
        }
        String there = whereabouts.where(where, "");
        String from = since == null ? there : texts.get("engines.part.since", there, date(since));
        return last == null || where.state() != Where.State.SPARE
                ? from
                : texts.get("engines.part.off", from, place(last));
    }

    /** Why it came off and how it looked; nothing while it is there, and where nothing is written down. */
    private String why(FittedTime fitted) {
        if (fitted.lasts()) {
            return "";
        }
        return measures.row(Stream.of(fitted.fitment().why(), fitted.fitment().condition())
                .filter(said -> !said.isEmpty())
                .toList());
    }

    /** What it is, and why it is where it is: why it was put aside, what was promised. */
    private String what(PartSheet sheet) {
        List<String> said = new ArrayList<>();
        said.add(words.records().label(words.records().word(sheet.row().design().kind())));
        said.add(sheet.row().design().name());
        String batch = sheet.row().part().fact().batch();
        if (!batch.isEmpty()) {
            said.add(texts.get("engines.part.batch", batch));
        }
        List<String> members = sheet.members();
        if (!members.isEmpty()) {
            said.add(texts.get(
                    "engines.build.members", members.size(), members.get(0), members.get(members.size() - 1)));
        }
        said.addAll(whereabouts.why(sheet.where()));
        if (sheet.where().borrowed()) {
            said.add(whereabouts.goesBack(""));
        }
        return measures.row(said);
    }

    private TimeLine line(PartSheet.Time time) {
        FittedTime fitted = time.fitted();
        Moment to = fitted.stay().to();
        return new TimeLine(
                fitted.stay().fitment().id().text(),
                fitted.engine() == null ? null : fitted.engine().text(),
                place(fitted),
                fitted.position(),
                date(fitted.stay().from()),
                fitted.stay().from(),
                to == null ? texts.get("engines.part.still") : date(to),
                to,
                words.lives().life(time.ran()),
                time.ran().total(),
                why(fitted));
    }

    private CounterLine line(PartRow row, Life whole) {
        Counter counter = whole.counter();
        return new CounterLine(
                counter.code(),
                words.records().label(words.records().counter(counter)),
                words.shown(whole, new Figure.OfPart(row.part(), counter, null)),
                null,
                words.basis(whole, row.first()));
    }

    private String place(FittedTime fitted) {
        return fitted.engine() == null ? texts.get("engines.where.car", fitted.place()) : fitted.place();
    }

    private String date(Moment moment) {
        return measures.date(moment.day());
    }
}
