package witnessmark.wording;

import witnessmark.domain.Hold;
import witnessmark.domain.Reading;
import witnessmark.domain.Trigger;
import witnessmark.ledger.result.HeldBy;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;

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

    StandWords.Said of(HeldBy by) {
        String happened = happened(by);
        String what = texts.get(
                "beforewego.held.on", happened, measures.shortDate(by.since().day()));
        Trigger rule = by.rule() == null ? null : by.rule().fact();
        String asks = by.asks();
        String name = rule != null ? rule.name() : texts.get("beforewego.held.by");
        return new StandWords.Said(
                rule == null ? "" : happened, // what a person wrote may be long; a cell has room for a figure
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
        Trigger rule = by.rule() == null ? null : by.rule().fact();
        Long figure = by.figure();
        if (rule == null) {
            return records.one(by.cause().fact().getClass());
        }
        return figure == null ? rule.name() : reached(rule, figure);
    }

    private String reached(Trigger rule, long figure) {
        return switch (rule.kind()) {
            case SPEED_ABOVE -> measures.speed(new EngineSpeed(Math.toIntExact(figure)));
            case WATER_ABOVE -> texts.get("beforewego.held.water", measures.temperature(new Temperature(figure)));
            case OIL_ABOVE -> texts.get("beforewego.held.oil", measures.temperature(new Temperature(figure)));
            case OIL_PRESSURE_BELOW -> texts.get("beforewego.held.pressure", measures.pressure(new Pressure(figure)));
            case GRADED, WORSE_TWICE -> rule.name();
        };
    }
}
