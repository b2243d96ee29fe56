package witnessmark.logbook.sheets;

import java.util.List;

/**
 * What stands under a field when nothing is wrong.
 *
 * @param key of the sentence in the bundles; empty for none
 * @param facts what fills its blanks
 * @param echo whether it says what was understood, rather than something by the way
 */
public record SheetNote(String key, List<Object> facts, boolean echo) {
    public static final SheetNote NONE = new SheetNote("", List.of(), false);

    public SheetNote {
        facts = List.copyOf(facts);
    }

    static SheetNote of(String key, Object... facts) {
        return new SheetNote(key, List.of(facts), false);
    }

    static SheetNote echo(String key, Object... facts) {
        return new SheetNote(key, List.of(facts), true);
    }
}
