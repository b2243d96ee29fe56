package witnessmark.domain;

import java.util.Optional;

/** A word from a closed list, stored and exchanged under a code that never changes. */
public interface Coded {
    String code();

    /**
     * The word of that list with this code.
     *
     * @throws IllegalArgumentException if the list has no such code; the message names those it has
     */
    static <E extends Enum<E> & Coded> E of(Class<E> list, String code) {
        Optional<E> found = find(list, code);
        if (found.isPresent()) {
            return found.get();
        }
        StringBuilder known = new StringBuilder();
        for (E word : list.getEnumConstants()) {
            known.append(known.length() == 0 ? "" : ", ").append(word.code());
        }
        throw new IllegalArgumentException(known.toString());
    }

    /** The word of that list with this code; empty when it has none. */
    static <E extends Enum<E> & Coded> Optional<E> find(Class<E> list, String code) {
        for (E word : list.getEnumConstants()) {
            if (word.code().equals(code)) {
                return Optional.of(word);
            }
        }
        return Optional.empty();
    }
}
