package witnessmark.logbook.sheets;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Words as people write them. */
final class Words {
    private Words() {}

    /** Without spaces, dashes and case. */
    static String plain(String written) {
        return written.replaceAll("[\\s\\-]", "").toLowerCase(Locale.ROOT);
    }

    /** What stands between commas, semicolons and line ends. */
    static List<String> listed(String text) {
        return Arrays.stream(text.split("[,;\\n]"))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
