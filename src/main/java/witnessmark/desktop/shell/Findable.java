package witnessmark.desktop.shell;

import java.util.List;

/** One group of things that can be found: engines, parts, runs, commands. */
public interface Findable {
    /** The heading of the group in the results, already worded. */
    String group();

    /**
     * The best matches first. Runs off the event thread and touches no component.
     *
     * @param typed what was typed, not blank, trimmed
     * @param most how many are wanted at the most
     */
    List<Found> find(String typed, int most);

    /** The words that offer to show everything that was found: "All 214 runs". */
    String all(int count);

    /** Whether something here is called just so, or is looked for by such a word: then it stands before what only holds it. */
    default boolean isCalled(String typed) {
        return false;
    }

    /** Of what is called so, whether that is its own name and not another word for it: then no record is before it. */
    default boolean isNamed(String typed) {
        return false;
    }
}
