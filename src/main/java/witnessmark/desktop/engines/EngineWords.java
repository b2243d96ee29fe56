package witnessmark.desktop.engines;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.beforewego.MarkWords;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.Work;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.ledger.result.RunsOut;
import witnessmark.logbook.engines.EngineRow;
import witnessmark.logbook.engines.Figure;
import witnessmark.logbook.engines.HeadRow;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.wording.JointWords;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;
import witnessmark.wording.UnprovenWords;

/** Words that list and page share: figures, where an engine is, what stands worst. */
final class EngineWords {
    private final Texts texts;
    private final Measures measures;
    private final LifeWords lives;
    private final RecordWords records;
    private final UnprovenWords unproven;
    private final JointWords joints;
    private final MarkWords marks;

    EngineWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.lives = new LifeWords(texts, measures);
        this.records = new RecordWords(texts);
        this.unproven = new UnprovenWords(texts, measures);
        this.joints = new JointWords(texts, measures);
        this.marks = new MarkWords(texts, measures);
    }

    Shown shown(Life life, Figure figure) {
        return new Shown(lives.life(life), life.total(), figure);
    }

    Figure figure(Entry<Engine> engine, Counter counter, @Nullable Moment since) {
        return new Figure.OfEngine(engine, counter, since);
    }

    Figure figure(Entry<Part> part, @Nullable Moment since) {
        return new Figure.OfPart(part, Counter.RUNNING, since);
    }

    /** When a rebuild was closed, or null when none is written down. */
    static @Nullable Moment closed(@Nullable Entry<Build> rebuild) {
        return rebuild == null ? null : rebuild.fact().closed();
    }

    /** When a head was skimmed, or null when no skim is written down. */
    static @Nullable Moment skimmed(@Nullable Entry<Work> skim) {
        return skim == null ? null : skim.fact().at();
    }

    /** Since its rebuild; where none is written down, that, and its whole life stands behind it. */
    Shown sinceRebuild(EngineRow row, Life since) {
        Moment closed = closed(row.rebuild());
        Shown shown = shown(since, figure(row.engine(), since.counter(), closed));
        return closed != null || row.first() != null ? shown : shown.as(texts.get("engines.noneWritten"));
    }

    /** Since its skim; where none is written down, that, and its whole life stands behind it. */
    Shown sinceSkim(HeadRow head) {
        Moment skimmed = skimmed(head.skim());
        Shown shown = shown(head.sinceSkim(), figure(head.head(), skimmed));
        return skimmed != null || head.first() != null ? shown : shown.as(texts.get("engines.noneWritten"));
    }

    /** What a life is made of; before the first entry, that nothing is written down. */
    String basis(Life life, @Nullable Moment first) {
        return first == null ? lives.basis(life) : notYet(first);
    }

    /** The same in short: "first entry 28 Jan". */
    String firstEntry(Moment first) {
        return texts.get("engines.firstEntry", day(first));
    }

    /** That nothing is written down before the first entry, on this day. */
    String notYet(Moment first) {
        return texts.get("engines.notYet", measures.date(first.day()));
    }

    /** "car 41", "open since 16 Jun", "in no car". */
    String where(EngineRow row) {
        if (row.first() != null) {
            return texts.get("engines.where.notKnown");
        }
        if (row.open() != null) {
            return texts.get("engines.where.open", day(row.open().fact().opened()));
        }
        return row.car() == null ? texts.get("engines.where.nowhere") : texts.get("engines.where.car", row.car());
    }

    /** "in car 41 since 9 Jun". */
    String whereSince(EngineRow row) {
        if (row.first() != null) {
            return texts.get("engines.firstEntry", measures.date(row.first().day()));
        }
        if (row.inCar() != null && row.car() != null) {
            return texts.get(
                    row.open() == null ? "engines.since.car" : "engines.since.carOpen",
                    row.car(),
                    day(row.inCar().fact().from()));
        }
        if (row.open() != null) {
            return texts.get(
                    "engines.since.open",
                    day(row.open().fact().opened()),
                    row.open().fact().number());
        }
        return texts.get("engines.where.nowhere");
    }

    /** The worse of how its limits stand and of what it lacks; open it is apart, unless something is over. */
    SeamState state(EngineRow row) {
        if (row.first() != null) {
            return SeamState.NOT_KNOWN;
        }
        SeamState worst = state(row.worst());
        if (row.open() != null) {
            return asksMore(row, SeamState.RUN_ON) ? worst : SeamState.APART;
        }
        return row.incomplete() && !asksMore(row, SeamState.DUE) ? SeamState.NOT_KNOWN : worst;
    }

    /** Each unproven build in a sentence; empty when there is none. */
    List<String> unproven(EngineRow row) {
        return row.unproven().stream()
                .map(build -> texts.get(
                        "engines.unproven", unproven.name(build), unproven.closed(build), unproven.list(build)))
                .toList();
    }

    /** What stands worst: "valve springs VS-03, 0.9 h over", "open, 14 positions empty", "no limit recorded". */
    String worst(EngineRow row) {
        if (row.first() != null) {
            return notYet(row.first());
        }
        String worst = worst(row, this::left);
        return row.open() != null && asksMore(row, SeamState.RUN_ON)
                ? texts.get("engines.both", worst, open(row))
                : worst;
    }

    /**
     * The same in short, under a heading that names the limit and beside the word that it is open: "big-end shells BE-06,
     * 3.9 h left".
     */
    String nearest(EngineRow row) {
        return row.first() != null ? firstEntry(row.first()) : worst(row, this::brief);
    }

    private String worst(EngineRow row, Function<MarkOn, String> left) {
        String limit = row.worst() == null
                ? texts.get("engines.worst.none")
                : texts.get("engines.comma", on(row.worst()), left.apply(row.worst()));
        if (row.open() != null) {
            return asksMore(row, SeamState.RUN_ON) ? limit : open(row);
        }
        if (!row.incomplete()) {
            return limit;
        }
        String incomplete = texts.get("engines.worst.incomplete", row.empty());
        return asksMore(row, SeamState.DUE)
                ? texts.get("engines.both", limit, incomplete)
                : texts.get("engines.both", incomplete, limit);
    }

    private String open(EngineRow row) {
        return row.empty() == 0 ? texts.get("engines.worst.open") : texts.get("engines.worst.openEmpty", row.empty());
    }

    /** Whether a limit stands as badly as this or worse. */
    private static boolean asksMore(EngineRow row, SeamState than) {
        return row.worst() != null && SeamState.of(row.worst().state()).compareTo(than) <= 0;
    }

    /** What a mark is on: "valve springs VS-03", or what is held against the engine as a whole. */
    private String on(MarkOn on) {
        return on.kind() != null && on.serial() != null
                ? texts.get("engines.part", records.word(on.kind()), on.serial())
                : on.mark()
                        .reason()
                        .fold(
                                by -> marks.said(on).due(),
                                use -> use.limit().fact().name(),
                                use -> records.word(use.limit().fact().kind()),
                                date -> marks.said(on).due(),
                                unproven::within,
                                joints::within);
    }

    /** "0.9 h over", "perhaps 11.5 h over", "at most 6.7 h to its limit", "Sun, Race 2", "9 120 rpm on 4 Jul". */
    String left(MarkOn on) {
        return on.mark()
                .reason()
                .fold(
                        by -> marks.said(on).figures(),
                        use -> limit(on, use, lives::limit),
                        use -> reading(on, use),
                        date -> marks.said(on).left(),
                        build -> texts.get("engines.unproven.left"),
                        doubt -> texts.get("engines.joint_doubt.left"));
    }

    /** The same as far as a cell has room for it: "3.9 h left", "bearing colour", "never read". */
    private String brief(MarkOn on) {
        return on.mark()
                .reason()
                .fold(
                        by -> marks.said(on).figures(),
                        use -> limit(on, use, lives::left),
                        use -> on.state() == MarkState.OVER || use.worst() == null
                                ? marks.said(on).ran()
                                : reading(on, use),
                        date -> marks.said(on).left(),
                        build -> texts.get("engines.unproven.left"),
                        doubt -> texts.get("engines.joint_doubt.left"));
    }

    /** What is left, in the words asked for; which run uses it up, where one of the next event does. */
    private String limit(MarkOn on, LimitUse use, Function<LimitUse, String> left) {
        RunsOut out = on.runsOut();
        return switch (on.state()) {
            case RUN_ON -> marks.said(on).left();
            case DUE ->
                out == null || out.after() ? left.apply(use) : marks.said(on).left();
            case HELD, OVER, NOT_KNOWN, WITHIN -> left.apply(use);
        };
    }

    /** A reading that is missing or falls due names what is to be read, unless that is what the mark is on. */
    private String reading(MarkOn on, ReadingUse use) {
        String kind = records.word(use.limit().fact().kind());
        if (on.state() == MarkState.DUE) {
            return on.serial() == null ? texts.get("engines.reading.due") : texts.get("beforewego.reading.due", kind);
        }
        return use.worst() == null && on.serial() != null
                ? texts.get("beforewego.reading.notRead", kind)
                : use.worst() == null ? marks.said(on).ran() : marks.said(on).left();
    }

    String day(Moment moment) {
        return measures.shortDate(moment.day());
    }

    /** The mark of a part; of one nothing is held against, that. */
    static SeamState state(@Nullable MarkOn worst) {
        return worst == null ? SeamState.NOT_KNOWN : SeamState.of(worst.state());
    }

    MarkWords marks() {
        return marks;
    }

    LifeWords lives() {
        return lives;
    }

    RecordWords records() {
        return records;
    }
}
