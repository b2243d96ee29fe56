package witnessmark.wording;

import java.util.Locale;
import java.util.Optional;
import witnessmark.domain.Coded;
import witnessmark.domain.Fact;
import witnessmark.domain.Run;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordTypes;
import witnessmark.ledger.result.Counted;
import witnessmark.quantity.Counter;

/**
 * Names of what the logbook holds: kinds of entry, their parts, words of closed lists, counters. All but the labels of
 * parts are as said inside a sentence.
 */
public final class RecordWords {
    private final Texts texts;

    /** Takes the names from these texts. */
    public RecordWords(Texts texts) {
        this.texts = texts;
    }

    /** One entry of a kind: {@code engine in a car}. */
    public String one(Class<? extends Fact> kind) {
        return texts.get(typeKey(kind) + ".one");
    }

    /** Several entries of a kind: {@code engines in cars}. */
    public String many(Class<? extends Fact> kind) {
        return texts.get(typeKey(kind) + ".many");
    }

    /** A word of a closed list: {@code big-end shells}, {@code rule book}, {@code out of the car}. */
    public String word(Coded word) {
        return texts.get(wordKey(word));
    }

    /** A counter's name: {@code running time}, {@code laps}. */
    public String counter(Counter counter) {
        return texts.get("records.counter." + key(counter.code()));
    }

    /** Whether an entry is in a life, and if not, why. */
    public String counted(Counted counted) {
        return texts.get("records.counted." + counted.name().toLowerCase(Locale.ROOT));
    }

    /** What a part of an entry is called, as a label: {@code Running time}, {@code Taken off}. */
    public String field(Class<? extends Fact> kind, Component field) {
        return texts.get(fieldKey(RecordTypes.of(kind).name(), snake(field.name())));
    }

    /** The label of a field of a run by the name its record has for it, when there is such a field. */
    Optional<String> runField(String name) {
        return RecordTypes.of(Run.class).components().stream()
                .filter(field -> field.name().equals(name))
                .map(field -> field(Run.class, field))
                .findFirst();
    }

    private String fieldKey(String type, String field) {
        String own = "records.field." + type + "." + field;
        return texts.has(own) ? own : "records.field." + field;
    }

    private static String snake(String name) {
        return name.replaceAll("(?<=[a-z])([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    /** A name as a label, with a capital first. */
    public String label(String name) {
        if (name.isEmpty()) {
            return name;
        }
        int first = name.offsetByCodePoints(0, 1);
        return name.substring(0, first).toUpperCase(texts.locale()) + name.substring(first);
    }

    static String typeKey(Class<? extends Fact> kind) {
        return "records.type." + RecordTypes.of(kind).name();
    }

    static String wordKey(Coded word) {
        Class<?> list = ((Enum<?>) word).getDeclaringClass();
        return "records." + snake(list.getSimpleName()) + "." + key(word.code());
    }

    private static String key(String code) {
        return code.replace(' ', '_');
    }
}
