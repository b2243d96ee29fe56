package witnessmark.wording;

import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.ReadingUse;

/** Why a mark stands as it does, in one short line. */
public final class ReasonWords {
    private final Measures measures;
    private final LifeWords lives;
    private final ReadingWords readings;
    private final UnprovenWords unproven;

    /** Says reasons in the language and units of the measures. */
    public ReasonWords(Texts texts, Measures measures) {
        this.measures = measures;
        this.lives = new LifeWords(texts, measures);
        this.readings = new ReadingWords(texts, measures);
        this.unproven = new UnprovenWords(texts, measures);
    }

    /** "renew valve springs: 0.9 h over". */
    public String why(Mark mark) {
        return mark.reason()
                .fold(
                        this::held,
                        this::limit,
                        this::read,
                        date -> measures.date(date.useBy()),
                        build -> unproven.name(build) + ": " + unproven.list(build));
    }

    private String limit(LimitUse use) {
        return use.limit().fact().name() + ": " + lives.limit(use);
    }

    private String held(HeldBy by) {
        String name = by.rule() == null ? "" : by.rule().fact().name() + ", ";
        return name + measures.date(by.since().day());
    }

    private String read(ReadingUse use) {
        String name = use.limit().fact().name();
        return use.worst() == null
                ? name
                : name + ": " + use.worst().fact().place() + " "
                        + readings.of(use.worst().fact());
    }
}
