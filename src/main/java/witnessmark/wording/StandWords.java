package witnessmark.wording;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.JointDoubt;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.PrintedDate;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.quantity.Counter;

/**
 * How a mark stands, in words: on what it falls and where that is, what was used or read, against what, and what falls
 * due. Every figure is one the ledger worked out; what is not known says what is missing.
 */
public final class StandWords {
    private final Texts texts;
    private final Measures measures;
    private final Amounts amounts;
    private final RecordWords records;
    private final HeldWords held;
    private final LimitWords limits;
    private final ReadingUseWords readings;
    private final UnprovenWords unproven;
    private final JointWords joints;

    /** Says it in the language and units of the measures. */
    public StandWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.amounts = new Amounts(texts, measures);
        this.records = new RecordWords(texts);
        this.held = new HeldWords(texts, measures);
        this.limits = new LimitWords(texts, measures);
        this.readings = new ReadingUseWords(texts, measures);
        this.unproven = new UnprovenWords(texts, measures);
        this.joints = new JointWords(texts, measures);
    }

    /**
     * What the reason itself says.
     *
     * @param ran what was used or read: "12.87 h"
     * @param limit against what: "12 h"
     * @param figures both in a sentence
     * @param left how it stands: "0.9 h over now"
     * @param due what falls due
     * @param dueWords the same with what more is to be said
     * @param share what is used of the limit, or null
     * @param source where it is written, or empty
     */
    public record Said(
            String ran,
            String limit,
            String figures,
            String left,
            String due,
            String dueWords,
            @Nullable Double share,
            String source) {}

    /** The word of a state, which stands beside its mark: "Over", "Not known". */
    public String state(MarkState state) {
        return texts.get(
                switch (state) {
                    case HELD -> "form.state.held";
                    case OVER -> "form.state.over";
                    case RUN_ON -> "form.state.runOn";
                    case DUE -> "form.state.due";
                    case NOT_KNOWN -> "form.state.notKnown";
                    case WITHIN -> "form.state.within";
                });
    }

    /** Words the reason of a mark. */
    public Said said(Mark mark) {
        return mark.reason()
                .fold(
                        held::of,
                        use -> limits.of(mark, use),
                        use -> readings.of(mark, use),
                        this::printed,
                        this::unproven,
                        this::doubted);
    }

    /**
     * What a mark falls on, short: "Valve springs VS-03", "Engine K03", "Leak-down".
     *
     * @param kind what kind of part it is on, or null
     * @param serial the part's mark, or null
     * @param engine the engine's number, or null
     * @param car the car's name, or null
     */
    public String title(
            Mark mark,
            @Nullable PartKind kind,
            @Nullable String serial,
            @Nullable String engine,
            @Nullable String car) {
        if (mark.reason() instanceof ReadingUse use && serial == null) {
            return records.label(records.word(use.limit().fact().kind()));
        }
        if (kind != null && serial != null) {
            return texts.get("beforewego.part", records.label(records.word(kind)), serial);
        }
        return engine != null
                ? texts.get("beforewego.engine", engine)
                : texts.get("beforewego.car", String.valueOf(car));
    }

    /** Where that is: "Engine K03, car 41". */
    public String where(@Nullable String engine, @Nullable String car) {
        if (engine == null) {
            return car == null ? texts.get("beforewego.shelf") : texts.get("beforewego.car", car);
        }
        return car == null
                ? texts.get("beforewego.engine.noCar", engine)
                : texts.get("beforewego.engine.car", engine, car);
    }

    private Said unproven(UnprovenBuild build) {
        String due = texts.get("beforewego.unproven.due");
        return new Said("", "", unproven.list(build), unproven.name(build), due, unproven.closed(build), null, "");
    }

    private Said doubted(JointDoubt doubt) {
        String due = texts.get("beforewego.joints.due");
        return new Said("", "", joints.groups(doubt), joints.name(doubt), due, joints.found(doubt), null, "");
    }

    private Said printed(PrintedDate date) {
        String useBy = texts.get("beforewego.printed", measures.date(date.useBy()));
        String left = date.state() == MarkState.OVER
                ? texts.get("beforewego.left.over", amounts.over(Counter.AGE, -date.daysLeft()))
                : amounts.left(Counter.AGE, date.daysLeft());
        String due = texts.get("beforewego.printed.due");
        return new Said("", measures.date(date.useBy()), useBy, left, due, due, null, "");
    }
}
