package witnessmark.wording;

import java.util.Collection;
import java.util.List;
import witnessmark.domain.KnownBy;

/** Any value an entry holds as people read it, measures with their unit. */
public final class ValueWords {
    private final Texts texts;
    private final Measures measures;
    private final FactWords facts;
    private final RecordWords records;

    public ValueWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.facts = new FactWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    /** The value in words: {@code 27 min 30 s}, {@code Sun 5 Jul 2026, 15:00}, {@code struck out}. */
    public String word(Object value) {
        if (value instanceof Boolean yes) {
            return texts.get(yes ? "records.value.yes" : "records.value.no");
        }
        if (value instanceof KnownBy known) {
            return known(known);
        }
        if (value instanceof Collection<?> several) {
            return measures.row(several.stream().map(this::word).toList());
        }
        return value instanceof String typed
                ? typed.replaceAll("\\p{Cntrl}+", " ").strip()
                : facts.plain(value);
    }

    private String known(KnownBy known) {
        List<String> each = known.byCounter().entrySet().stream()
                .map(entry -> texts.get(
                        "records.value.known_by", records.counter(entry.getKey()), records.word(entry.getValue())))
                .toList();
        return measures.row(each);
    }
}
