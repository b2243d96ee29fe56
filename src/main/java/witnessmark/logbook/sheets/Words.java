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

    /**
     * A place on an engine or in a set so that two spellings of it are one: without spaces, dashes and case, and the
     * sides of the head by their short names: exhaust 3B, ex 3B and EX3b; inlet, intake or in.
     */
    static String place(String written) {
        String plain = plain(written);
        return plain.replaceFirst("^(?:inlet|intake|in)(?=\\d)", "in").replaceFirst("^(?:exhaust|exh|ex)(?=\\d)", "ex");
    }

    /** What stands between commas, semicolons and line ends. */
    static List<String> listed(String text) {
        return Arrays.stream(text.split("[,;\\n]"))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
