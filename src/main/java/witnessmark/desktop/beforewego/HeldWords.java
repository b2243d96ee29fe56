package witnessmark.desktop.beforewego;

import witnessmark.domain.Hold;
import witnessmark.domain.Reading;
import witnessmark.domain.Run;
import witnessmark.domain.Trigger;
import witnessmark.ledger.result.HeldBy;
import witnessmark.wording.Measures;
import witnessmark.wording.ReadingWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words what holds something: what happened, on which day, and what is to be looked at before it may be cleared. */
final class HeldWords {
    private final Texts texts;
    private final Measures measures;
    private final ReadingWords readings;
    private final RecordWords records;

    HeldWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.readings = new ReadingWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    MarkWords.Said of(HeldBy by) {
        String what = texts.get(
                "beforewego.held.on",
                happened(by),
                measures.shortDate(by.since().day()));
        Trigger rule = by.rule() == null ? null : by.rule().fact();
        String asks = rule != null ? rule.asks() : by.cause().fact() instanceof Hold hold ? hold.asks() : "";
        String name = rule != null ? rule.name() : texts.get("beforewego.held.by");
        return new MarkWords.Said(
                null,
                what,
                "",
                what,
                texts.get("beforewego.held"),
                name,
                asks.isEmpty() ? name : asks,
                null,
                rule == null ? "" : rule.source());
    }

    private String happened(HeldBy by) {
        if (by.cause().fact() instanceof Hold hold) {
            return hold.why();
        }
        if (by.cause().fact() instanceof Reading reading) {
            return texts.get("beforewego.held.reading", records.word(reading.kind()), readings.of(reading));
        }
        return by.cause().fact() instanceof Run run && by.rule() != null
                ? figure(run, by.rule().fact())
                : records.one(by.cause().fact().getClass());
    }

    private String figure(Run run, Trigger rule) {
        return switch (rule.kind()) {
            case SPEED_ABOVE -> run.highest() == null ? rule.name() : measures.speed(run.highest());
            case WATER_ABOVE ->
                run.waterHighest() == null
                        ? rule.name()
                        : texts.get("beforewego.held.water", measures.temperature(run.waterHighest()));
            case OIL_ABOVE ->
                run.oilHighest() == null
                        ? rule.name()
                        : texts.get("beforewego.held.oil", measures.temperature(run.oilHighest()));
            case OIL_PRESSURE_BELOW ->
                run.oilPressure() == null
                        ? rule.name()
                        : texts.get("beforewego.held.pressure", measures.pressure(run.oilPressure()));
            case GRADED, WORSE_TWICE -> rule.name();
        };
    }
}
