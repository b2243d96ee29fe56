package witnessmark.domain.history;

import java.util.function.LongSupplier;

/**
 * A clock that never runs back and never falls behind what it has seen, so that a change made in knowledge of another
 * is ordered after it even when a laptop's clock is wrong. Kulkarni, Demirbas, Madappa, Avva and Leone, "Logical
 * Physical Clocks", OPODIS 2014, section 3 (algorithm for a local or send event, and for a receive event).
 *
 * <p>Not safe for use by several threads; the one writer owns it.
 */
public final class HybridClock {
    /**
     * A reading.
     *
     * @param millis greatest wall clock seen, milliseconds since 1970
     * @param tick counts events within that millisecond
     */
    public record Time(long millis, int tick) implements Comparable<Time> {
        public static final Time ZERO = new Time(0, 0);

        @Override
        public int compareTo(Time other) {
            int byMillis = Long.compare(millis, other.millis);
            return byMillis != 0 ? byMillis : Integer.compare(tick, other.tick);
        }
    }

    private final LongSupplier wallClock;
    private Time last;

    /**
     * @param wallClock milliseconds since 1970
     * @param last the latest time in the logbook
     */
    public HybridClock(LongSupplier wallClock, Time last) {
        this.wallClock = wallClock;
        this.last = last;
    }

    /** The time of a change made here now. */
    public Time next() {
        long wall = wallClock.getAsLong();
        last = wall > last.millis() ? new Time(wall, 0) : new Time(last.millis(), Math.addExact(last.tick(), 1));
        return last;
    }

    /** Takes note of a change that came from elsewhere. */
    public void saw(Time other) {
        if (other.compareTo(last) > 0) {
            last = other;
        }
    }
}
