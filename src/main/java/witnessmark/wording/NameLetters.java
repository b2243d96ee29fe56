package witnessmark.wording;

import java.util.Locale;

/** Letters in place of names, for what goes to somebody outside the team: "person B". */
public final class NameLetters {
    private final Texts texts;

    public NameLetters(Texts texts) {
        this.texts = texts;
    }

    /**
     * The words of a letter.
     *
     * @param whose what the name is of
     * @param letter {@code A} for the first of its kind, or empty
     */
    public String of(Enum<?> whose, String letter) {
        return texts.get("casesheet.who." + whose.name().toLowerCase(Locale.ROOT), letter);
    }
}
