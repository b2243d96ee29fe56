package witnessmark.desktop.find;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.shell.PlaceId;

/**
 * One record that can be found.
 *
 * @param title what it is, as shown
 * @param note where or when, as shown
 * @param serial what people call it, compared without spaces, dashes and case; empty for what has no name of its own
 * @param words everything it is found by, in small letters, words apart by one space
 * @param place where it is shown, or null when it is shown on its own sheet, or nowhere but among what is found
 * @param record the text of its identity there
 * @param within what it holds, shown in its turn when it is chosen: the runs of an event; empty for what has a place
 */
record Indexed(
        String title,
        String note,
        String serial,
        String words,
        @Nullable PlaceId place,
        String record,
        List<Indexed> within) {
    Indexed {
        within = List.copyOf(within);
    }

    Indexed(String title, String note, String serial, String words, PlaceId place, String record) {
        this(title, note, serial, words, place, record, List.of());
    }

    /** The worst match that is one. */
    static final int WORST = 4;

    /** The worst one where what was typed is the whole name of something. */
    static final int WORST_OF_NAMED = 2;

    private static final int NOT = Integer.MAX_VALUE;

    /**
     * How well this answers: 0 is best, what is more than {@link #WORST} is no answer.
     *
     * @param asked what was typed
     */
    int match(Asked asked) {
        if (!serial.isEmpty() && !asked.serial().isEmpty()) {
            int at = serial.indexOf(asked.serial());
            if (at == 0) {
                return serial.length() == asked.serial().length() ? 0 : 1;
            }
            if (at > 0) {
                return 2;
            }
        }
        int phrase = words.indexOf(asked.phrase());
        if (phrase >= 0 && beginsAWord(asked.phrase(), phrase)) {
            return 2;
        }
        int worst = 3;
        for (String word : asked.words()) {
            int at = words.indexOf(word);
            if (at < 0) {
                return NOT;
            }
            worst = Math.max(worst, beginsAWord(word, at) ? 3 : WORST);
        }
        return worst;
    }

    /** Whether it happened on the day. */
    boolean on(String isoDay) {
        return words.contains(isoDay);
    }

    private boolean beginsAWord(String word, int first) {
        for (int at = first; at >= 0; at = words.indexOf(word, at + 1)) {
            if (at == 0 || words.charAt(at - 1) == ' ') {
                return true;
            }
        }
        return false;
    }
}
