package witnessmark.logbook.sheets;

import java.util.List;

/**
 * One thing that can be picked in a field.
 *
 * @param key what the field holds when it is picked; empty for none
 * @param facts what names it on screen: entries' own words, words of closed lists, {@link SheetWord}s
 */
public record Choice(String key, List<Object> facts) {
    public Choice {
        facts = List.copyOf(facts);
    }

    static Choice of(String key, Object... facts) {
        return new Choice(key, List.of(facts));
    }
}
