package witnessmark.quantity.typed;

import java.util.List;
import java.util.Optional;

/** What became of a typed text. */
public sealed interface Typed<T> {
    /**
     * It says one thing.
     *
     * @param value what it says
     * @param asTyped the text, letter for letter
     */
    record Read<T>(T value, String asTyped) implements Typed<T> {}

    /**
     * It can be read in two ways, and somebody has to say which.
     *
     * @param first the likelier reading
     * @param second the other
     */
    record Two<T>(T first, T second) implements Typed<T> {}

    /**
     * It cannot be read.
     *
     * @param examples texts that can, at least one
     */
    record Unreadable<T>(List<String> examples) implements Typed<T> {
        public Unreadable {
            if (examples.isEmpty()) {
                throw new IllegalArgumentException("what cannot be read comes with an example that can");
            }
            examples = List.copyOf(examples);
        }

        /** The first example. */
        public String example() {
            return examples.get(0);
        }
    }

    /** The value, when the text says one thing. */
    default Optional<T> only() {
        return this instanceof Read<T> read ? Optional.of(read.value()) : Optional.empty();
    }
}
