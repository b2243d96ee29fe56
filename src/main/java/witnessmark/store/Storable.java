package witnessmark.store;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;

/**
 * Entries as a file can hold them. Half a character, as a faulty paste leaves it, has no place in UTF-8: it would be
 * another one when it is read back, and what stands in memory another than what stands in the file.
 */
final class Storable {
    private static final char REPLACEMENT = '\uFFFD';

    private Storable() {}

    /** The same entry, or one with the usual sign for a character that is none in the place of each half. */
    static <F extends Fact> Entry<F> of(Entry<F> entry) {
        Map<String, @Nullable Object> image = EntryImage.of(entry);
        if (image.values().stream().allMatch(value -> !(value instanceof String text) || isWhole(text))) {
            return entry;
        }
        @SuppressWarnings("unchecked") // an entry's fact is of the kind its record type stands for
        RecordType<F> type = (RecordType<F>) RecordTypes.of(entry.fact().getClass());
        Map<String, @Nullable Object> whole = new TreeMap<>(image);
        whole.replaceAll((column, value) -> value instanceof String text ? whole(text) : value);
        return EntryImage.entry(type, entry.id().value(), whole, entry.rev());
    }

    private static boolean isWhole(String text) {
        for (int at = 0; at < text.length(); at++) {
            if (Character.isSurrogate(text.charAt(at))) {
                return whole(text).equals(text);
            }
        }
        return true;
    }

    private static String whole(String text) {
        StringBuilder whole = new StringBuilder(text.length());
        text.codePoints()
                .map(letter ->
                        letter >= Character.MIN_SURROGATE && letter <= Character.MAX_SURROGATE ? REPLACEMENT : letter)
                .forEach(whole::appendCodePoint);
        return whole.toString();
    }
}
