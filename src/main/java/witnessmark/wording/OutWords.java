package witnessmark.wording;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Reading;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.DebrisIn;

/** What is out with others, in words: what it is, with whom, for when it was promised, how long nothing was heard. */
public final class OutWords {
    private final Texts texts;
    private final Measures measures;

    public OutWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    /** "Engine K05", "head 18-16 HD-06", "6 × Fenn 0.9". */
    public String what(Away away) {
        if (away.design() == null) {
            return texts.get("shelf.out.engine", away.mark());
        }
        String design = away.design().name();
        Integer count = away.sent().fact().count();
        if (count != null) {
            return texts.get("shelf.out.ordered", design, count);
        }
        return away.mark().isEmpty() ? design : texts.get("shelf.out.part", design, away.mark());
    }

    /** "with machinist G1". */
    public String with(@Nullable Away away) {
        return away == null
                ? ""
                : texts.get("shelf.where.away", away.sent().fact().sentTo());
    }

    /** "3 days late, promised for 12 May", "promised for 12 May", "nothing promised". */
    public String promised(Away away) {
        LocalDate promised = away.promised();
        if (promised == null) {
            return texts.get("shelf.away.noPromise");
        }
        String day = measures.shortDate(promised);
        return away.late() ? texts.get("shelf.away.late", away.daysLate(), day) : texts.get("shelf.away.promised", day);
    }

    /** "nothing heard for 6 days"; empty when something was heard on the day. */
    public String silent(Away away) {
        return away.daysSilent() == 0 ? "" : texts.get("shelf.away.silent", away.daysSilent());
    }

    /** What went through a cooler or lines: "bearing colour in the filter of K05, 14 Apr, in car 57 since". */
    public String debris(DebrisIn debris) {
        Reading filter = debris.filter().fact();
        return texts.get(
                "shelf.debris",
                new RecordWords(texts).word(java.util.Objects.requireNonNull(filter.grade())),
                debris.engine().fact().number(),
                measures.shortDate(filter.at().day()),
                debris.car().fact().name());
    }
}
