package witnessmark.desktop.form;

import witnessmark.wording.Texts;

/** The word of each state, from the bundle. */
public final class StateWords {
    private final Texts texts;

    public StateWords(Texts texts) {
        this.texts = texts;
    }

    public String of(SeamState state) {
        return texts.get(state.key());
    }

    /** A mark with its word and what it is about. */
    public SeamMark mark(SeamState state, String about) {
        return new SeamMark(state, of(state), about);
    }
}
