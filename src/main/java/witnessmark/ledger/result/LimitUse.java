package witnessmark.ledger.result;

import java.math.BigInteger;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.Part;
import witnessmark.domain.Position;
import witnessmark.quantity.Moment;

/**
 * A limit and how much of it is used.
 *
 * @param limit which limit
 * @param part the part it falls on, or null when it falls on an engine or a car as a whole
 * @param engine the engine, or the one the part is in; null when there is none
 * @param car the car, or the one the part is in or its engine is in; null when there is none
 * @param position where the part sits, or null
 * @param used what was run since the limit was last reset
 * @param since when it was last reset, or null when it never was
 */
public record LimitUse(
        Entry<Limit> limit,
        @Nullable Id<Part> part,
        @Nullable Id<Engine> engine,
        @Nullable Id<Car> car,
        @Nullable Id<Position> position,
        Life used,
        @Nullable Moment since) {
    public LimitUse {
        if (used.counter() != limit.fact().counter()) {
            throw new IllegalArgumentException("a limit is judged by its own counter");
        }
    }

    /** What is left in the counter's unit, told running at its high end; less than 0 once it is past. */
    public long left() {
        return Math.subtractExact(limit.fact().amount(), used.highest());
    }

    /** Where it stands. Used up to the limit exactly is over. */
    public LimitState state() {
        if (left() <= 0) {
            return LimitState.OVER;
        }
        return used.complete() ? LimitState.WITHIN : LimitState.NOT_KNOWN;
    }

    /** Compares the shares used, told running at its high end: less than 0 when this share is the smaller. */
    public int compareShare(LimitUse other) {
        BigInteger mine = BigInteger.valueOf(used.highest())
                .multiply(BigInteger.valueOf(other.limit.fact().amount()));
        BigInteger theirs = BigInteger.valueOf(other.used.highest())
                .multiply(BigInteger.valueOf(limit.fact().amount()));
        return mine.compareTo(theirs);
    }
}
