package witnessmark.wording;

import witnessmark.domain.Hold;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.ReadingUse;

/** Why a mark stands as it does, in one short line. */
public final class ReasonWords {
    private final Texts texts;
    private final Measures measures;
    private final LifeWords lives;
    private final ReadingWords readings;
    private final UnprovenWords unproven;
    private final JointWords joints;

    /** Says reasons in the language and units of the measures. */
    public ReasonWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.lives = new LifeWords(texts, measures);
        this.readings = new ReadingWords(texts, measures);
        this.unproven = new UnprovenWords(texts, measures);
        this.joints = new JointWords(texts, measures);
    }

    /** "renew valve springs: 0.9 h over". */
    public String why(Mark mark) {
        return mark.reason()
                .fold(
                        this::held,
                        this::limit,
                        this::read,
                        date -> measures.date(date.useBy()),
                        build -> unproven.name(build) + ": " + unproven.list(build),
                        doubt -> joints.name(doubt) + ": " + joints.list(doubt));
    }

    private String limit(LimitUse use) {
        return use.limit().fact().name() + ": " + lives.limit(use);
    }

    private String held(HeldBy by) {
        String why =
                by.rule() != null ? by.rule().fact().name() : by.cause().fact() instanceof Hold hold ? hold.why() : "";
        String day = measures.date(by.since().day());
        return why.isEmpty() ? day : texts.get("beforewego.comma", why, day);
    }

    private String read(ReadingUse use) {
        String name = use.limit().fact().name();
        if (use.worst() == null) {
            return name;
        }
        String place = use.worst().fact().place();
        String read = readings.of(use.worst().fact());
        return place.isEmpty()
                ? texts.get("beforewego.reason.read", name, read)
                : texts.get("beforewego.reason.readAt", name, place, read);
    }
}
