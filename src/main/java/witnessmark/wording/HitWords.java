package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import witnessmark.domain.history.Damage;
import witnessmark.domain.history.Damage.Hit;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Outcome;

/** Which records of a damaged logbook are hit, one sentence each. */
public final class HitWords {
    /** More than these are only counted. */
    private static final int MOST = 40;

    private final Texts texts;
    private final RecordWords records;

    public HitWords(Texts texts, RecordWords records) {
        this.texts = texts;
        this.records = records;
    }

    /** How much can be read as it was written, then what is hit. */
    public List<String> of(Outcome<Damage> look) {
        if (!look.didWork()) {
            return List.of(texts.get("keeping.hit.unknown"));
        }
        Damage damage = look.orThrow();
        List<String> sentences = new ArrayList<>();
        sentences.add(
                texts.get("keeping.hit.whole", damage.whole(), damage.hits().size()));
        damage.hits().stream().limit(MOST).map(this::hit).forEach(sentences::add);
        if (damage.hits().size() > MOST) {
            sentences.add(texts.get("keeping.hit.more", damage.hits().size() - MOST));
        }
        if (damage.unreadable() > 0) {
            sentences.add(texts.get("keeping.hit.changes", damage.unreadable()));
        }
        return sentences;
    }

    private String hit(Hit hit) {
        String kind = RecordTypes.named(hit.table())
                .map(type -> records.one(type.kind()))
                .orElse(hit.table());
        return texts.get("keeping.hit." + hit.left().name().toLowerCase(Locale.ROOT), kind, hit.name());
    }
}
