package witnessmark.desktop.find;

import java.util.List;

/**
 * What was typed, made ready once for comparing with every record.
 *
 * @param phrase all of it, {@link Plain#words}
 * @param words its words
 * @param serial all of it, {@link Plain#serial}
 */
record Asked(String phrase, List<String> words, String serial) {
    static Asked of(String typed) {
        String phrase = Plain.words(typed);
        return new Asked(phrase, List.of(phrase.split(" ")), Plain.serial(typed));
    }

    boolean isNothing() {
        return serial.isEmpty();
    }
}
