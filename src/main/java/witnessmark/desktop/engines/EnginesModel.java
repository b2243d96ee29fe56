package witnessmark.desktop.engines;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Life;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Entry;
import witnessmark.domain.Limit;
import witnessmark.domain.Part;
import witnessmark.ledger.result.LimitUse;
import witnessmark.logbook.engines.EngineRow;
import witnessmark.logbook.engines.EngineSheet;
import witnessmark.logbook.engines.Engines;
import witnessmark.logbook.engines.Figure;
import witnessmark.logbook.engines.FittedPart;
import witnessmark.logbook.engines.HeadRow;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words the engines and heads, and one engine in full. The same answer always gives the same lines. */
final class EnginesModel {
    private final Texts texts;
    private final Measures measures;
    private final EngineWords words;
    private final PartModel parts;

    EnginesModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new EngineWords(texts, measures);
        this.parts = new PartModel(texts, measures);
    }

    EnginesLines lines(Engines engines) {
        return new EnginesLines(
                measures.date(engines.day()),
                engines.engines().stream().map(this::line).toList(),
                Stream.concat(
                                engines.heads().stream().map(this::line),
                                engines.offEngines().stream().map(parts::line))
                        .toList());
    }

    private EngineLine line(EngineRow row) {
        return new EngineLine(
                row.engine().id().text(),
                row.engine().fact().number(),
                words.where(row),
                words.shown(row.running(), words.figure(row.engine(), Counter.RUNNING, null)),
                words.sinceRebuild(row, row.sinceRebuild()),
                words.state(row),
                words.records().label(words.nearest(row)));
    }

    private PartLine line(HeadRow row) {
        return new PartLine(
                row.head().id().text(),
                row.head().fact().mark(),
                where(row),
                words.shown(row.running(), words.figure(row.head(), null)),
                words.sinceSkim(row));
    }

    private String where(HeadRow row) {
        if (row.first() != null) {
            return words.firstEntry(row.first());
        }
        if (row.engine() == null || row.fitment() == null) {
            return texts.get("engines.head.never");
        }
        String number = row.engine().fact().number();
        Moment to = row.fitment().fact().to();
        return !row.off() || to == null
                ? texts.get("engines.head.on", number)
                : texts.get("engines.head.off", number, words.day(to));
    }

    SheetLines lines(EngineSheet sheet) {
        EngineRow row = sheet.row();
        List<String> empty = sheet.build().stream()
                .filter(FittedPart::empty)
                .map(fitted -> fitted.position().fact().name())
                .toList();
        String state = texts.get(words.state(row).key());
        return new SheetLines(
                row.engine().id().text(),
                row.engine().fact().number(),
                words.whereSince(row),
                rebuildShown(row),
                row.head() == null ? null : skimShown(row.head()),
                design(row),
                words.state(row),
                texts.get("engines.state", state, words.worst(row)),
                asks(row, empty),
                sheet.build().stream().map(this::line).toList(),
                counters(sheet));
    }

    private String asks(EngineRow row, List<String> empty) {
        List<String> asks = new ArrayList<>();
        if (!empty.isEmpty()) {
            asks.add(texts.get("engines.incomplete", measures.all(empty)));
        }
        asks.addAll(words.unproven(row));
        return String.join("\n", asks);
    }

    private Shown rebuildShown(EngineRow row) {
        Moment closed = EngineWords.closed(row.rebuild());
        String since = words.lives().life(row.sinceRebuild());
        return words.sinceRebuild(row, row.sinceRebuild())
                .as(
                        closed == null
                                ? texts.get("engines.sinceNoRebuild", since)
                                : texts.get("engines.sinceRebuild", since, words.day(closed)));
    }

    private Shown skimShown(HeadRow head) {
        Moment skimmed = EngineWords.skimmed(head.skim());
        String mark = head.head().fact().mark();
        String since = words.lives().life(head.sinceSkim());
        return words.sinceSkim(head)
                .as(
                        skimmed == null
                                ? texts.get("engines.sinceNoSkim", mark, since)
                                : texts.get("engines.sinceSkim", mark, since, words.day(skimmed)));
    }

    private String design(EngineRow row) {
        String owner = row.engine().fact().owner();
        String name = row.design().name();
        return owner == null ? name : texts.get("engines.design.owner", name, owner);
    }

    private BuildLine line(FittedPart fitted) {
        String position = words.records().label(fitted.position().fact().name());
        String id = fitted.position().id().text();
        int ordinal = fitted.position().fact().ordinal();
        if (fitted.part() == null || fitted.fitment() == null || fitted.running() == null || fitted.design() == null) {
            return new BuildLine(
                    id,
                    null,
                    ordinal,
                    position,
                    texts.get("engines.build.empty"),
                    "",
                    "",
                    null,
                    null,
                    "",
                    Life.notKnown(),
                    SeamState.APART,
                    texts.get("engines.build.nothing", fitted.position().fact().name()),
                    "");
        }
        Moment from = fitted.fitment().fact().from();
        MarkOn worst = fitted.worst();
        MarkOn nearest = fitted.nearest();
        LimitUse use = nearest == null ? null : nearest.use();
        String limit = nearest == null
                ? texts.get("engines.build.noLimit")
                : words.marks().said(nearest).limit();
        return new BuildLine(
                id,
                fitted.part().id().text(),
                ordinal,
                position,
                fitted.part().fact().mark(),
                fitted.members().isEmpty()
                        ? fitted.design().name()
                        : texts.get("engines.comma", fitted.design().name(), members(fitted.members())),
                words.day(from),
                from,
                ran(fitted.part(), fitted.running(), use),
                limit,
                nearest == null ? Life.notKnown() : words.marks().strip(nearest),
                EngineWords.state(worst),
                worst == null ? texts.get("engines.build.noLimitRecorded") : words.left(worst),
                use == null ? "" : tip(use, limit));
    }

    private Shown ran(Entry<Part> part, witnessmark.ledger.result.Life running, @Nullable LimitUse use) {
        Shown whole = words.shown(running, words.figure(part, null));
        if (use == null) {
            return whole;
        }
        // behind an age or a number of uses stand no runs: its running time is opened
        Moment since = use.since();
        Shown used = use.used().counter().isFedByRuns()
                ? words.shown(use.used(), new Figure.OfPart(part, use.used().counter(), since))
                : whole.as(words.lives().life(use.used()));
        return since == null ? used : used.as(texts.get("engines.build.ranSince", used.text(), words.day(since)));
    }

    private String members(List<String> members) {
        return members.size() > 4
                ? texts.get("engines.build.members", members.size(), members.get(0), members.get(members.size() - 1))
                : measures.row(members);
    }

    private String tip(LimitUse use, String amount) {
        Limit limit = use.limit().fact();
        Moment since = use.since();
        String named = texts.get(
                "engines.build.due",
                limit.name(),
                words.records().word(limit.action()),
                amount,
                words.records().word(limit.rank()));
        if (!limit.source().isBlank()) {
            named = texts.get("engines.build.written", named, limit.source());
        }
        return since == null ? named : texts.get("engines.build.lastDone", named, words.day(since));
    }

    private List<CounterLine> counters(EngineSheet sheet) {
        List<CounterLine> lines = new ArrayList<>();
        EngineRow row = sheet.row();
        for (int i = 0; i < sheet.lives().size(); i++) {
            witnessmark.ledger.result.Life whole = sheet.lives().get(i);
            Counter counter = whole.counter();
            lines.add(new CounterLine(
                    counter.code(),
                    words.records().label(words.records().counter(counter)),
                    words.shown(whole, words.figure(row.engine(), counter, null)),
                    words.sinceRebuild(row, sheet.sinceRebuild().get(i)),
                    words.basis(whole, row.first())));
        }
        return lines;
    }
}
