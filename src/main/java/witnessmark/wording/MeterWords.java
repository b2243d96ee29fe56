package witnessmark.wording;

import java.util.Locale;
import witnessmark.ledger.result.MeterStretch;
import witnessmark.quantity.RunningTime;

/** What an hour meter and the logbook say of each other. */
public final class MeterWords {
    private final Texts texts;
    private final Measures measures;

    public MeterWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    /** From when to when: {@code 12 Apr to 3 May}. */
    public String between(MeterStretch stretch) {
        return texts.get(
                "measures.range",
                measures.shortDate(stretch.from().fact().at().day()),
                measures.shortDate(stretch.to().fact().at().day()));
    }

    /** {@code 2.2 h on the meter, 2.2 h logged}. */
    public String both(MeterStretch stretch) {
        String shown = stretch.shown() < 0
                ? texts.get("shelf.meter.back", hours(-stretch.shown()))
                : texts.get("shelf.meter.shown", hours(stretch.shown()));
        String logged = stretch.lowest() == stretch.highest()
                ? hours(stretch.highest())
                : texts.get("measures.range", hours(stretch.lowest()), hours(stretch.highest()));
        return texts.get("shelf.meter.both", shown, logged);
    }

    /** {@code 0.6 h less than logged: it stood still, or a run is too long or there twice}. */
    public String finding(MeterStretch stretch) {
        return texts.get(
                "shelf.meter." + stretch.finding().name().toLowerCase(Locale.ROOT),
                hours(Math.max(0, stretch.apart())));
    }

    private String hours(long millis) {
        return measures.hours(new RunningTime(millis));
    }
}
