package witnessmark.desktop.runsheet;

import java.util.HashMap;
import java.util.Map;

/** Why a run is corrected, in the words of whoever does: goes with the correction into its history. Nobody has to say. */
final class WhyCorrected {
    /** Beside the fields of the run in a draft. */
    private static final String KEPT = "why corrected";

    private String typed = "";
    private String cleared = "";

    /** Without spaces around it; empty when nobody says. */
    String text() {
        return typed.strip();
    }

    /** Exactly what stands in the field. */
    String typed() {
        return typed;
    }

    /** Whether it is something else now. */
    boolean type(String now) {
        boolean other = !now.equals(typed);
        typed = now;
        return other;
    }

    /** It is written; what was typed since stays. */
    void written(String then) {
        if (typed.equals(then)) {
            typed = "";
        }
    }

    /** The run is put back as it was; that can be undone once. */
    void clear() {
        cleared = typed;
        typed = "";
    }

    void putBack() {
        typed = cleared;
    }

    Map<String, String> into(Map<String, String> draft) {
        Map<String, String> all = new HashMap<>(draft);
        all.put(KEPT, typed);
        return all;
    }

    /** What was typed meanwhile stays. */
    void from(Map<String, String> draft) {
        if (typed.isEmpty()) {
            typed = draft.getOrDefault(KEPT, "");
        }
    }
}
