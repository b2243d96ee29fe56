package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LimitUse;
import witnessmark.quantity.Counter;

/**
 * Lives as shown, and how well each is known. A life that is not known in full never looks as if it were: it reads
 * {@code at least 3.20 h}, {@code about 9.00 h}, {@code 8 to 14 h} or {@code not known}.
 */
public final class LifeWords {
    private final Texts texts;
    private final Measures measures;
    private final Amounts amounts;

    /** Shows lives in the language and units of the measures. */
    public LifeWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.amounts = new Amounts(texts, measures);
    }

    /** A life, times with two decimals. */
    public String life(Life life) {
        Counter counter = life.counter();
        if (nothingRead(life)) {
            return texts.get("measures.life.not_known");
        }
        if (!life.complete()) {
            return measures.atLeast(amounts.amount(counter, life.lowest()));
        }
        if (life.lowest() < life.highest()) {
            return amounts.range(counter, life.lowest(), life.highest());
        }
        String shown = amounts.amount(counter, life.total());
        return life.about() ? measures.about(shown) : shown;
    }

    /**
     * What a life is made of: {@code 9.30 h known, 8 to 14 h told, 1.00 h estimated, 2 runs not read}. A life of nothing
     * says what is known: {@code 0.00 h known}.
     */
    public String basis(Life life) {
        Counter counter = life.counter();
        List<String> parts = new ArrayList<>();
        boolean nothingElse =
                life.told() == 0 && life.toldHighest() == 0 && life.estimated() == 0 && !nothingRead(life);
        if (life.known() > 0 || nothingElse) {
            parts.add(texts.get("measures.life.known", amounts.amount(counter, life.known())));
        }
        if (life.toldHighest() > 0) {
            parts.add(texts.get("measures.life.told", amounts.range(counter, life.toldLowest(), life.toldHighest())));
        }
        if (life.estimated() > 0) {
            parts.add(texts.get("measures.life.estimated", amounts.amount(counter, life.estimated())));
        }
        if (life.atLeast()) {
            parts.add(texts.get("measures.life.earlier"));
        }
        if (life.runsNotRead() > 0) {
            parts.add(texts.get(
                    "measures.life.not_read" + (life.runsNotRead() == 1 ? ".one" : ".many"),
                    measures.number(life.runsNotRead())));
        }
        return measures.row(parts);
    }

    /**
     * A life in one figure, where there is no room for a range: {@code about 3.88 h}, {@code at least 3.20 h}.
     */
    public String brief(Life life) {
        if (!life.complete() || !life.about()) {
            return life(life);
        }
        return measures.about(amounts.amount(life.counter(), life.total()));
    }

    /**
     * How a life stands to its limit: {@code 0.9 h over}, {@code 6.7 h to its limit}, {@code at its limit}. Where more
     * may have been used than is known, {@code at least 0.9 h over} and {@code at most 6.7 h to its limit}; where what
     * was told is a range, which is taken at its high end, {@code perhaps 0.9 h over} and {@code at least 6.7 h to its
     * limit}; where some of it is estimated or somebody's word, {@code about}.
     */
    public String limit(LimitUse use) {
        return limit(use, amounts.toLimit(use.used().counter(), Math.max(0, use.left())));
    }

    /** The same in short, where a heading names the limit: {@code 6.7 h left}, {@code at most 6.7 h left}. */
    public String left(LimitUse use) {
        return limit(use, amounts.left(use.used().counter(), Math.max(0, use.left())));
    }

    private String limit(LimitUse use, String within) {
        Life used = use.used();
        long left = use.left();
        if (left > 0) {
            return !used.complete()
                    ? texts.get("measures.life.at_most_to_limit", within)
                    : used.lowest() < used.highest() ? measures.atLeast(within) : about(used, within);
        }
        String shown = amounts.over(used.counter(), -left);
        if (used.lowest() < use.amount()) {
            return texts.get("measures.life.perhaps", shown);
        }
        return !used.complete() && left < 0 ? measures.atLeast(shown) : about(used, shown);
    }

    private String about(Life used, String shown) {
        return used.about() ? measures.about(shown) : shown;
    }

    private static boolean nothingRead(Life life) {
        return life.highest() == 0 && !life.complete() && (life.atLeast() || life.runs() == life.runsNotRead());
    }
}
