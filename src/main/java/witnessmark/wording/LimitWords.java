package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.RunOn;
import witnessmark.ledger.result.Expected;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.RunsOut;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** Words how much of a limit is used, and where the rest runs out. */
final class LimitWords {
    private final Texts texts;
    private final Measures measures;
    private final Amounts amounts;
    private final RecordWords records;
    private final LifeWords lives;

    LimitWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.amounts = new Amounts(texts, measures);
        this.records = new RecordWords(texts);
        this.lives = new LifeWords(texts, measures);
    }

    StandWords.Said of(Mark mark, LimitUse use) {
        Limit limit = use.limit().fact();
        String figures = texts.get(
                limit.action() == LimitAction.RENEW ? "beforewego.figures.renew" : "beforewego.figures.due",
                ranWords(use),
                limitAmount(use),
                records.word(limit.rank()),
                records.word(limit.action()));
        return new StandWords.Said(
                lives.life(use.used()),
                limitAmount(use),
                figures,
                left(mark, use),
                limit.name(),
                beside(mark, use),
                (double) use.used().highest() / use.amount(),
                limit.source());
    }

    private String ranWords(LimitUse use) {
        return texts.get(
                switch (use.used().counter()) {
                    case RUNNING, DISTANCE -> "beforewego.ran.run";
                    case LOADED -> "beforewego.ran.loaded";
                    case HIGH_SPEED -> "beforewego.ran.highSpeed";
                    case AGE -> "beforewego.ran.old";
                    default -> "beforewego.ran.counted";
                },
                lives.life(use.used()));
    }

    /** The limit as it is written down: an age in months. */
    private String limitAmount(LimitUse use) {
        Limit limit = use.limit().fact();
        return limit.counter() == Counter.AGE
                ? texts.get("measures.months", limit.amount())
                : amounts.range(limit.counter(), limit.amount(), limit.amount());
    }

    private String left(Mark mark, LimitUse use) {
        Counter counter = use.used().counter();
        return switch (mark.state()) {
            case HELD, OVER ->
                mark.perhapsOver() ? lives.limit(use) : texts.get("beforewego.left.over", lives.limit(use));
            case RUN_ON -> texts.get("beforewego.runOn", runOnTo(counter, use.runOn()));
            case DUE -> due(mark, counter);
            case WITHIN -> lives.limit(use);
            case NOT_KNOWN ->
                use.used().highest() == 0
                        ? texts.get("beforewego.left.notKnown", records.label(records.counter(counter)))
                        : lives.limit(use); // at most this much is left, never how much was run
        };
    }

    private String runOnTo(Counter counter, @Nullable Entry<RunOn> runOn) {
        return runOn == null ? "" : amounts.rough(counter, runOn.fact().upTo());
    }

    /** "Race 2, Sun 26 Jul", "perhaps in Race 2, Sun 26 Jul", "1.6 h left after". */
    private String due(Mark mark, Counter counter) {
        RunsOut out = mark.runsOut();
        if (out == null) {
            return "";
        }
        if (out.after()) {
            Long left = mark.leftAfter();
            return left == null
                    ? texts.get("beforewego.due.after")
                    : texts.get("beforewego.due.leftAfter", amounts.rough(counter, left));
        }
        if (out.planned() == null) {
            return texts.get("beforewego.due.event", out.event().fact().name());
        }
        String run = texts.get(
                "beforewego.due.run",
                measures.weekday(out.planned().fact().day()),
                out.planned().fact().name());
        return out.sure() ? run : texts.get("beforewego.due.perhaps", run);
    }

    /** What falls due or what the coming event takes, when it was last done, and what is missing. */
    private String beside(Mark mark, LimitUse use) {
        if (mark.state() == MarkState.RUN_ON && use.runOn() != null) {
            return texts.get(
                    "beforewego.runOn.signed",
                    measures.shortDate(use.runOn().fact().at().day()),
                    use.runOn().fact().by());
        }
        Expected expected = mark.expected();
        if (mark.state() == MarkState.DUE && expected != null && expected.likely() > 0) {
            return takes(expected);
        }
        Life used = use.used();
        List<String> said = new ArrayList<>();
        said.add(use.limit().fact().name());
        Moment since = use.since();
        if (used.atLeast()) {
            said.add(
                    texts.get(used.counter() == Counter.AGE ? "beforewego.missing.made" : "beforewego.missing.before"));
        } else if (used.runsNotRead() > 0) {
            said.add(texts.get("beforewego.missing.runs", used.runsNotRead(), records.counter(used.counter())));
        } else if (since != null) {
            said.add(texts.get("beforewego.since", measures.shortDate(since.day())));
        }
        return said.size() == 1 ? said.get(0) : texts.get("beforewego.comma", said.get(0), said.get(1));
    }

    /** "2.2 h there (1.9 to 2.4), from 7 events". */
    String takes(Expected expected) {
        Counter counter = expected.counter();
        String likely = amounts.rough(counter, expected.likely());
        if (expected.runs() == 0) {
            return texts.get(
                    expected.basis() == Expected.Basis.TIMETABLE
                            ? "beforewego.takes.timetable"
                            : "beforewego.takes.usual",
                    likely);
        }
        return texts.get(
                "beforewego.takes", likely, amounts.range(counter, expected.low(), expected.high()), expected.events());
    }
}
