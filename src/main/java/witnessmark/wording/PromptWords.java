package witnessmark.wording;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import witnessmark.study.result.FailureMode;

/** What the trade asks of a failure, in words: common practice, and never a finding. */
public final class PromptWords {
    private static final String BETWEEN = ";";

    private final Texts texts;

    public PromptWords(Texts texts) {
        this.texts = texts;
    }

    /** What it is called: "housing lost its grip". */
    public String name(FailureMode mode) {
        return texts.get(key(mode, "name"));
    }

    /** Evidence to look for. */
    public List<String> look(FailureMode mode) {
        return list(key(mode, "look"));
    }

    /** Causes to consider. */
    public List<String> causes(FailureMode mode) {
        return list(key(mode, "causes"));
    }

    /** Questions to ask. */
    public List<String> ask(FailureMode mode) {
        return list(key(mode, "ask"));
    }

    private static String key(FailureMode mode, String what) {
        return "prompts." + mode.name().toLowerCase(Locale.ROOT) + "." + what;
    }

    private List<String> list(String key) {
        return Arrays.stream(texts.get(key).split(BETWEEN)).map(String::strip).toList();
    }
}
