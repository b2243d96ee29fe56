package witnessmark.desktop.cases;

import java.util.List;

/**
 * What the trade asks of a failure, in words.
 *
 * @param all what most leads to first
 * @param atOnce whether it is shown without being asked for: while no cause is written
 */
record PromptLines(List<Prompt> all, boolean atOnce) {
    static final PromptLines NONE = new PromptLines(List.of(), false);

    PromptLines {
        all = List.copyOf(all);
    }

    /**
     * One way in which engines fail.
     *
     * @param name what it is called
     * @param by what leads to asking it; empty where it is always asked
     * @param look evidence to look for
     * @param ask questions
     * @param causes to consider that nobody wrote yet
     * @param predicts what would have to be seen if one were so
     */
    record Prompt(String name, String by, String look, String ask, List<String> causes, String predicts) {
        Prompt {
            causes = List.copyOf(causes);
        }
    }
}
