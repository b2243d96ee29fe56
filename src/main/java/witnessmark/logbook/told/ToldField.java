package witnessmark.logbook.told;

import java.util.Locale;
import java.util.Optional;
import witnessmark.domain.Coded;

/** The fields of the form for running told by others, in the order a person goes through them. */
public enum ToldField implements Coded {
    /** Which engine: the text form of its id. */
    ENGINE,
    FROM,
    TO,
    /** Likely hours. */
    LIKELY,
    LOWEST,
    HIGHEST,
    TOLD_BY,
    HOW;

    @Override
    public String code() {
        return key();
    }

    /** The name drafts keep this field under. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<ToldField> of(String key) {
        for (ToldField field : values()) {
            if (field.key().equals(key)) {
                return Optional.of(field);
            }
        }
        return Optional.empty();
    }

    /** Whether it holds hours. */
    public boolean hours() {
        return this == LIKELY || this == LOWEST || this == HIGHEST;
    }
}
