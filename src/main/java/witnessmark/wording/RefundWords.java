package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import witnessmark.cost.result.Refund;

/** What can be asked back, in words: what it was paid for, how much is to come, and until when. */
public final class RefundWords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    public RefundWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** "Entry, Round 6, Thornacre, car 41". */
    public String what(Refund refund) {
        List<String> what = new ArrayList<>();
        what.add(records.label(refund.line().fact().what()));
        if (refund.event() != null) {
            what.add(refund.event().name());
        }
        if (refund.car() != null) {
            what.add(texts.get("money.refund.car", refund.car().name()));
        }
        return measures.row(what);
    }

    /** "520.00 EUR to ask back", "130.00 EUR of 520.00 EUR still to come". */
    public String still(Refund refund) {
        String still = measures.money(refund.still());
        return refund.begun()
                ? texts.get(
                        "money.refund.part",
                        still,
                        measures.money(refund.line().fact().paid()))
                : texts.get("money.refund.all", still);
    }

    /** "until Sat 11 Jul 2026, 4 days left", "late: the last day was Sat 8 Aug 2026". */
    public String until(Refund refund) {
        String day = measures.date(refund.by());
        return refund.late()
                ? texts.get("money.refund.late", day)
                : texts.get("money.refund.until", day, refund.daysLeft());
    }
}
