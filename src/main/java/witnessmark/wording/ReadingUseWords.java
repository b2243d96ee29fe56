package witnessmark.wording;

import java.util.Objects;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingLimit;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;

/** Words how the last readings stand to their limit. */
final class ReadingUseWords {
    private final Texts texts;
    private final Measures measures;
    private final Amounts amounts;
    private final ReadingWords readings;
    private final RecordWords records;

    ReadingUseWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.amounts = new Amounts(texts, measures);
        this.readings = new ReadingWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    StandWords.Said of(Mark mark, ReadingUse use) {
        ReadingLimit limit = use.limit().fact();
        String kind = records.label(records.word(limit.kind()));
        if (use.worst() == null) {
            String none = texts.get("beforewego.reading.none");
            return new StandWords.Said(
                    none,
                    figure(use).figure(),
                    none,
                    texts.get("beforewego.reading.notRead", kind),
                    limit.name(),
                    allowed(use),
                    null,
                    limit.source());
        }
        Reading worst = use.worst().fact();
        String ran = readings.of(worst);
        String figures = texts.get(
                "beforewego.reading.on",
                at(worst.place(), ran),
                measures.shortDate(worst.at().day()));
        if (use.baseline() != null && !use.baseline().id().equals(use.worst().id())) {
            figures = texts.get(
                    "beforewego.reading.from",
                    figures,
                    readings.of(use.baseline().fact()));
        }
        return new StandWords.Said(
                ran,
                figure(use).figure(),
                figures,
                stands(mark, use),
                limit.name(),
                beside(mark, use),
                null,
                limit.source());
    }

    /** A figure where it was read: "exhaust 3B, 266 N", "cylinder 2, 14 %". */
    private String at(String place, String figure) {
        if (place.isEmpty()) {
            return figure;
        }
        boolean cylinder = place.chars().allMatch(Character::isDigit);
        return texts.get(
                "beforewego.comma", cylinder ? texts.get("beforewego.reading.cylinder", place) : place, figure);
    }

    private String stands(Mark mark, ReadingUse use) {
        if (mark.state() == MarkState.NOT_KNOWN) {
            return texts.get(
                    "beforewego.reading.old",
                    amounts.rough(Counter.RUNNING, use.since().highest()));
        }
        if (mark.state() == MarkState.DUE && mark.runsOut() != null) {
            return texts.get(
                    "beforewego.reading.due",
                    records.label(records.word(use.limit().fact().kind())));
        }
        return use.broken() == ReadingUse.Broken.NONE ? texts.get("beforewego.reading.inside") : broken(use);
    }

    private String broken(ReadingUse use) {
        Reading worst = Objects.requireNonNull(use.worst()).fact();
        Reading base = use.baseline() == null ? worst : use.baseline().fact();
        long value = worst.value() == null ? 0 : worst.value();
        long from = base.value() == null ? 0 : base.value();
        return switch (use.broken()) {
            case FALL ->
                texts.get("beforewego.reading.down", readings.percent(from - value, Math.max(1, from)), allowed(use));
            case CHANGE ->
                texts.get(
                        value < from ? "beforewego.reading.less" : "beforewego.reading.more",
                        readings.figure(worst.kind(), Math.abs(value - from)),
                        allowed(use));
            default -> texts.get("beforewego.reading.broken", readings.of(worst), allowed(use));
        };
    }

    /**
     * What the limit allows.
     *
     * @param key of the words it takes in a sentence: "limit 8 %", "not worse than few specks"
     * @param figure alone, as a cell has room for it: "8 %", "few specks"
     */
    private record Allowed(String key, String figure) {}

    private String allowed(ReadingUse use) {
        Allowed allowed = figure(use);
        return texts.get(allowed.key(), allowed.figure());
    }

    /** The figure that is broken, or the one that speaks for the limit. */
    private Allowed figure(ReadingUse use) {
        ReadingLimit limit = use.limit().fact();
        ReadingUse.Broken what = use.broken();
        if (limit.worstGrade() != null) {
            return new Allowed("beforewego.reading.grade", records.word(limit.worstGrade()));
        }
        if (limit.fallAtMost() != null && (what == ReadingUse.Broken.FALL || limit.atMost() == null)) {
            return new Allowed("beforewego.reading.limit", readings.percent(limit.fallAtMost()));
        }
        if (limit.changeAtMost() != null && (what == ReadingUse.Broken.CHANGE || limit.atMost() == null)) {
            return new Allowed("beforewego.reading.limit", readings.figure(limit.kind(), limit.changeAtMost()));
        }
        if (limit.atMost() != null && what != ReadingUse.Broken.AT_LEAST) {
            return new Allowed("beforewego.reading.limit", readings.figure(limit.kind(), limit.atMost()));
        }
        if (limit.atLeast() != null) {
            return new Allowed("beforewego.reading.least", readings.figure(limit.kind(), limit.atLeast()));
        }
        RunningTime every = Objects.requireNonNull(limit.every()); // a limit says a figure, a grade or an age
        return new Allowed("beforewego.reading.every", amounts.rough(Counter.RUNNING, every.millis()));
    }

    private String beside(Mark mark, ReadingUse use) {
        if (use.runOn() != null && mark.state() == MarkState.RUN_ON) {
            return texts.get(
                    "beforewego.runOn.signed",
                    measures.shortDate(use.runOn().fact().at().day()),
                    use.runOn().fact().by());
        }
        return use.limit().fact().name();
    }
}
