package witnessmark.domain;

import java.util.UUID;

/**
 * The identity of one entry, distinct by kind of fact: an {@code Id<Engine>} does not fit where an {@code Id<Car>} is
 * wanted.
 *
 * @param <F> the kind of fact
 * @param value a UUID of version 7 (RFC 9562), so that ids sort by the time they were made
 */
public record Id<F extends Fact>(UUID value) implements Comparable<Id<F>> {
    public static <F extends Fact> Id<F> parse(String text) {
        return new Id<>(UUID.fromString(text));
    }

    public String text() {
        return value.toString();
    }

    @Override
    public int compareTo(Id<F> other) {
        int high = Long.compareUnsigned(value.getMostSignificantBits(), other.value.getMostSignificantBits());
        return high != 0
                ? high
                : Long.compareUnsigned(value.getLeastSignificantBits(), other.value.getLeastSignificantBits());
    }
}
