package witnessmark.desktop.find;

import java.text.Normalizer;
import java.util.Locale;

/** Text as it is compared: letter case, accents, spaces and dashes aside. */
final class Plain {
    private Plain() {}

    /** Small letters without accents, words apart by one space: "1.24 L" stays "1.24 l". */
    static String words(String text) {
        String bare = Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
        return bare.toLowerCase(Locale.ROOT).replaceAll("[\\s,;:()]+", " ").strip();
    }

    /** The same without spaces and dashes: "B3 117" and "b3-117" are "b3117". */
    static String serial(String text) {
        return words(text).replaceAll("[\\s\\-\u2010-\u2015]+", "");
    }
}
