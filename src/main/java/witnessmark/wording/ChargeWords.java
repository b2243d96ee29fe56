package witnessmark.wording;

import witnessmark.domain.Fact;
import witnessmark.domain.HowKnown;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.ToldRunning;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Counted;
import witnessmark.quantity.Counter;

/** One line of an account in words: where it comes from, and what it adds or why it adds nothing. */
public final class ChargeWords {
    private final Texts texts;
    private final Measures measures;
    private final Amounts amounts;
    private final RecordWords words;

    public ChargeWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.amounts = new Amounts(texts, measures);
        this.words = new RecordWords(texts);
    }

    /** {@code Race 2}, {@code carried in, known: builder's sheet}, {@code told by the owner}. */
    public String source(Charge charge) {
        Fact fact = charge.source().fact();
        if (fact instanceof Run run) {
            return run.name();
        }
        if (fact instanceof PriorLife prior) {
            return texts.get("measures.charge.carried_in", words.word(prior.kind()), prior.words());
        }
        if (fact instanceof ToldRunning told) {
            return texts.get("measures.charge.told_by", told.toldBy());
        }
        return words.one(fact.getClass());
    }

    /** The amount it adds, as a range or about where it is somebody's word, or why it adds nothing. */
    public String adds(Charge charge, Counter counter) {
        if (charge.counted() != Counted.YES) {
            return words.counted(charge.counted());
        }
        if (charge.lowest() < charge.highest()) {
            return amounts.range(counter, charge.lowest(), charge.highest());
        }
        String shown = amounts.amount(counter, charge.amount());
        return charge.how() == HowKnown.TOLD || charge.how() == HowKnown.ESTIMATED ? measures.about(shown) : shown;
    }
}
