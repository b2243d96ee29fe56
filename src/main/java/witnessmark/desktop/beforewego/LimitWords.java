package witnessmark.desktop.beforewego;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.standing.LimitOn;
import witnessmark.logbook.standing.PartWithoutLimit;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.wording.Amounts;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words one limit. Every figure is one the ledger summed; what is not known says what is missing. */
final class LimitWords {
    private final Texts texts;
    private final Measures measures;
    private final Amounts amounts;
    private final RecordWords records;

    LimitWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.amounts = new Amounts(texts, measures);
        this.records = new RecordWords(texts);
    }

    LimitLine line(LimitOn on) {
        Limit limit = on.limit();
        String title = title(on);
        String where = where(on.engine(), on.car());
        String figures = texts.get(
                limit.action() == LimitAction.LOOK ? "beforewego.figures.look" : "beforewego.figures.renew",
                ranWords(on),
                limitAmount(limit),
                records.word(limit.rank()));
        String left = left(on);
        String due = due(on);
        return new LimitLine(
                limit(on),
                state(on.state()),
                title,
                where,
                place(on.engine(), on.car()),
                life(on),
                ran(on),
                limitAmount(limit),
                figures,
                left,
                limit.name(),
                due,
                (double) on.use().used().highest() / on.use().amount(),
                on.subject(),
                texts.get("beforewego.tip", figures, limit.source()),
                about(title, where, figures, left, due));
    }

    /** A part nobody wrote a limit for: not known, and said so. */
    LimitLine line(PartWithoutLimit part) {
        String title = texts.get("beforewego.part", records.label(records.word(part.kind())), part.mark());
        String where = where(part.engine(), part.car());
        String none = texts.get("beforewego.limit.none");
        return new LimitLine(
                part.part().text(),
                SeamState.NOT_KNOWN,
                title,
                where,
                place(part.engine(), part.car()),
                witnessmark.desktop.form.Life.notKnown(),
                amounts.amount(Counter.RUNNING, part.ran().total()),
                none,
                none,
                texts.get("beforewego.left.noLimit"),
                "",
                "",
                null,
                part.part().text(),
                none,
                about(title, where, none));
    }

    private static String limit(LimitOn on) {
        return on.use().limit().id().text() + " " + on.subject();
    }

    static SeamState state(MarkState state) {
        return switch (state) {
            case HELD -> SeamState.HELD;
            case OVER -> SeamState.OVER;
            case RUN_ON -> SeamState.RUN_ON;
            case DUE -> SeamState.DUE;
            case NOT_KNOWN -> SeamState.NOT_KNOWN;
            case WITHIN -> SeamState.WITHIN;
        };
    }

    private String title(LimitOn on) {
        if (on.kind() != null && on.mark() != null) {
            return texts.get("beforewego.part", records.label(records.word(on.kind())), on.mark());
        }
        return on.engine() != null
                ? texts.get("beforewego.engine", on.engine())
                : texts.get("beforewego.car", String.valueOf(on.car()));
    }

    String where(@Nullable String engine, @Nullable String car) {
        if (engine == null) {
            return car == null ? texts.get("beforewego.shelf") : texts.get("beforewego.car", car);
        }
        return car == null
                ? texts.get("beforewego.engine.noCar", engine)
                : texts.get("beforewego.engine.car", engine, car);
    }

    private String place(@Nullable String engine, @Nullable String car) {
        if (engine == null) {
            return car == null ? texts.get("beforewego.shelf") : texts.get("beforewego.car", car);
        }
        return car == null ? engine : texts.get("beforewego.place", engine, car);
    }

    private static witnessmark.desktop.form.Life life(LimitOn on) {
        Life used = on.use().used();
        if (!used.complete() && used.highest() == 0) {
            return witnessmark.desktop.form.Life.notKnown();
        }
        return witnessmark.desktop.form.Life.of(used.highest(), 0, on.use().amount());
    }

    /** "12.87 h", "8 to 14 h" where told, "at least 3.2 h" where more may have been run. */
    private String ran(LimitOn on) {
        Life used = on.use().used();
        Counter counter = used.counter();
        String shown = used.lowest() == used.highest()
                ? amounts.amount(counter, used.total())
                : amounts.range(counter, used.lowest(), used.highest());
        return used.complete() ? shown : measures.atLeast(shown);
    }

    private String ranWords(LimitOn on) {
        return texts.get(
                switch (on.use().used().counter()) {
                    case RUNNING, DISTANCE -> "beforewego.ran.run";
                    case LOADED -> "beforewego.ran.loaded";
                    case HIGH_SPEED -> "beforewego.ran.highSpeed";
                    default -> "beforewego.ran.counted";
                },
                ran(on));
    }

    private String limitAmount(Limit limit) {
        return amounts.range(limit.counter(), limit.amount(), limit.amount());
    }

    private String left(LimitOn on) {
        Counter counter = on.limit().counter();
        Life used = on.use().used();
        return switch (on.state()) {
            case HELD, OVER, RUN_ON, DUE ->
                texts.get(
                        on.perhapsOver() ? "beforewego.left.perhapsOver" : "beforewego.left.over",
                        amounts.over(counter, -on.use().left()));
            case WITHIN ->
                used.lowest() == used.highest()
                        ? amounts.toLimit(counter, on.use().left())
                        : measures.atLeast(amounts.toLimit(counter, on.use().left()));
            case NOT_KNOWN ->
                used.highest() == 0
                        ? texts.get("beforewego.left.notKnown", records.label(records.counter(counter)))
                        : measures.atLeast(amounts.rough(counter, used.lowest()));
        };
    }

    /** What falls due, when it was last done, and what is missing. */
    private String due(LimitOn on) {
        Life used = on.use().used();
        List<String> said = new ArrayList<>();
        said.add(on.limit().name());
        Moment since = on.use().since();
        if (used.atLeast()) {
            said.add(texts.get("beforewego.missing.before"));
        } else if (used.runsNotRead() > 0) {
            said.add(texts.get("beforewego.missing.runs", used.runsNotRead(), records.counter(used.counter())));
        } else if (since != null) {
            said.add(texts.get("beforewego.since", measures.shortDate(since.day())));
        }
        return said.size() == 1 ? said.get(0) : texts.get("beforewego.comma", said.get(0), said.get(1));
    }

    private String about(String first, String... more) {
        String all = first;
        for (String next : more) {
            all = next.isEmpty() ? all : texts.get("beforewego.comma", all, next);
        }
        return all;
    }
}
