package witnessmark.desktop.find;

import witnessmark.desktop.shell.PlaceId;

/**
 * One record that can be found.
 *
 * @param title what it is, as shown
 * @param note where or when, as shown
 * @param serial what people call it, compared without spaces, dashes and case; empty for what has no name of its own
 * @param words everything it is found by, in small letters, words apart by one space
 * @param place where it is shown
 * @param record the text of its identity there
 */
record Indexed(String title, String note, String serial, String words, PlaceId place, String record) {
    /** How well this answers; the less the better, {@link #NOT} for not at all. */
    static final int NOT = Integer.MAX_VALUE;

    /**
     * @param asked as typed, {@link Plain#words}
     * @param askedSerial as typed, {@link Plain#serial}
     */
    int match(String asked, String askedSerial) {
        if (!serial.isEmpty() && !askedSerial.isEmpty()) {
            int at = serial.indexOf(askedSerial);
            if (at == 0) {
                return serial.length() == askedSerial.length() ? 0 : 1;
            }
            if (at > 0) {
                return 2;
            }
        }
        int phrase = words.indexOf(asked);
        if (phrase >= 0 && beginsAWord(asked, phrase)) {
            return 2;
        }
        int worst = 3;
        for (String word : asked.split(" ")) {
            int at = words.indexOf(word);
            if (at < 0) {
                return NOT;
            }
            worst = Math.max(worst, beginsAWord(word, at) ? 3 : 4);
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
