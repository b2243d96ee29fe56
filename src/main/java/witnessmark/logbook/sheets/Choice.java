package witnessmark.logbook.sheets;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import witnessmark.domain.Coded;

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

    /** One choice for each word of a closed list, under its code. */
    static <E extends Enum<E> & Coded> List<Choice> words(E[] all) {
        return Arrays.stream(all).map(word -> of(word.code(), word)).toList();
    }

    /** None, then these. */
    static List<Choice> orNone(List<Choice> these) {
        return Stream.concat(Stream.of(SheetWord.NONE.choice()), these.stream()).toList();
    }

    static Choice of(String key, Object... facts) {
        return new Choice(key, List.of(facts));
    }
}
