package witnessmark.domain;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.StringJoiner;
import witnessmark.quantity.Counter;

/**
 * How the figures of a run are known, counter by counter. A counter not named is known the way running time is.
 *
 * @param byCounter counter to how it is known
 */
public record KnownBy(Map<Counter, HowKnown> byCounter) {
    public KnownBy {
        EnumMap<Counter, HowKnown> copy = new EnumMap<>(Counter.class);
        copy.putAll(byCounter);
        byCounter = Collections.unmodifiableMap(copy);
    }

    public static KnownBy all(HowKnown how) {
        return new KnownBy(Map.of(Counter.RUNNING, how));
    }

    /** The same, with one counter known in another way. */
    public KnownBy with(Counter counter, HowKnown how) {
        EnumMap<Counter, HowKnown> next = new EnumMap<>(Counter.class);
        next.putAll(byCounter);
        next.put(counter, how);
        return new KnownBy(next);
    }

    /**
     * Reads back what {@link #text()} wrote, {@code running=timed;laps=trace}; empty text names no counter.
     *
     * @throws IllegalArgumentException if a word is unknown
     */
    public static KnownBy parse(String text) {
        EnumMap<Counter, HowKnown> read = new EnumMap<>(Counter.class);
        if (text.isEmpty()) {
            return new KnownBy(read);
        }
        for (String pair : text.split(";", -1)) {
            int equals = pair.indexOf('=');
            if (equals < 0) {
                throw new IllegalArgumentException("running=timed;laps=trace");
            }
            read.put(counter(pair.substring(0, equals)), Coded.of(HowKnown.class, pair.substring(equals + 1)));
        }
        return new KnownBy(read);
    }

    public String text() {
        StringJoiner all = new StringJoiner(";");
        byCounter.forEach((counter, how) -> all.add(counter.code() + "=" + how.code()));
        return all.toString();
    }

    public HowKnown of(Counter counter) {
        HowKnown own = byCounter.get(counter);
        HowKnown running = byCounter.get(Counter.RUNNING);
        return own != null ? own : running != null ? running : HowKnown.TIMED;
    }

    private static Counter counter(String code) {
        for (Counter counter : Counter.values()) {
            if (counter.code().equals(code)) {
                return counter;
            }
        }
        throw new IllegalArgumentException("no counter is called '" + code + "'");
    }
}
